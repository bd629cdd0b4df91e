using IfcCourser.Catalogs;
using IfcCourser.Findings;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Tests.Support;

/// <summary>The laws of bond beams, checked on the result alone; each breach is a line of text.</summary>
internal static class BeamLaws
{
    public static IEnumerable<string> Breaches(Layout layout) => layout.Walls
        .SelectMany(wall => AreNeverRipped(wall, layout.Rules).Concat(TopsHaveBeams(wall, layout.Rules)).Concat(AreNotTooFarApart(wall, layout.Rules)).Concat(BarsHaveTroughs(wall)).Concat(BarsRunThrough(wall, layout))
            .Select(breach => $"{wall.Identity.GlobalId}: {breach}"))
        .Concat(layout.Junctions.Where(junction => junction is { Kind: JunctionKind.Corner, How: JunctionHow.Bonded }).SelectMany(junction => MeetAtCorners(layout, junction)));

    private static bool HasBeams(WallLayout wall, LayoutRules rules) => rules.Set.BondBeams is { } rule
        && (rule.Walls == BeamedWalls.All || wall.Wall.LoadBearing != false)
        && rules.Catalog.Widths.Where(width => width.Actual == wall.Frame.Thickness).Select(width => width.Nominal).Append(wall.Frame.Thickness).Max() >= rule.LeastWall;

    private static IEnumerable<string> AreNeverRipped(WallLayout wall, LayoutRules rules)
    {
        foreach (var course in wall.Courses.Where(course => course.Kind == CourseKind.BondBeam && course.Top - course.Bottom != rules.Catalog.UnitHeight))
        {
            yield return $"beam course {course.Number} is {course.Top - course.Bottom} high";
        }

        foreach (var piece in wall.Courses.SelectMany(course => course.Pieces).Where(piece => piece.IsTrough && (piece.Height != rules.Catalog.UnitHeight || piece.Outline is not null || (piece.Cut & ~Cuts.Length) != Cuts.None)))
        {
            yield return $"trough {piece.Id} is cut otherwise than to length";
        }
    }

    /// <summary>Every level top has a course that is a beam within the distance, or a finding; sloping ones a raked beam or a finding.</summary>
    private static IEnumerable<string> TopsHaveBeams(WallLayout wall, LayoutRules rules)
    {
        if (!HasBeams(wall, rules) || rules.Set.BondBeams is not { Tops: not BeamedTops.None } rule)
        {
            yield break;
        }

        var outline = wall.Outline;
        for (var i = 0; i < outline.Length; i++)
        {
            var (from, to) = (outline[(i + 1) % outline.Length], outline[i]);
            var isTop = from.S < to.S;
            var isNamed = wall.Findings.Any(finding => finding.Code == FindingCodes.BondBeamMissing && (finding.At?.Z == to.Z || finding.At?.S == from.S));
            if (isTop && from.Z == to.Z && !isNamed
                && !wall.BondBeams.Any(beam => beam.Top <= to.Z + rules.Catalog.BedJoint.Nominal && to.Z - beam.Top <= Length.Max(rule.TopWithin, rules.Set.MortarRest)))
            {
                yield return $"the top at {to.Z} has no beam";
            }

            if (isTop && from.Z != to.Z && !isNamed
                && !wall.BondBeams.Any(beam => beam.Kind == BondBeamKind.Raked && beam.From <= from.S + Length.FromMm(1) && beam.To >= to.S - Length.FromMm(1)))
            {
                yield return $"the slope from {from.S} to {to.S} has no beam";
            }
        }
    }

    /// <summary>
    /// Bars reach from cover to cover, each goes on in the next by a lap, none is longer than the stock; all lie within the wall and apart from each other; the
    /// schedule has as many, none shorter by more than its step, an inch.
    /// </summary>
    private static IEnumerable<string> BarsRunThrough(WallLayout wall, Layout layout)
    {
        if (layout.Rules.Set.BondBeams?.Bars is not { } rule)
        {
            yield break;
        }

        foreach (var beam in wall.BondBeams.Where(beam => beam.Outline is null && beam.To - beam.From > rule.Cover.End * 2))
        {
            foreach (var bars in Enumerable.Range(1, rule.Count).Select(bar => beam.Steel.Where(piece => piece.Bar == bar).ToList()))
            {
                if (bars.Count == 0 || bars[0].From != beam.From + rule.Cover.End || bars[^1].To != beam.To - rule.Cover.End
                    || bars.Zip(bars.Skip(1)).Any(pair => pair.First.To - pair.Second.From != rule.Lap) || bars.Exists(bar => bar.Size > rule.Stock))
                {
                    yield return $"bars of {beam.Id} don't run through";
                }
            }

            if (beam.Steel.Any(bar => bar.Across < rule.Size.Diameter / 2 || bar.Across > wall.Frame.Thickness - (rule.Size.Diameter / 2) || bar.Height > beam.Top - beam.Bottom)
                || beam.Steel.GroupBy(bar => bar.Bar).Select(bar => bar.First().Across).Order().Zip(beam.Steel.GroupBy(bar => bar.Bar).Select(bar => bar.First().Across).Order().Skip(1)).Any(pair => pair.Second - pair.First < rule.Size.Diameter))
            {
                yield return $"bars of {beam.Id} leave the wall or lie in each other";
            }
        }

        var listed = layout.BarSchedule.Where(row => row.Use == BarUse.Beam && row.Wall == wall.Identity.GlobalId).ToList();
        var laid = wall.BondBeams.SelectMany(beam => beam.Steel).ToList();
        var missing = laid.Sum(bar => bar.Size.Inches) - listed.Sum(row => row.Number * row.Length.Inches);
        if (listed.Sum(row => row.Number) != laid.Count || Math.Abs(missing) > laid.Count)
        {
            yield return $"{laid.Count} beam bars, {listed.Sum(row => row.Number)} in the schedule; {missing} in missing";
        }
    }

