using System.Collections.Immutable;
using IfcCourser.Comparing;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Units;

namespace IfcCourser;

/// <summary>Every message of the solver that a user reads.</summary>
internal static partial class Messages
{
    /// <summary>Name of a delivery.</summary>
    public const string NoStorey = "no storey";

    /// <summary>Name of a delivery.</summary>
    public const string NoPhase = "in no phase";

    public const string FormedBeam = "formed beam";

    public const string RakedBeamOpen = "A bond beam formed along the slope takes what the blocks leave open under it";

    public const string RefusedToKeep = "openings are kept as designed";

    public const string RefusedToWiden = "widths are kept";

    public const string RefusedToLower = "the opening would be lower than wanted";

    public const string RefusedForOthers = "openings beside or above it, which move with it, stand better without";

    public const string TeeOnOtherLines = "their courses don't lie on the same lines";

    public const string TeeNotSquare = "they don't meet at a right angle";

    public const string TeeInThinWall = "the main wall is thinner than the least piece";

    public const string TeeNearOpening = "an opening of the main wall, or its lintel, is too near";

    public const string TeeNearAnother = "another wall meets the main wall, or it ends, too near";

    public static string OpeningsOverlap(string one, string other, Length way, UnitSystem units) =>
        $"{one} and {other} overlap; {other} {Aside(way, units)} would be clear of it";

    public static string OpeningAtCorner(string opening, string wall, Length way, bool isMoved, UnitSystem units) =>
        $"{opening}{MovedThere(isMoved)} reaches into the corner with {wall}; {Aside(way, units)} it would be clear of it";

    public static string OpeningAtTee(string opening, string wall, Length way, bool isMoved, UnitSystem units) =>
        $"{opening}{MovedThere(isMoved)} reaches behind {wall}, which meets this wall; {Aside(way, units)} it would be clear of it";

    /// <param name="way">How far the joint would have to stand further along the run; negative to the left.</param>
    public static string LintelAtJoint(string opening, Length at, Length room, Length bearing, Length way, UnitSystem units) =>
        $"The movement joint at {Text(at, units)} leaves the lintel over {opening} {Text(Length.Max(room, Length.Zero), units)} to bear on, {Text(bearing, units)} are asked for: the joint {Aside(way, units)}, or the opening {Aside(-way, units)}, would do";

    private static string MovedThere(bool isMoved) => isMoved ? ", moved onto lines," : string.Empty;

    private static string Aside(Length way, UnitSystem units) => $"{Text(Length.Abs(way), units)} to the {(way < Length.Zero ? "left" : "right")}";

    public static string NoCourseForLintel(string opening) =>
        FormattableString.Invariant($"No course of the wall stands above the head of {opening} to carry a lintel");

    public static string OpeningInPlaceOfLintel(string opening) =>
        FormattableString.Invariant($"Another opening stands where the lintel over {opening} would lie");

    public static string NoRoomForLintel(string opening) =>
        FormattableString.Invariant($"A neighbouring lintel, a movement joint or the wall's outline leaves no room for a lintel over {opening}");

    public static string BearingShort(Length bearing, Length wanted, UnitSystem units) =>
        FormattableString.Invariant($"The lintel bears on {Text(bearing, units)} only; {Text(wanted, units)} are asked for");

    public static string LintelFormed(Length span, int loadClass, UnitSystem units) =>
        FormattableString.Invariant($"No lintel of the catalog spans {Text(span, units)} in this wall under load class {loadClass}; a formed beam takes its place and its courses are left out: to be designed, formed and shored");

    public static string LintelLacksRoom(Length height, UnitSystem units) =>
        FormattableString.Invariant($"No lintel of the catalog that spans the opening finds room over it; a formed beam of {Text(height, units)} takes its place and its courses are left out: to be designed, formed and shored");

