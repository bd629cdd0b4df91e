using System.Globalization;
using IfcCourser.Catalogs;
using IfcCourser.Comparing;
using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Walls;
using IfcCourser.Units;
using IfcCourser.Walls;
using static System.FormattableString;

namespace IfcCourser.Output.Sheets;

/// <summary>Every word that a sheet prints.</summary>
public static class SheetText
{
    public const string UnnamedWall = "Wall without a name";
    public const string UnnamedStorey = "Walls without a storey";
    public const string AboveLevelLine = "from level line";
    public const string AboveSlab = "from base";
    public const string OpeningHeights = "edges, from level line";
    public const string PieceTable = "Not a full block";
    public const string BedTable = "Levelling bed under the first course";
    public const string RakeTable = "Raked pieces: lengths of edges, slope";
    public const string OpeningTable = "Openings (masonry)";
    public const string LintelTable = "Lintels";
    public const string BeamTable = "Bond beams, from A";
    public const string BeamBarTable = "Bars of bond beams, laps from A";
    public const string EmbedTable = "Built in for others, from A";
    public const string BarTable = "Bars, from A to centre";
    public const string SteelTable = "Steel by mark of the bar schedule";
    public const string BarScheduleOfStorey = "Bar schedule of this storey";

    public const string BarScheduleOfSet = "Bar schedule";

    public const string BeamBarScheduleOfSet = "Bars of bond beams";

    public const string KeyPlan = "Key plan, not to scale";
    public const string Legend = "How to read it";
    public const string Notes = "Notes";
    public const string Cautions = "Cautions";

    /// <summary>In the stead of what a sheet has no room for.</summary>
    public static string OnCover(IEnumerable<string> what) => $"{string.Join(" and ", what)}: sheet {CoverSheet.Number}";
    public const string LegendWhole = "whole block";
    public const string LegendCut = "sawn to this length; h: height";
    public const string LegendShape = "sawn to a shape; letter: see table";
    public const string LegendPart = "bought shorter, not sawn";
    public const string LegendCodes = "cut to length, height or rake; notched";
    public const string LegendJoined = "several cuts: here length and height";
    public const string LegendFormed = "formed beam, no lintel bought";
    public const string LegendArch = "beside an arch: cut or formed";
    public const string LegendAbuts = "another wall stands against this one";
    public const string FormedBeamShort = "formed beam";
    public const string FormedBeam = "formed beam: to be designed, formed and shored";
    public const string LegendLintel = "lintel";
    public const string LegendBeam = "bond beam: trough units, bars, grout";
    public const string WetTroughs = "Bond beams: clean the troughs and wet them before grouting, for dry blocks take water from the grout; then fill them in one go.";
    public const string LegendCore = "bar and core: keep joints clear";
    public const string LegendBuiltIn = "built in for others; in plan";
    public const string LegendEmbed = "built in for others; height: wall's sheet";
    public const string LegendNotch = "notch at a bar's foot: clean and look in";
    public const string LegendMovementJoint = "movement joint: keep it open";
    public const string LegendRevised = "changed since the last issue";
    public const string LegendMatch = "match line: the wall goes on elsewhere";
    public const string LegendDesigned = "opening where it was designed";
    public const string LegendLevel = "level line: top of course 1";
    public const string LegendNeighbour = "another wall runs through here";
    public const string LegendModule = "module line, at the edges only";
    public const string Creator = "IfcCourser";
    public const string DocumentType = "Wall sheet";
    public const string Status = "For review";
    /// <summary>In the title block of sheets that show nothing to scale.</summary>
    public const string NoScale = "none";

    public const string Viewer = "Seen from the arrow in the key plan. Lay from A (left) to B (right).";

    public const string Match = "match";

    /// <summary>A sentence for each change.</summary>
    internal static IEnumerable<string> Revised(WallRevision revision) => revision.Changes.IsEmpty
        ? [$"Rev. {revision.Mark}: this wall is new."]
        : revision.Changes.Select(change => $"Rev. {revision.Mark}: {change.What.Replace('-', ' ')}: {change.Detail}.");