    private static IEnumerable<string> AreNotTooFarApart(WallLayout wall, LayoutRules rules)
    {
        if (!HasBeams(wall, rules) || rules.Set.BondBeams!.LargestSpacing is not { } spacing)
        {
            yield break;
        }

        var middles = wall.Courses.Where(course => course.Kind == CourseKind.BondBeam).Select(course => (course.Bottom + course.Top) / 2).ToList();
        foreach (var (low, high) in middles.Prepend(Length.Zero).Zip(middles.Append(wall.Courses[^1].Top)))
        {
            if (high - low > spacing && !wall.Findings.Any(finding => finding.Code == FindingCodes.BondBeamMissing && finding.At?.Z == low))
            {
                yield return $"no beam from {low} to {high}";
            }
        }
    }

    /// <summary>Between a beam's ends bars lie in trough units, trough or formed lintels, or formed concrete; nowhere else is a trough.</summary>
    private static IEnumerable<string> BarsHaveTroughs(WallLayout wall)
    {
        foreach (var beam in wall.BondBeams.Where(beam => beam.Kind == BondBeamKind.Trough))
        {
            var course = wall.Courses.Single(course => course.Number == beam.Course);
            foreach (var piece in course.Pieces.Where(piece => piece.From < beam.To && piece.To > beam.From && !piece.IsTrough))
            {
                yield return $"{piece.Id} lies in {beam.Id} and is no trough";
            }

            foreach (var lintel in wall.Lintels.Where(lintel => lintel.Kind == LintelKind.Solid && lintel.From < beam.To && lintel.To > beam.From && lintel.Bottom < beam.Top && lintel.Top > beam.Bottom))
            {
                yield return $"solid lintel {lintel.Id} lies in {beam.Id}";
            }

            foreach (var joint in wall.MovementJoints.Where(joint => joint.At > beam.From && joint.At < beam.To && joint.Bottom < beam.Top && joint.Top > beam.Bottom))
            {
                yield return $"{beam.Id} crosses the movement joint at {joint.At}";
            }
        }

        foreach (var (course, piece) in wall.Courses.SelectMany(course => course.Pieces.Where(piece => piece.IsTrough).Select(piece => (course, piece))))
        {
            if (wall.BondBeams.Count(beam => beam.Course == course.Number && beam.From <= piece.From && beam.To >= piece.To) != 1)
            {
                yield return $"trough {piece.Id} lies in no beam, or in two";
            }
        }
    }

    /// <summary>Where one wall of a bonded corner has a beam over its length, the other has one at the same height if a course of it lies there, or a finding tells that its courses lie at other heights.</summary>
    private static IEnumerable<string> MeetAtCorners(Layout layout, JunctionLayout junction)
    {
        var walls = junction.Walls.Select(id => layout.Walls.FirstOrDefault(wall => wall.Identity.GlobalId == id)).ToList();
        if (walls is not [{ } first, { } second] || !HasBeams(first, layout.Rules) || !HasBeams(second, layout.Rules))
        {
            yield break;
        }

        foreach (var (wall, other) in new[] { (first, second), (second, first) })
        {
            var rise = Length.FromModelMm(wall.Frame.Origin.Z - other.Frame.Origin.Z);
            foreach (var beam in wall.Courses.Where(course => course.Kind == CourseKind.BondBeam))
            {
                var beside = other.Courses.Where(course => course.Bottom < beam.Top + rise && course.Top > beam.Bottom + rise).ToList();
                var isMet = beside.TrueForAll(course => course.Kind == CourseKind.Levelling || (course.Kind == CourseKind.BondBeam && course.Bottom == beam.Bottom + rise && course.Top == beam.Top + rise));
                if (!isMet && (beside.Exists(course => course.Bottom == beam.Bottom + rise && course.Top == beam.Top + rise) || !wall.Findings.Any(finding =>
                    finding.Code == FindingCodes.BondBeamInterrupted && finding.At is { } at && at.Course == beam.Number && at.Walls.Contains(other.Identity.GlobalId, StringComparer.Ordinal))))
                {
                    yield return $"{wall.Identity.GlobalId}: the beam in course {beam.Number} does not go on in {other.Identity.GlobalId}";
                }
            }
        }
    }
}