    public static string LintelInMidCourse(Length seat, Length closer, UnitSystem units) =>
        (seat > Length.Zero, closer > Length.Zero) switch
        {
            (true, true) => FormattableString.Invariant($"The lintel lies in mid-course: {Text(seat, units)} of the pieces are kept under its bearings and {Text(closer, units)} over it, notched to its ends"),
            (true, false) => FormattableString.Invariant($"The lintel lies in mid-course: {Text(seat, units)} of the pieces are kept under its bearings, notched to its ends"),
            _ => FormattableString.Invariant($"The lintel ends in mid-course: {Text(closer, units)} of the pieces are kept over it, notched to its ends"),
        };

    public static string OverlapShort(int course, Length lap, Length wanted, UnitSystem units) =>
        FormattableString.Invariant($"Courses {course - 1} and {course} lap {Text(lap, units)} only; {Text(wanted, units)} are asked for");

    public static string OverlapShortAtLintel(int course, Length lap, Length wanted, UnitSystem units) =>
        FormattableString.Invariant($"A head joint of course {course} stands {Text(lap, units)} from the end of the lintel in it; {Text(wanted, units)} are asked for");

    public static string PieceShort(string piece, Length length, Length least, UnitSystem units) =>
        FormattableString.Invariant($"Piece {piece} is {Text(length, units)} long, under the least piece of {Text(least, units)}");

    public static string RipThin(string piece, Length height, Length least, UnitSystem units) =>
        FormattableString.Invariant($"Piece {piece} is {Text(height, units)} high, under the least rip of {Text(least, units)}");

    public static string HeightOffCourse(ImmutableArray<(int Number, Length Height)> cut, Length? lower, Length higher, UnitSystem units)
    {
        var numbers = string.Join(" and ", cut.Select(course => FormattableString.Invariant($"{course.Number}")));
        var heights = string.Join(" and ", cut.Select(course => Text(course.Height, units)));
        return $"{(cut.Length == 1 ? $"Course {numbers} is" : $"Courses {numbers} are")} ripped to {heights}; {WholeCourses(lower, higher, units)}";
    }

    public static string LengthOffModule(LengthCheck check, UnitSystem units) =>
        FormattableString.Invariant($"The wall is {Text(check.Length, units)} long, off the module: {(check.Under > Length.Zero ? $"{Text(check.Under, units)} or " : string.Empty)}{Text(check.Over, units)} stand on it");

    public static string LengthNominal(LengthCheck check, Length joint, UnitSystem units) =>
        FormattableString.Invariant($"The wall is {Text(check.Length, units)} long, its nominal length: masonry ends a joint of {Text(joint, units)} before that, at {Text(check.Under, units)}");

    public static string TopOpen(Length gap, Length? lower, Length higher, UnitSystem units) =>
        $"{Text(gap, units)} are left open above the last course; {WholeCourses(lower, higher, units)}";

    public static string HeadGap(Length gap, UnitSystem units) =>
        $"The wall does not carry: a head gap of {Text(gap, units)} is left open above its last course";

    public static string SlabStep(string first, string second, Length step, Length lower, Length higher, UnitSystem units) =>
        $"{first} and {second} meet with bases {Text(step, units)} apart and can't share course lines; {WorkingSteps(lower, higher, units)}";

    public static string StoreyStep(string lowerWall, string upperWall, Length step, Length lower, Length higher, UnitSystem units) =>
        $"{upperWall} can't run on with the course lines of {lowerWall} under it, with bases {Text(step, units)} apart; {WorkingSteps(lower, higher, units)}";

    public static string StandsOnWall(Length bed, UnitSystem units) =>
        $"The first course lies on the wall under it, on a bed of {Text(bed, units)} above its top";

    public static string StripOpen(double squareMetres) =>
        FormattableString.Invariant($"{squareMetres:0.0000} m2 are left without masonry: strips too small for a piece, or between a head and its lintel");

    public static string CrossedBy(string wall) =>
        FormattableString.Invariant($"The crossing wall {wall} runs through this wall");