    public const string ElevationView = "Elevation";

    internal static string MatchLine(string sheet) => $"Match line: see {sheet}";

    /// <summary>Beside a low wall.</summary>
    internal static string MatchLineShort(string sheet) => $"see {sheet}";

    /// <summary>The sheet of a part of a wall: W003.1.</summary>
    internal static string PartNumber(int number, int part) => Invariant($"{WallNumber(number)}.{part}");

    /// <summary>Tables of a sheet that go on to others.</summary>
    internal static string FurtherNumber(string sheet, int page) => Invariant($"{sheet}.T{page}");

    internal static string Further(string title, int page, int count) => title + (count == 1 ? ", tables" : Invariant($", tables {page} of {count}"));

    internal static string Part(int part, int count) => Invariant($", part {part} of {count}");

    internal static string Parted(WallStretch stretch, SheetLengths text) =>
        $"Part of the wall {FromTo(stretch, text)}. Each block stands on one sheet; dimensions run on from A; what is counted in these notes is of the whole wall.";

    private static string FromTo(WallStretch stretch, SheetLengths text) =>
        $"from {(stretch.Before is { } before ? text.Dimension(before.At) : "A")} to {(stretch.After is { } after ? text.Dimension(after.At) : "B")}";

    internal static string ElevationOf(int number) => $"{ElevationView} {WallNumber(number)}";

    internal static string KeyPlanOf(int number) => $"{WallNumber(number)}: key plan, not to scale";

    /// <summary>The title of one wall's table among those of several.</summary>
    internal static string Of(int number, string title) => $"{WallNumber(number)}: {title}";

    /// <summary>Standing cautions of the project; the reasons and sources are in its documents.</summary>
    public static readonly ImmutableArray<string> CautionTexts =
    [
        "This sheet is a layout aid, not a structural design. A licensed engineer and the local code and building officials "
            + "must confirm bars, spacings, lintels, bearings, anchors and cut pieces before work starts.",
        "Bars drilled and bonded into the slab, new or as replacement, need the engineer's approval; look for tendons and services first.",
        "Sawing and drilling blocks makes respirable silica dust: cut wet or with extraction, and wear respiratory protection.",
        "An unfinished wall can be blown over: brace it, reinforced or not, and keep people out of its fall zone until it is held.",
        "Check the weight of blocks as delivered, damp, before lifting by hand. Keep walls covered against rain and frost.",
    ];

    /// <summary>Unique by its number; without the characters that layouts and files must not have in their names.</summary>
    public static string SheetName(int number, string wall) => SheetName(WallNumber(number), wall);

    /// <inheritdoc cref="SheetName(int, string)"/>
    internal static string SheetName(string number, string title)
    {
        var allowed = title.Select(c => char.IsLetterOrDigit(c) || c is '-' or '_' or '.' ? c : ' ').ToArray();
        var words = new string(allowed).Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var name = string.Join(' ', words);
        return Invariant($"{number} {(name.Length <= 60 ? name : name[..60])}").TrimEnd();
    }

    /// <summary>The day of an ISO 8601 date.</summary>
    internal static string Day(string date)
    {
        const int Characters = 10;
        return date.Length > Characters ? date[..Characters] : date;
    }

    public static string WallNumber(int number) => Invariant($"W{number:000}");

    public static string CoreOfWall(string core, int wall) => Invariant($"{core} {WallNumber(wall)}");

    public static char OpeningLetter(OpeningKind kind) => kind switch
    {
        OpeningKind.Door => 'D',
        OpeningKind.Window => 'W',
        OpeningKind.Recess => 'R',
        OpeningKind.Drilled => 'H',
        _ => 'V',
    };

    public static string OpeningKindName(OpeningKind kind) => kind switch
    {
        OpeningKind.Door => "door",
        OpeningKind.Window => "window",
        OpeningKind.Recess => "recess",
        OpeningKind.Drilled => "hole, drilled",
        _ => "opening",
    };

    public static string Size(SheetLengths text, ElevationRect rect) => $"{text.Dimension(rect.Width)} x {text.Dimension(rect.Height)}";

