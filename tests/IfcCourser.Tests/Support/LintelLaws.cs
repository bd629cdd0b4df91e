using IfcCourser.Catalogs;
using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Tests.Support;

/// <summary>What holds for the lintels of every wall, checked on the result alone; each breach is a line of text.</summary>
internal static class LintelLaws
{
    public static IEnumerable<string> Breaches(Layout layout) => layout.Walls.SelectMany(wall => Breaches(wall, layout.Rules));

    private static IEnumerable<string> Breaches(WallLayout wall, LayoutRules rules) =>
        StandApart(wall).Concat(EveryHeadIsCarried(wall, rules)).Concat(BearingsHold(wall, rules)).Concat(ProductsServe(wall, rules)).Concat(EndsLeaveAPiece(wall, rules))
            .Select(breach => $"{wall.Identity.GlobalId}: {breach}");

    private static IEnumerable<string> StandApart(WallLayout wall)
    {
        foreach (var lintel in wall.Lintels)
        {
            if (wall.Lintels.Any(other => other != lintel && Overlaps(RectOf(lintel), RectOf(other))))
            {
                yield return $"{lintel.Id} overlaps another lintel";
            }

            if (wall.Openings.Any(opening => opening.Interrupts && Overlaps(RectOf(lintel), opening.Placed)))
            {
                yield return $"{lintel.Id} stands in an opening";
            }

            if (wall.Courses.SelectMany(course => course.Pieces).Any(piece => Shared(piece, RectOf(lintel)) > 1e-6))
            {
                yield return $"a piece stands in {lintel.Id}";
            }
        }
    }

    /// <summary>Over every head, less than the head gap under the top aside, lies a lintel, and no block hangs between the two; or it is named as missing.</summary>
    private static IEnumerable<string> EveryHeadIsCarried(WallLayout wall, LayoutRules rules)
    {
        var outline = new ElevationOutline(wall.Outline);
        foreach (var opening in wall.Openings.Where(opening => opening.Interrupts))
        {
            var (id, placed) = (opening.Opening.GlobalId, opening.Placed);
            var over = wall.Lintels.Where(lintel => lintel.From <= placed.Left && lintel.To >= placed.Right && lintel.Bottom >= placed.Top).MinBy(lintel => lintel.Bottom);
            var isMissing = Named(wall, FindingCodes.LintelMissing, id);
            if (over is null && !isMissing && outline.HighestWithin(placed.Left, placed.Right) - placed.Top > rules.Set.PartitionHeadGap)
            {
                yield return $"{id} has no lintel and no finding says so";
            }

            var under = over?.Bottom ?? wall.Courses.FirstOrDefault(course => course.Bottom >= placed.Top)?.Bottom ?? outline.Box.Top;
            if (wall.Courses.SelectMany(course => course.Pieces).Any(piece => Shared(piece, placed with { Bottom = placed.Top, Top = under }) > 1e-6)
                && !wall.Openings.Any(other => other.Interrupts && other != opening && Overlaps(other.Placed, placed with { Bottom = placed.Top, Top = under })))
            {
                yield return $"a block hangs over {id}";
            }

            // Of a gap, a bed joint belongs under the lintel; what is left of the course below is an unfilled place where it is more than a joint.
            var (gap, joint) = ((over?.Bottom ?? placed.Top) - placed.Top, rules.Catalog.BedJoint.Nominal);
            if (gap > joint && !(Named(wall, FindingCodes.HeadOffCourse, id) && (gap <= joint * 2 || wall.Findings.Any(finding => finding.Code == FindingCodes.OutlineNotFilled))))
            {
                yield return $"{id} has a gap under its lintel that no finding names";
            }
        }
    }