    public static string BedOutOfRange(Length bed, LengthRange range, UnitSystem units) =>
        FormattableString.Invariant($"The levelling bed is {Text(bed, units)}, outside {Text(range.Min, units)} to {Text(range.Max, units)}");

    public static string LowerThanOneCourse(Length height, Length least, UnitSystem units) =>
        $"The wall is {Text(height, units)} high, too low for a bed and a course, which take {Text(least, units)}";

    public static string OpeningMoved(string name, Length along, Length sill, Length head, UnitSystem units) =>
        $"{name} moved: {Ways(units, ("along the wall", along), ("at the sill", sill), ("at the head", head))}; awaits the designer's consent";

    public static string OpeningResized(string name, Length left, Length right, Length sill, Length head, UnitSystem units) =>
        $"{name} changed: {Ways(units, ("at the left jamb", left), ("at the right jamb", right), ("at the sill", sill), ("at the head", head))}; awaits the designer's consent";

    private static string Ways(UnitSystem units, params (string Where, Length Way)[] ways) =>
        string.Join(", ", ways.Where(way => way.Way != Length.Zero).Select(way => $"{Signed(way.Way, units)} {way.Where}"));

    public static string OffModule(string name, Length move, Length widen, string why, UnitSystem units) =>
        (move == Length.Zero, widen == Length.Zero) switch
        {
            (_, true) => FormattableString.Invariant($"{name} is off the module: moved by {Signed(move, units)} it stands on it; not done: {why}"),
            (true, false) => FormattableString.Invariant($"{name} is off the module: widened by {Text(widen, units)} it stands on it; not done: {why}"),
            _ => FormattableString.Invariant($"{name} is off the module: with its left jamb moved by {Signed(move, units)} and widened by {Text(widen, units)} it stands on it; not done: {why}"),
        };

    public static string OneJambOffModule(Length move, string why, UnitSystem units) =>
        FormattableString.Invariant($"; moved by {Signed(move, units)} one jamb stands on a line; not done: {why}");

    public static string RefusedPastLargestShift(Length largest, UnitSystem units) =>
        FormattableString.Invariant($"further than the largest shift of {Text(largest, units)}");

    public static string RefusedForPier(Length pier, Length least, UnitSystem units) =>
        FormattableString.Invariant($"a pier of {Text(Length.Max(pier, Length.Zero), units)} would be left, under the least pier of {Text(least, units)}");

    public static string HeadRaised(string name, Length up, Length? down, Length largest, UnitSystem units) =>
        FormattableString.Invariant($"The head of {name} goes up {Text(up, units)}, further than the largest shift of {Text(largest, units)}, because no lintel can be seated in mid-course there: close the gap over the frame with packing or a higher frame{LowerInstead(down, units)}");

    public static string HeadOffCourse(string name, Length up, UnitSystem units) =>
        FormattableString.Invariant($"The head of {name} lies {Text(up, units)} under the next course line");

    public static string HeadInMidCourse(string name, Length up, UnitSystem units) =>
        FormattableString.Invariant($"The head of {name} lies {Text(up, units)} under the next course line, its lintel seated there among pieces cut in height");

    public static string HeadOpen(string name, Length gap, UnitSystem units) =>
        FormattableString.Invariant($"The head of {name} lies {Text(gap, units)} under its lintel, which can't be seated lower: close the gap over the frame with packing, no block can hang there");

    public static string HeadAboveCourses(string name, Length above, UnitSystem units) =>
        $"The head of {name} lies {Text(above, units)} above the last course line";

    public static string HeadInLastCourse(string name, Length above, UnitSystem units) =>
        FormattableString.Invariant($"The head of {name} lies {Text(above, units)} above the last course line, its beam seated there among pieces cut in height");

    public static string SillOffCourse(string name, Length way, string why, UnitSystem units) =>
        FormattableString.Invariant($"The sill of {name} lies on no course's top: moved by {Signed(way, units)} it does; not done: {why}");