    /// <summary>How a piece is made, in full words joined by +; the value of the CUT attribute.</summary>
    public static string Cut(Piece piece)
    {
        var words = new[] { (Cuts.Length, "length"), (Cuts.Height, "height"), (Cuts.Rake, "rake"), (Cuts.Notch, "notch") };
        return piece.Cut == Cuts.None
            ? "none"
            : string.Join('+', words.Where(word => piece.Cut.HasFlag(word.Item1)).Select(word => word.Item2));
    }

    /// <summary>The same in letters, for a narrow column: L length, H height, R rake, N notch; a dash where bought so.</summary>
    public static string CutCode(Piece piece)
    {
        var letters = new[] { (Cuts.Length, 'L'), (Cuts.Height, 'H'), (Cuts.Rake, 'R'), (Cuts.Notch, 'N') };
        return piece.Cut == Cuts.None
            ? "-"
            : string.Concat(letters.Where(letter => piece.Cut.HasFlag(letter.Item1)).Select(letter => letter.Item2));
    }

    /// <summary>Where a raked piece is highest.</summary>
    public static string HighSide(RakeShape rake) => rake.Rises > 0 ? "right" : rake.Rises < 0 ? "left" : "mid";

    public static string Slope(RakeShape rake) => Invariant($"{rake.Degrees:0.0}\u00b0");

    /// <summary>The length a piece is sawn to; its height where only that is sawn; the mark where its shape needs the table.</summary>
    public static string CutLabel(Piece piece, string mark, SheetLengths text)
    {
        if (piece.Cut.HasFlag(Cuts.Rake) || piece.Cut is Cuts.None or Cuts.Notch)
        {
            return mark;
        }

        var height = "h" + text.Piece(piece.Height);
        return !piece.Cut.HasFlag(Cuts.Length) ? height
            : piece.Cut.HasFlag(Cuts.Height) ? $"{text.Piece(piece.Length)} {height}"
            : text.Piece(piece.Length);
    }

    public static string LintelLabel(Lintel lintel, SheetLengths text) => $"{lintel.Id}  {text.Dimension(lintel.To - lintel.From)}";

    public static string Strip(int course, ImmutableArray<int> repeats)
    {
        var name = course % 2 == 1 ? "odd" : "even";
        return repeats.IsEmpty
            ? Invariant($"Course {course} ({name}), plan; starts of blocks from A; no other course repeats it")
            : Invariant($"Course {course} ({name}), plan; starts of blocks from A; repeat in {string.Join(", ", repeats)}");
    }

    public static string BeamStrip(int course) => Invariant($"Course {course} (bond beam), plan; middles of what is built in for others from A");

    public static string Units(UnitSystem units) => units == UnitSystem.Inch
        ? "Dimensions in feet and inches, from A (left end); pieces and the play of bars in inches."
        : "Dimensions in millimetres, from A (left end).";

    public static string Blocks(Catalog catalog, SheetLengths text, Length thickness) =>
        $"Blocks {text.Piece(catalog.UnitLength)} x {text.Piece(catalog.UnitHeight)} x {text.WithUnit(thickness)} ({catalog.Name}); "
        + $"head joints {text.WithUnit(catalog.HeadJoint.Nominal)}, bed joints {text.WithUnit(catalog.BedJoint.Nominal)}.";

    public static string Bed(Catalog catalog, SheetLengths text, Length bed) =>
        $"Levelling bed {text.WithUnit(bed)} as drawn; allowed {text.Piece(catalog.LevellingBed.Min)} to {text.WithUnit(catalog.LevellingBed.Max)}.";

    public static string SlabRead(SlabLevel level, SheetLengths text) =>
        $"The slab was read: the lowest first course stands with its underside at {text.Dimension(level.Datum)} in the heights of the readings"
        + (level.Raised is { } raised ? $", {text.Height(raised)} from the design" : string.Empty) + "; beds as in the table.";

