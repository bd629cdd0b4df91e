using IfcCourser.Catalogs;
using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Tests.Support;

/// <summary>The laws that hold in every layout, checked on the result alone; each breach is a line of text.</summary>
internal static class LayoutLaws
{
    public static IEnumerable<string> Breaches(Layout layout) => layout.Walls.SelectMany(wall => Breaches(wall, layout.Rules));

    private static IEnumerable<string> Breaches(WallLayout wall, LayoutRules rules) =>
        wall.Courses.SelectMany(course => SpansAreFilled(course, rules).Concat(PiecesAreWhole(wall, course, rules)))
            .Concat(LapsHold(wall, rules))
            .Concat(CoresAreClear(wall, rules))
            .Concat(CornerCoresAreClear(wall, rules))
            .Concat(OpeningsAreAsWanted(wall, rules))
            .Concat(AreasAddUp(wall))
            .Concat(MovementJointLaws.Breaches(wall, rules))
            .Concat(BarLaws.Breaches(wall, rules))
            .Select(breach => $"{wall.Identity.GlobalId}: {breach}");

    private static IEnumerable<string> SpansAreFilled(Course course, LayoutRules rules)
    {
        foreach (var span in course.Spans)
        {
            // Of pieces above each other the lower ones close the span.
            var row = course.Pieces.Where(piece => piece.From >= span.Run.From && piece.To <= span.Run.To)
                .GroupBy(piece => piece.From).Select(group => group.MinBy(piece => piece.Bottom)!).OrderBy(piece => piece.From).ToList();
            if (row.Count == 0 || row[0].From != span.Run.From || row[^1].To != span.Run.To)
            {
                yield return $"course {course.Number}: a span is not closed";
            }

            foreach (var (left, right) in row.Zip(row.Skip(1)).Where(pair => pair.First.To < pair.Second.From || Stacked(pair.First, pair.Second)))
            {
                if (!rules.Catalog.HeadJoint.Contains(right.From - left.To))
                {
                    yield return $"course {course.Number}: the gap from {left.Id} to {right.Id} is no head joint";
                }
            }
        }
    }

    private static IEnumerable<string> PiecesAreWhole(WallLayout wall, Course course, LayoutRules rules)
    {
        var blocked = wall.Openings.Where(opening => opening.Interrupts).Select(opening => opening.Placed)
            .Concat(wall.Lintels.Select(lintel => new ElevationRect(lintel.From, lintel.To, lintel.Bottom, lintel.Top))).ToList();
        foreach (var piece in course.Pieces)
        {
            var isPart = rules.Catalog.PartLengths.Contains(piece.Length);
            if (piece.Length > rules.Catalog.UnitLength || piece.Bottom < course.Bottom || piece.Top > course.Top)
            {
                yield return $"{piece.Id} is larger than a unit or its course";
            }

            if (piece.Outline is null && piece.Cut.HasFlag(Cuts.Length) == (piece.Length == rules.Catalog.UnitLength || isPart))
            {
                yield return $"{piece.Id} does not tell its cut";
            }

            if (piece.Length < rules.MinPiece && !Named(wall, FindingCodes.PieceShort, at => at.Piece == piece.Id))
            {
                yield return $"{piece.Id} is short and no finding names it";
            }

            if (piece.Outline is null && blocked.Any(rect => rect.Left < piece.To && rect.Right > piece.From && rect.Bottom < piece.Top && rect.Top > piece.Bottom))
            {
                yield return $"{piece.Id} stands in an opening or a lintel";
            }

            if (course.Pieces.Any(other => other.Id != piece.Id && other.From < piece.To && other.To > piece.From && Stacked(other, piece)))
            {
                yield return $"{piece.Id} overlaps another piece";
            }
        }
    }

    private static IEnumerable<string> LapsHold(WallLayout wall, LayoutRules rules)
    {
        foreach (var (low, high) in wall.Courses.Zip(wall.Courses.Skip(1)))
        {
            var (below, belowEdges) = Joints(wall, low, rules);
            var (above, aboveEdges) = Joints(wall, high, rules);
            foreach (var (joint, others) in above.Select(joint => (joint, below.Concat(belowEdges))).Concat(aboveEdges.Select(joint => (joint, below.AsEnumerable()))))
            {
                if (others.Any(other => Length.Abs(other - joint) < rules.MinOverlap - Length.FromMm(0.01))
                    && !Named(wall, FindingCodes.OverlapShort, at => at.Course == high.Number && at.S == joint))
                {
                    yield return $"courses {low.Number} and {high.Number} lap short at {joint} and no finding names it";
                }
            }
        }
    }