    public static string PierShort(Length pier, Length least, Length modular, UnitSystem units) =>
        FormattableString.Invariant($"A pier of {Text(pier, units)} is under the least pier of {Text(least, units)}: {Text(least - pier, units)} more would do, {Text(modular, units)} is the next length on the module");

    public static string PierNotBondable(Length pier, Length piece, Length lap, Length? under, Length? over, Length modular, UnitSystem units) =>
        FormattableString.Invariant($"No two courses of a pier of {Text(pier, units)} lap {Text(lap, units)} with pieces of {Text(piece, units)} or more: {string.Join(" or ", new[] { under, over }.OfType<Length>().Select(length => Text(length, units)))} would do, {Text(modular, units)} on the module");

    public static string OpeningArched(string name, Length width, Length height, Length rise, double open, UnitSystem units) =>
        FormattableString.Invariant($"{name} has no straight head: courses leave {Text(width, units)} by {Text(height, units)} around it, with the lintel over the crown; from {Text(rise, units)} under the crown up, {open:0.000} m2 beside the outline are closed with pieces cut to it over a centring, or with a formed arch");

    public static string OpeningRound(string name, Length width, Length height, double open, UnitSystem units) =>
        FormattableString.Invariant($"{name} is no rectangle: courses leave {Text(width, units)} by {Text(height, units)} around it, with a straight lintel and sill; {open:0.000} m2 beside the outline are closed with pieces cut to it over a centring, or with a formed ring");

    public static string CoreOnJoint(string core, int course, Length distance, Length wanted, UnitSystem units) =>
        FormattableString.Invariant($"Core {core} stands {Text(distance, units)} from a head joint of course {course}; {Text(wanted, units)} are asked for");

    public static string BarsFarApart(Length from, Length to, Length spacing, UnitSystem units) =>
        FormattableString.Invariant($"The bars at {Text(from, units)} and {Text(to, units)} stand {Text(to - from, units)} apart; at most {Text(spacing, units)} are asked for, and no place between them takes a bar");

    public static string BarsFarApartAsBuilt(Length from, Length to, Length spacing, UnitSystem units) =>
        FormattableString.Invariant($"The bars at {Text(from, units)} and {Text(to, units)} stand {Text(to - from, units)} apart as built; at most {Text(spacing, units)} are asked for");

    public static string BarFarFromJamb(string opening, Length jamb, Length most, UnitSystem units) =>
        FormattableString.Invariant($"Beside {opening} no bar stands within {Text(most, units)} of the jamb at {Text(jamb, units)} as built");

    public static string CornerCoreOnJoint(int course, Length distance, Length wanted, UnitSystem units) =>
        FormattableString.Invariant($"The corner's bar, which the other wall lists, stands {Text(distance, units)} from a head joint of course {course}; {Text(wanted, units)} are asked for");

    public static string CoreInOpen(string core, IEnumerable<int> courses, IEnumerable<string> others) => FormattableString.Invariant(
        $"The corner's bar {core} stands in the open in courses {NumberRanges.Of(courses)}: neither this wall nor {string.Join(" or ", others)} has blocks around it there");

    public static string NoRoomForBar(string why) =>
        FormattableString.Invariant($"No masonry of this wall has room for the bar that its {why} asks for");

    public const string BondSearchEnded = "The search for this wall's bond reached its limit: what is laid out is the best found until then";

    public const string NoCoresInCatalog = "The rules ask for bars and the catalog has no cores, so the wall has no bars";

    public static string NoCoreInThinWall(Length thickness, UnitSystem units) =>
        FormattableString.Invariant($"The wall is {Text(thickness, units)} thick: too thin for a core, so it has no bars");

    public static string BarsNotFor(string sentence) => $"The bar rules are not for: {sentence}";

