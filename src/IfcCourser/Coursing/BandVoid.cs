using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>A stretch of a course that openings, notches or other walls take, and what heights of it they leave to lower pieces.</summary>
/// <param name="Run">From the leftmost to the rightmost jamb.</param>
/// <param name="Left">What masonry before it stands against.</param>
/// <param name="Right">What masonry behind it stands against.</param>
/// <param name="Strips">Heights left for masonry, from the bottom up; empty where the course is interrupted.</param>
/// <param name="Gaps">Heights left without masonry: too low for a piece, or over a head, where nothing would carry one.</param>
internal sealed record BandVoid(Interval Run, EdgeKind Left, EdgeKind Right, ImmutableArray<Interval> Strips, ImmutableArray<Interval> Gaps)
{
    /// <summary>The voids of a course; openings above each other within it count as one.</summary>
    /// <param name="band">The course's height.</param>
    /// <param name="rects">Openings, notches and other walls with the edge they make.</param>
    /// <param name="leastStrip">Least height of a piece.</param>
    /// <param name="slit">Widest void that is not coursed around.</param>
    public static ImmutableArray<BandVoid> Of(Interval band, IEnumerable<(ElevationRect Rect, EdgeKind Edge)> rects, Length leastStrip, Length slit)
    {
        var voids = ImmutableArray.CreateBuilder<BandVoid>();
        var group = new List<(ElevationRect Rect, EdgeKind Edge)>();
        foreach (var rect in rects.Where(r => r.Rect.Bottom < band.To && r.Rect.Top > band.From).OrderBy(r => r.Rect.Left).ThenBy(r => r.Rect.Right))
        {
            if (group.Count > 0 && rect.Rect.Left >= group.Max(r => r.Rect.Right))
            {
                voids.AddRange(Apart(band, group, leastStrip, slit));
                group.Clear();
            }

            group.Add(rect);
        }

        if (group.Count > 0)
        {
            voids.AddRange(Apart(band, group, leastStrip, slit));
        }

        return voids.ToImmutable();
    }

    // Slits that two joints would close are sawn into the piece. Where an opening meets a notch or another wall, one under the
    // other, they leave masonry beside the column that both take.
    private static List<BandVoid> Apart(Interval band, List<(ElevationRect Rect, EdgeKind Edge)> group, Length leastStrip, Length slit)
    {
        var merged = Merge(band, group, leastStrip);
        if (merged.Run.Size <= slit)
        {
            return [];
        }

        if (!merged.Strips.IsEmpty || group.TrueForAll(r => r.Edge == EdgeKind.Jamb))
        {
            return [merged];
        }

        var edges = group.SelectMany(r => new[] { r.Rect.Left, r.Rect.Right }).Distinct().Order().ToList();
        var columns = edges.Zip(edges.Skip(1), (left, right) => Column(left, right)).ToList();
        return columns.Exists(column => !column.Strips.IsEmpty) ? columns : [merged];

        BandVoid Column(Length left, Length right)
        {
            var taken = group.Where(r => r.Rect.Left < right && r.Rect.Right > left).ToList();
            var column = Merge(band, [.. taken.Select(r => (r.Rect with { Left = left, Right = right }, r.Edge))], leastStrip) with
            {
                Left = EdgeOf(taken.Where(r => r.Rect.Left == left).Select(r => r.Edge)),
                Right = EdgeOf(taken.Where(r => r.Rect.Right == right).Select(r => r.Edge)),
            };
            return right - left >= leastStrip ? column : column with { Strips = [] };
        }
    }

    private static BandVoid Merge(Interval band, List<(ElevationRect Rect, EdgeKind Edge)> group, Length leastStrip)
    {
        var free = new List<(Interval Height, EdgeKind Under)>();
        var (from, under) = (band.From, EdgeKind.Free);
        foreach (var (rect, edge) in group.OrderBy(r => r.Rect.Bottom).ThenBy(r => r.Rect.Top))
        {
            free.Add((new Interval(from, rect.Bottom), under));
            (from, under) = rect.Top >= from ? (rect.Top, edge) : (from, under);
        }

        free.Add((new Interval(from, band.To), under));
        bool IsLaid((Interval Height, EdgeKind Under) strip) => strip.Height.Size >= leastStrip && strip.Under != EdgeKind.Jamb;
        var run = new Interval(group.Min(r => r.Rect.Left), group.Max(r => r.Rect.Right));
        return new BandVoid(
            run,
            EdgeOf(group.Where(r => r.Rect.Left == run.From).Select(r => r.Edge)),
            EdgeOf(group.Where(r => r.Rect.Right == run.To).Select(r => r.Edge)),
            [.. free.Where(IsLaid).Select(strip => strip.Height)],
            [.. free.Where(strip => !strip.Height.IsEmpty && !IsLaid(strip)).Select(strip => strip.Height)]);
    }

    // Against a notch of the outline the masonry ends free, though another wall stands in a part of it.
    private static EdgeKind EdgeOf(IEnumerable<EdgeKind> edges) => edges.DefaultIfEmpty(EdgeKind.Free).MinBy(edge => edge switch { EdgeKind.Jamb => 0, EdgeKind.Free => 1, _ => 2 });
}