    private static IEnumerable<string> CornerCoresAreClear(WallLayout wall, LayoutRules rules)
    {
        foreach (var core in wall.CornerCores)
        {
            foreach (var course in wall.Courses.Where(course => course.Top > core.Bottom && course.Bottom < core.Top))
            {
                var (inner, edges) = Joints(wall, course, rules);
                if (inner.Concat(edges).Any(joint => Length.Abs(joint - core.At) < rules.CoreClearance) && !Named(wall, FindingCodes.CoreOnJoint, at => at.Core is null && at.Course == course.Number))
                {
                    yield return $"the corner's {core.Id} is near a joint of course {course.Number} and no finding names it";
                }

                if (course.Pieces.Any(piece => piece.From < core.At && piece.To > core.At && piece.Top > core.Bottom && piece.Bottom < core.Top && !piece.CornerCores.Contains(core.Id, StringComparer.Ordinal)))
                {
                    yield return $"the corner's {core.Id} passes a piece of course {course.Number} that does not list it";
                }
            }

            if (wall.Lintels.Any(lintel => lintel.Kind != LintelKind.Trough && lintel.From < core.At && lintel.To > core.At && lintel.Bottom < core.Top && lintel.Top > core.Bottom))
            {
                yield return $"the corner's {core.Id} passes a lintel";
            }
        }
    }

    private static IEnumerable<string> CoresAreClear(WallLayout wall, LayoutRules rules)
    {
        foreach (var core in wall.Cores)
        {
            foreach (var course in wall.Courses.Where(course => course.Top > core.Bottom && course.Bottom < core.Top))
            {
                var (inner, edges) = Joints(wall, course, rules);
                if (inner.Concat(edges).Any(joint => Length.Abs(joint - core.At) < rules.CoreClearance)
                    && !Named(wall, FindingCodes.CoreOnJoint, at => at.Core == core.Id && at.Course == course.Number))
                {
                    yield return $"{core.Id} is near a joint of course {course.Number} and no finding names it";
                }

                if (course.Pieces.Any(piece => piece.From < core.At && piece.To > core.At && piece.Top > core.Bottom && piece.Bottom < core.Top && !piece.Cores.Contains(core.Id, StringComparer.Ordinal)))
                {
                    yield return $"{core.Id} passes a piece of course {course.Number} that does not list it";
                }
            }

            if (wall.Openings.Any(o => o.Interrupts && o.Placed.Left < core.At && o.Placed.Right > core.At && o.Placed.Bottom < core.Top && o.Placed.Top > core.Bottom))
            {
                yield return $"{core.Id} stands in an opening";
            }
        }
    }

    private static IEnumerable<string> OpeningsAreAsWanted(WallLayout wall, LayoutRules rules)
    {
        foreach (var opening in wall.Openings)
        {
            var (design, placed) = (opening.Design, opening.Placed);
            if (placed.Width < design.Width || placed.Height < design.Height || placed.Top < design.Top)
            {
                yield return $"{opening.Opening.GlobalId} became smaller or lower";
            }

            if (Length.Abs(placed.Left - design.Left) > rules.MaxShift || Length.Abs(placed.Right - design.Right) > rules.MaxShift)
            {
                yield return $"{opening.Opening.GlobalId} moved too far";
            }
        }
    }

    /// <summary>Pieces, lintels, openings and joints no wider than allowed cover the elevation, or a finding says what is left open.</summary>
    private static IEnumerable<string> AreasAddUp(WallLayout wall)
    {
        // What runs on into a wall that this one is bonded with lies in that one's elevation.
        Length Within(Length s) => Length.Min(Length.Max(s, Length.Zero), wall.Frame.Length);
        var filled = wall.Courses.SelectMany(course => course.Pieces)
            .Sum(piece => piece.From < Length.Zero || piece.To > wall.Frame.Length ? (Within(piece.To) - Within(piece.From)).Mm * piece.Height.Mm / 1e6 : Area(piece))
            + wall.Lintels.Sum(lintel => (lintel.To - lintel.From).Mm * (lintel.Top - lintel.Bottom).Mm / 1e6);
        if (filled > wall.Quantities.NetArea + 0.001)
        {
            yield return $"{filled} m2 of pieces and lintels in {wall.Quantities.NetArea} m2";
        }
    }

    private static double Area(Piece piece) => piece.Outline is { } outline
        ? new ElevationOutline(outline).Area
        : piece.Length.Mm * piece.Height.Mm / 1e6;

    /// <summary>Head joints between pieces and those against walls and lintels; movement joints are neither.</summary>
    private static (List<Length> Inner, List<Length> Edges) Joints(WallLayout wall, Course course, LayoutRules rules)
    {
        var inner = new List<Length>();
        foreach (var left in course.Pieces)
        {
            var right = course.Pieces.Where(piece => piece.From >= left.To && Stacked(piece, left)).MinBy(piece => piece.From);
            if (right is not null && right.From - left.To <= rules.Catalog.HeadJoint.Max && !wall.MovementJoints.Any(joint => joint.At > left.To && joint.At < right.From))
            {
                inner.Add((left.To + right.From) / 2);
            }
        }

        var half = rules.Catalog.HeadJoint.Nominal / 2;
        var edges = course.Spans
            .SelectMany(span => new[] { (span.StartEdge, span.Run.From - half), (span.EndEdge, span.Run.To + half) })
            .Where(edge => edge.Item1 is EdgeKind.Wall or EdgeKind.Lintel)
            .Select(edge => edge.Item2)
            .ToList();
        return ([.. inner.Distinct()], edges);
    }

    private static bool Stacked(Piece a, Piece b) => a.Bottom < b.Top && b.Bottom < a.Top;

    private static bool Named(WallLayout wall, FindingCode code, Func<FindingPlace, bool> isHere) =>
        wall.Findings.Any(finding => finding.Code == code && finding.At is { } at && isHere(at));
}