    public static string BarNotPlaced(string wall, string why, bool isKnown) => isKnown
        ? $"The bar given for {wall} ({why}) found no place in it"
        : $"The bar given for {wall} ({why}) was not placed: no wall of that name or GlobalId was laid out";

    public static string BarInDoorway(string core, string opening) =>
        $"The starter of core {core} stands in the way of {opening} as it was drawn: it must not be cast in before the opening's move is accepted";

    public static string LapShort(string core, Length room, Length wanted, UnitSystem units) =>
        FormattableString.Invariant($"Core {core} leaves {Text(room, units)} for a lap of {Text(wanted, units)}");

    public static string CouplerHidden(string core, Length top, UnitSystem units) =>
        FormattableString.Invariant($"The coupler at the foot of core {core} reaches up to {Text(top, units)}, above the inspection notch");

    public static string NoMovementJointRule(string rules) =>
        FormattableString.Invariant($"The rule set {rules} has no rule for movement joints, so that none is laid out at the place given");

    public static string MovementJointsAdded(ImmutableArray<Length> places, Length width, UnitSystem units) =>
        FormattableString.Invariant($"{(places.Length == 1 ? "A movement joint" : "Movement joints")} {Text(width, units)} wide {(places.Length == 1 ? "divides" : "divide")} the wall at {Listed(places, " and ", units)} from its start, to the middle of the joint");

    public static string NoRoomForMovementJoint(Length at, ImmutableArray<Length> instead, UnitSystem units) =>
        FormattableString.Invariant($"The movement joint asked for at {Text(at, units)} would stand in an opening, in a lintel's bearing, against another wall or at the wall's end{(instead.IsEmpty ? string.Empty : $"; there is room at {Listed(instead, " or ", units)}")}");

    public static string MovementJointNearAnother(Length at, Length other, UnitSystem units) =>
        FormattableString.Invariant($"The movement joint asked for at {Text(at, units)} stands too near to the one at {Text(other, units)} for a piece between them");

    public static string PanelTooLong(Length from, Length to, Length longest, UnitSystem units) =>
        FormattableString.Invariant($"The panel from {Text(from, units)} to {Text(to, units)} is {Text(to - from, units)} long, and {Text(longest, units)} are allowed; openings, lintels' bearings and walls that meet it leave no place for a movement joint that would do");

    public static string NoMovementJointBesideOpening(Length from, Length to, UnitSystem units) =>
        FormattableString.Invariant($"A wide opening asks for a movement joint between {Text(from, units)} and {Text(to, units)}; none finds room there");

    private static string Listed(ImmutableArray<Length> places, string last, UnitSystem units) => places.Length == 1
        ? Text(places[0], units)
        : string.Join(", ", places.SkipLast(1).Select(place => Text(place, units))) + last + Text(places[^1], units);

    public static string NoCourseForBeam(string opening, string why) =>
        $"No whole course lies {OverOrUnder(why)} {opening} for a bond beam";

    public static string NoRoomForBeam(string opening, string why) =>
        $"No whole piece of the course {OverOrUnder(why)} {opening} is free for a bond beam";

    public static string NoTroughUnit(Length thickness, string why, UnitSystem units) =>
        $"A bond beam is asked for ({why}), and no trough unit of the catalog is made for a wall of {Text(thickness, units)}";

    public static string BeamShort(string opening, string why, Length? left, Length? right, Length wanted, UnitSystem units)
    {
        var sides = new[] { (left, "left"), (right, "right") }.Where(side => side.Item1 is not null).Select(side => $"{Text(side.Item1!.Value, units)} past the {side.Item2} jamb");
        return $"The bond beam {OverOrUnder(why)} {opening} runs on {string.Join(" and ", sides)} only; {Text(wanted, units)} are asked for";
    }

    public static string BeamInterrupted(int course, string opening) =>
        FormattableString.Invariant($"{opening} interrupts the bond beam in course {course}");