    private static IEnumerable<string> BearingsHold(WallLayout wall, LayoutRules rules)
    {
        foreach (var lintel in wall.Lintels)
        {
            var least = Length.Max(rules.Catalog.Lintels.FirstOrDefault(product => product.Name == lintel.Product)?.Bearing ?? rules.Catalog.LintelBearing, rules.Set.LeastBearing);
            if (Length.Min(lintel.BearingLeft, lintel.BearingRight) < least
                && !wall.Findings.Any(finding => finding.Code == FindingCodes.BearingShort && finding.At?.S >= lintel.From && finding.At.S < lintel.To))
            {
                yield return $"{lintel.Id} bears short and no finding says so";
            }

            if (lintel.BearingLeft < Length.Zero || lintel.BearingRight < Length.Zero)
            {
                yield return $"{lintel.Id} does not reach its jambs";
            }
        }
    }

    /// <summary>Spans, widths and classes are those of the table; a beam is formed and named where none serves or finds room.</summary>
    private static IEnumerable<string> ProductsServe(WallLayout wall, LayoutRules rules)
    {
        foreach (var lintel in wall.Lintels)
        {
            if (lintel.Kind == LintelKind.Formed)
            {
                if (!wall.Findings.Any(finding => finding.Code == FindingCodes.LintelFormed && finding.At?.S >= lintel.From && finding.At.S < lintel.To))
                {
                    yield return $"{lintel.Id} is formed and no finding says so";
                }

                continue;
            }

            var product = rules.Catalog.Lintels.Single(product => product.Name == lintel.Product);
            var widest = wall.Openings.Where(opening => opening.Interrupts && opening.Placed.Left >= lintel.From && opening.Placed.Right <= lintel.To && opening.Placed.Top <= lintel.Bottom
                    && lintel.Bottom - opening.Placed.Top < rules.Catalog.CoursePitch)
                .Max(opening => opening.Placed.Width);
            if (product.MaxClearSpan < widest || product.LoadClass < rules.Set.LintelLoadClass || product.Height != lintel.Top - lintel.Bottom)
            {
                yield return $"{lintel.Id} spans more than {product.Name} may";
            }
        }
    }

    /// <summary>What is left in a lintel's courses to its ends' next lintel is a joint, or room for a piece.</summary>
    private static IEnumerable<string> EndsLeaveAPiece(WallLayout wall, LayoutRules rules)
    {
        var joint = rules.Catalog.HeadJoint.Nominal;
        foreach (var lintel in wall.Lintels)
        {
            var next = wall.Lintels.Where(other => other.From >= lintel.To && other.Bottom < lintel.Top && other.Top > lintel.Bottom).MinBy(other => other.From);
            var gap = next is null ? Length.Zero : next.From - lintel.To;
            var isParted = next is not null && wall.Openings.Any(opening => opening.Interrupts
                && opening.Placed.Left < next.From && opening.Placed.Right > lintel.To && opening.Placed.Bottom < lintel.Top && opening.Placed.Top > lintel.Bottom);
            if (next is not null && !isParted && gap != joint && gap < rules.MinPiece + (2 * joint))
            {
                yield return $"{lintel.Id} leaves {gap} to {next.Id}";
            }

            if (wall.Wall.Start.Kind == EndKind.Free && lintel.From > Length.Zero && lintel.From < rules.MinPiece + joint)
            {
                yield return $"{lintel.Id} leaves {lintel.From} to the wall's start";
            }
        }
    }

    private static ElevationRect RectOf(Lintel lintel) => new(lintel.From, lintel.To, lintel.Bottom, lintel.Top);

    private static bool Overlaps(ElevationRect a, ElevationRect b) => a.Left < b.Right && b.Left < a.Right && a.StandsBeside(b);

    private static double Shared(Piece piece, ElevationRect rect) =>
        piece.From >= rect.Right || piece.To <= rect.Left || piece.Bottom >= rect.Top || piece.Top <= rect.Bottom ? 0
            : new ElevationOutline(piece.Outline ?? [new(piece.From, piece.Bottom), new(piece.To, piece.Bottom), new(piece.To, piece.Top), new(piece.From, piece.Top)]).AreaWithin(rect);

    private static bool Named(WallLayout wall, FindingCode code, string opening) =>
        wall.Findings.Any(finding => finding.Code == code && finding.At?.Opening == opening);
}