    /// <summary>Courses of one side of the nominal joint, or null where there are none.</summary>
    internal static string? HeadJoints(IEnumerable<HeadJointRun> runs, bool wider, Length nominal, SheetLengths text)
    {
        var parts = runs.Where(run => run.Mean > nominal == wider).Select(run =>
        {
            var courses = Invariant($"{(run.Courses.Length == 1 ? "course" : "courses")} {string.Join(", ", run.Courses)}");
            var stretch = run.From is { } from ? $" from {text.Dimension(from)}" : string.Empty;
            return $"{courses}{stretch}: {text.Joint(run.Mean)}";
        });
        var list = string.Join("; ", parts);
        return list.Length == 0 ? null : $"Head joints {(wider ? "wider" : "closer")} than {text.WithUnit(nominal)}: {list} on average.";
    }

    public static string Drift(Catalog catalog, SheetLengths text)
    {
        var assumed = $"Heights assume bed joints of {text.WithUnit(catalog.BedJoint.Nominal)}";
        var over = catalog.BedJoint.Max - catalog.BedJoint.Nominal;
        var under = catalog.BedJoint.Nominal - catalog.BedJoint.Min;
        return over > Length.Zero
            ? $"{assumed}; joints of {text.WithUnit(catalog.BedJoint.Max)} raise each course by another {text.WithUnit(over)}."
            : under > Length.Zero
                ? $"{assumed}; joints of {text.WithUnit(catalog.BedJoint.Min)} lower each course by another {text.WithUnit(under)}."
                : assumed + ".";
    }

    public static string Quantities(WallQuantities quantities, UnitSystem units)
    {
        const double SquareFoot = 0.3048 * 0.3048;
        var area = units == UnitSystem.Inch
            ? Invariant($"{quantities.NetArea / SquareFoot:0.0} ft2")
            : Invariant($"{quantities.NetArea:0.00} m2");
        return Invariant($"{quantities.FullUnits} pieces laid uncut, {quantities.PartUnits} sawn; net area {area}.");
    }

    public static string SpecialCourse(Course course, Catalog catalog, SheetLengths text)
    {
        var height = course.Top - course.Bottom;
        return course.Kind == CourseKind.BondBeam
            ? Invariant($"Course {course.Number} is a bond beam{(course.Pieces.IsEmpty ? ", formed in place of laid" : " of trough units")}.")
            : catalog.OtherHeights.Contains(height) ? Invariant($"Course {course.Number} is laid with units {text.WithUnit(height)} high.")
            : Invariant($"Course {course.Number} is ripped to {text.WithUnit(height)}.");
    }

    public static string Moved(string tag, OpeningLayout opening, SheetLengths text)
    {
        var (along, up) = (opening.Placed.Left - opening.Design.Left, opening.Placed.Bottom - opening.Design.Bottom);
        var wider = opening.Placed.Width - opening.Design.Width;
        var parts = new[]
        {
            (along, along > Length.Zero ? "to the right" : "to the left"), (up, up > Length.Zero ? "up" : "down"), (wider, "wider"),
            (opening.Placed.Height - opening.Design.Height, "taller"),
        };
        var words = parts.Where(part => part.Item1 != Length.Zero).Select(part => $"{text.WithUnit(Length.Abs(part.Item1))} {part.Item2}");
        return $"{tag} as laid out, against its design: {string.Join(", ", words)}; awaits the designer's consent.";
    }

    /// <summary>How this wall meets another.</summary>
    /// <param name="other">Name and number of the other wall.</param>
    /// <param name="place">Where on this wall, or empty.</param>
    /// <param name="tieDatum">Height of this wall's level line over the base from which ties are counted.</param>
    public static string Junction(JunctionLayout junction, string other, string place, string own, SheetLengths text, Length tieDatum)
    {
        var kind = junction.Kind switch
        {
            JunctionKind.Corner => "Corner",
            JunctionKind.Tee => "Tee",
            JunctionKind.Cross => "Crossing",
            _ => "Continued",
        };
        var how = junction.How switch
        {
            JunctionHow.Bonded => "bonded: this wall runs through in " + Through(junction, own),
            JunctionHow.Tied => "ties at " + string.Join(", ", junction.Ties.Select(z => text.Height(z - tieDatum))),
            _ => "butted",
        };
        return $"{kind} with {other}{place}, {how}.";
    }