    public static string BeamAtLintel(int course, string lintel) =>
        FormattableString.Invariant($"Solid lintel {lintel} interrupts the bond beam in course {course}");

    public static string BeamAtCutPiece(int course, Length from, Length to, UnitSystem units) =>
        FormattableString.Invariant($"Notched or raked pieces, or a wall that runs through, interrupt the bond beam in course {course} from {Text(from, units)} to {Text(to, units)}");

    public static string BeamPartedAtCorner(int course) =>
        FormattableString.Invariant($"The bond beam in course {course} ends at the corner: the courses of the wall that it meets lie at other heights there");

    public static string NoTopBeam(Length top, UnitSystem units) =>
        $"The wall's top at {Text(top, units)} has no bond beam: no whole course of its own ends near enough under it";

    public static string RakedBeamFormed(Length from, Length to, UnitSystem units) =>
        $"The bond beam along the sloping top from {Text(from, units)} to {Text(to, units)} is formed on the pieces that are cut to it";

    public static string NoRakedBeam(Length from, Length to, UnitSystem units) =>
        $"The sloping top from {Text(from, units)} to {Text(to, units)} has no bond beam; with tops = \"raked\" in the rules' bond-beams one is formed along it where it is not too steep or too near the foot";

    public static string BeamsTooFarApart(Length from, Length to, Length spacing, UnitSystem units) =>
        $"There is no bond beam from {Text(from, units)} to {Text(to, units)}, and {Text(spacing, units)} are allowed; no whole course is free for one";

    public static string BeamFormed(ImmutableArray<int> courses, Length thickness, UnitSystem units) =>
        FormattableString.Invariant($"No trough unit of the catalog is made for a wall of {Text(thickness, units)}; the bond beam in {(courses.Length == 1 ? "course" : "courses")} {string.Join(", ", courses)} is formed in place of laid");

    public static string EmbedWithoutBeam(string kind, Length at, UnitSystem units) =>
        $"The job file asks for {kind} in a bond beam at {Text(at, units)}, where the wall has none";

    public static string EmbedOffMasonry(string kind, Length at, Length z, UnitSystem units) =>
        $"The job file asks for {kind} at {Text(at, units)} and {Text(z, units)} above the wall's base, where no masonry stands";

    public static string EmbedNearBar(string kind, Length at, Length z, Length clear, UnitSystem units) =>
        $"{kind} at {Text(at, units)} and {Text(z, units)} above the wall's base is nearer than {Text(clear, units)} to a bar or lap";

    public static string BeamBarsCrowded(string beam, string bars) =>
        $"{bars} have not the cover or the clear distance in bond beam {beam} that the rules ask for";

    public static string BarLongerThanStock(IEnumerable<string> marks, string size, Length longest, UnitSystem units) =>
        $"Bars {string.Join(", ", marks)} ({size}) are longer than the longest stock length, {Text(longest, units)}";

    private static string OverOrUnder(string why) => string.Equals(why, "over-opening", StringComparison.Ordinal) ? "over" : "under";

    public static string TeeNotBonded(string abutting, string host, string why) =>
        FormattableString.Invariant($"{abutting} is tied to {host} in place of bonded: {why}");

    public static string MapScaleOdd(string? system) =>
        $"The map conversion to {system ?? "an unnamed reference system"} has a scale that fits neither the units nor a map; points are listed with scale 1";

    public static string SlabOutlineAssumed(string? storey, string? slab, int outside) => slab is null
        ? $"No slab of the model lies under the bars of {StoreyName(storey)}; the outer faces of its walls are taken for the slab's edges"
        : FormattableString.Invariant(
            $"{outside} of the bars of {StoreyName(storey)} would stand outside {slab}; the outer faces of the walls are taken for the slab's edges");

