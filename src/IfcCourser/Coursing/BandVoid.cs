using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>A stretch of a course that openings or notches take, and what heights of it they leave to lower pieces.</summary>
/// <param name="Run">From the leftmost to the rightmost jamb.</param>
/// <param name="Edge">What masonry beside it stands against.</param>
/// <param name="Strips">Heights left for masonry, from the bottom up; empty where the course is interrupted.</param>
/// <param name="Gaps">Heights left without masonry: too low for a piece, or over a head, where nothing would carry one.</param>
internal sealed record BandVoid(Interval Run, EdgeKind Edge, ImmutableArray<Interval> Strips, ImmutableArray<Interval> Gaps)
{
    /// <summary>The voids of a course; openings above each other within it count as one.</summary>
    /// <param name="band">The course's height.</param>
    /// <param name="rects">Openings and notches with the edge they make.</param>
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
                voids.Add(Merge(band, group, leastStrip));
                group.Clear();
            }

            group.Add(rect);
        }

        if (group.Count > 0)
        {
            voids.Add(Merge(band, group, leastStrip));
        }

        // Slits that two joints would close are sawn into the piece.
        return [.. voids.Where(v => v.Run.Size > slit)];
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
        return new BandVoid(
            new Interval(group.Min(r => r.Rect.Left), group.Max(r => r.Rect.Right)),
            group.Exists(r => r.Edge == EdgeKind.Jamb) ? EdgeKind.Jamb : EdgeKind.Free,
            [.. free.Where(IsLaid).Select(strip => strip.Height)],
            [.. free.Where(strip => !strip.Height.IsEmpty && !IsLaid(strip)).Select(strip => strip.Height)]);
    }
}