    internal static string Place(Abutment abutment, SheetLengths text) =>
        $" at {text.Dimension(abutment.From)} to {text.Dimension(abutment.To)}, on the {(abutment.IsBefore ? "viewer's" : "far")} side";

    public static string EndPlace(bool isStart) => isStart ? " at A" : " at B";

    public static string MovementJoint(MovementJoint joint, SheetLengths text) => $"MJ, {text.WithUnit(joint.Width)} wide";

    public static string BeamLabel(BondBeam beam) => $"{beam.Id}  {beam.Bars}";

    /// <summary>Bars of a bond beam, where their laps start, bent bars at corners.</summary>
    public static string BeamBars(BondBeam beam, SheetLengths text)
    {
        var laps = beam.Laps.GroupBy(lap => lap.Bar).Select(bar =>
            Invariant($"bar {bar.Key} at {string.Join(", ", bar.Select(lap => text.Dimension(lap.From)))}")).ToList();
        var lapped = laps.Count == 0 ? string.Empty : $"; laps {text.WithUnit(beam.Lap)}, from {string.Join("; ", laps)}";
        var corners = beam.Corners.IsEmpty ? string.Empty : Invariant($"; {beam.Corners.Sum(corner => corner.Count)} bent, legs {text.WithUnit(beam.Corners[0].Leg)}");
        return beam.Bars + lapped + corners;
    }

    /// <summary>Why a bar stands where it does, in words.</summary>
    public static string BarReason(string why) => why == "movement-joint" ? "movement joint" : why;

    /// <summary>Tags of bars in few words: K1-4, 7.</summary>
    public static string Tags(IEnumerable<Core> cores) => "K" + NumberRanges.Of(cores.Select(core => int.Parse(core.Id.AsSpan(1), CultureInfo.InvariantCulture)));

    public static string BarSchedule(string of, string size, UnitSystem units) => $"{of}, {size}, {(units == UnitSystem.Inch ? "inches" : "mm")}";

    /// <summary>Kilograms, or pounds beside inches, without the unit.</summary>
    public static string Mass(double kilograms, UnitSystem units)
    {
        const double Pound = 0.45359237;
        return Invariant($"{(units == UnitSystem.Inch ? kilograms / Pound : kilograms):0.0}");
    }

    /// <summary>Trough units and grout of a wall's bond beams.</summary>
    public static string BeamQuantities(WallQuantities quantities, UnitSystem units)
    {
        const double CubicFoot = 0.3048 * 0.3048 * 0.3048;
        var grout = units == UnitSystem.Inch ? Invariant($"{quantities.BeamGrout / CubicFoot:0.0} ft3") : Invariant($"{quantities.BeamGrout:0.000} m3");
        return quantities.TroughUnits == 0
            ? Invariant($"Bond beams: concrete {grout}, waste not counted.")
            : Invariant($"Bond beams: {quantities.TroughUnits} trough units among them; grout {grout}, waste not counted.");
    }

    /// <summary>Where equal ones stand.</summary>
    public static string EmbedPlaces(IEnumerable<Embed> equal, SheetLengths text)
    {
        var embeds = equal.ToList();
        var note = embeds[0].Note.Length == 0 ? string.Empty : $"{embeds[0].Note}; ";
        return $"{embeds[0].Product}: {note}at {string.Join(", ", embeds.Select(embed => text.Dimension(embed.At)))}";
    }

    public static string MoreOfAKind(FindingCode code, int count) =>
        Invariant($"{count} more of the kind: {char.ToLowerInvariant(code.Meaning[0])}{code.Meaning[1..].TrimEnd('.')}; see the list of findings.");

    private static string Through(JunctionLayout junction, string own) => (junction.ThroughOdd == own, junction.ThroughEven == own) switch
    {
        (true, true) => "all courses",
        (true, false) => "odd courses",
        (false, true) => "even courses",
        _ => "no course",
    };
}