    public static string BarsOffEdge(string? storey, ImmutableArray<int> bars, bool areCorners, Length distance, Length usual, UnitSystem units)
    {
        var named = $"{(areCorners ? "corner " : string.Empty)}{(bars.Length == 1 ? "bar" : "bars")} {NumberRanges.Of(bars)}";
        return $"{StoreyName(storey)}: {named} {(bars.Length == 1 ? "stands" : "stand")} {Text(distance, units)} from the slab's edge; about {Text(usual, units)} is usual";
    }

    public const string BodyMoved = "its body stands elsewhere";

    public static string NoLongerLaidOut(string reason) => $"no longer laid out: {reason}";

    public static string NowLaidOut(string reason) => $"now laid out; before: {reason}";

    public static string FromTo(string? before, string? after) => $"\"{before}\" to \"{after}\"";

    public static string FromTo(Length before, Length after, UnitSystem units) => $"{Text(before, units)} to {Text(after, units)}";

    public static string StartMoved(Length way, UnitSystem units) =>
        way > Length.Zero ? $"its start has moved {Text(way, units)}" : "it has turned about its start";

    public static string OutlineChanged(Length length, Length top, Length newLength, Length newTop, UnitSystem units) =>
        $"{Text(length, units)} long and {Text(top, units)} high to {Text(newLength, units)} and {Text(newTop, units)}";

    public static string PiecesChanged(string courses, PieceCounts was, PieceCounts now) => FormattableString.Invariant(
        $"courses {courses}: whole {was.Whole} to {now.Whole}, cut {was.Cut} to {now.Cut}, saw cuts {was.SawCuts} to {now.SawCuts}");

    public static string CountedChange(int before, int after, int elsewhere) => before == after
        ? FormattableString.Invariant($"{after}, {elsewhere} of them changed")
        : FormattableString.Invariant($"{before} to {after}, {elsewhere} of them new or changed");

    public static string ChangedSince(int changed, int added, int removed) => FormattableString.Invariant($"Walls changed {changed}, added {added}, removed {removed}");

    public static string OpeningAt(string label, ElevationRect place, UnitSystem units) =>
        $"{label}, {Text(place.Left, units)} to {Text(place.Right, units)} from the start, {Text(place.Bottom, units)} to {Text(place.Top, units)} up";

    /// <summary>Of the edges only those that read differently.</summary>
    public static string OpeningFromTo(string label, ElevationRect before, ElevationRect after, UnitSystem units)
    {
        (string Edge, Length Before, Length After)[] edges =
            [("left", before.Left, after.Left), ("right", before.Right, after.Right), ("sill", before.Bottom, after.Bottom), ("head", before.Top, after.Top)];
        var changed = edges.Where(edge => Text(edge.Before, units) != Text(edge.After, units)).Select(edge => $"{edge.Edge} {FromTo(edge.Before, edge.After, units)}").ToList();
        return changed.Count > 0 ? $"{label}: {string.Join(", ", changed)}" : $"{label}: by less than is drawn";
    }

    public static string PlanSited(string label) =>
        $"This lot has the {label} (mirroring turns the model's x axis round, angles are counter-clockwise about its origin); all else is as for the plan as drawn";

    private static string StoreyName(string? storey) => storey ?? "the walls without a storey";

    private static string WholeCourses(Length? lower, Length higher, UnitSystem units) =>
        $"a wall {(lower is { } height ? $"{Text(height, units)} or " : string.Empty)}{Text(higher, units)} high takes whole courses";

    private static string WorkingSteps(Length lower, Length higher, UnitSystem units) =>
        $"a step of {Text(lower, units)} or {Text(higher, units)} would do";

    private static string LowerInstead(Length? down, UnitSystem units) =>
        down is { } way ? FormattableString.Invariant($", or lower it {Text(way, units)} in the design") : string.Empty;

    private static string Text(Length length, UnitSystem units) => LengthText.WithUnit(length, units);

    private static string Signed(Length length, UnitSystem units) => length > Length.Zero ? "+" + Text(length, units) : Text(length, units);
}
