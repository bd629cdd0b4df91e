using System.Collections.Immutable;
using IfcCourser.Findings;
using IfcCourser.Geometry;

namespace IfcCourser.Walls.Reading;

/// <summary>
/// Openings that take one and the same void: exported once per layer or wall part, drawn inside each other (a door in its
/// rough opening), or side by side without a jamb between. The mason sees one opening.
/// </summary>
public static class SharedVoids
{
    /// <summary>Edges nearer than this, mm, are one.</summary>
    private const double SameEdge = 1;

    /// <summary>A void of which this share lies in another one lies in it.</summary>
    private const double Inside = 0.98;

    /// <summary>Voids nearer than this, mm, have no masonry between them.</summary>
    private const double Touching = 5;

    /// <summary>The openings with one for each void, and what was made one; equal ones without a word.</summary>
    public static (ImmutableArray<OpeningDraft> Openings, ImmutableArray<Finding> Findings) Merged(IEnumerable<OpeningDraft> openings)
    {
        var kept = new List<OpeningDraft>();
        var findings = ImmutableArray.CreateBuilder<Finding>();
        foreach (var opening in openings.OrderByDescending(opening => Math.Round(opening.Shape.Area)).ThenBy(opening => opening.Opening.GlobalId, StringComparer.Ordinal))
        {
            var same = kept.FindIndex(other => AreOne(other, opening));
            if (same < 0)
            {
                kept.Add(opening);
                continue;
            }

            var other = kept[same];
            kept[same] = Joined(other, opening);
            if (Differ(other.Shape.Bounds, opening.Shape.Bounds) > SameEdge)
            {
                var (stays, goes) = kept[same].Opening.GlobalId == other.Opening.GlobalId ? (other, opening) : (opening, other);
                findings.Add(WallFindings.Merged(stays.Opening, goes.Opening));
            }
        }

        return ([.. kept], findings.ToImmutable());
    }

    private static bool AreOne(OpeningDraft larger, OpeningDraft smaller)
    {
        if (Differ(larger.Shape.Bounds, smaller.Shape.Bounds) <= SameEdge && larger.GoesThrough == smaller.GoesThrough)
        {
            return true;
        }

        // A recess around an opening is no part of it.
        return (larger.GoesThrough && smaller.Shape.Intersect(larger.Shape).Area >= Inside * smaller.Shape.Area)
            || (!larger.GoesThrough && !smaller.GoesThrough && smaller.Shape.Intersect(larger.Shape).Area >= Inside * smaller.Shape.Area)
            || AreSideBySide(larger, smaller);
    }

    // Two doors or windows side by side stay two, whatever stands between them.
    private static bool AreSideBySide(OpeningDraft a, OpeningDraft b)
    {
        var (one, other) = (a.Shape.Bounds, b.Shape.Bounds);
        return a.GoesThrough == b.GoesThrough
            && (a.Opening.FillingId is null || b.Opening.FillingId is null || string.Equals(a.Opening.FillingId, b.Opening.FillingId, StringComparison.Ordinal))
            && Math.Abs(one.Bottom - other.Bottom) <= SameEdge
            && Math.Abs(one.Top - other.Top) <= SameEdge
            && Math.Max(one.Left, other.Left) - Math.Min(one.Right, other.Right) <= Touching;
    }

    // The one with a door or window stays.
    private static OpeningDraft Joined(OpeningDraft larger, OpeningDraft smaller)
    {
        var stays = larger.Opening.FillingId is null && smaller.Opening.FillingId is not null ? smaller : larger;
        var touching = larger.Shape.Union(smaller.Shape);
        return stays with { Shape = touching.Parts.Length == 1 ? touching : Region.Of(touching.Bounds), GoesThrough = larger.GoesThrough };
    }

    private static double Differ(Rect a, Rect b) =>
        new[] { a.Left - b.Left, a.Right - b.Right, a.Bottom - b.Bottom, a.Top - b.Top }.Max(Math.Abs);
}
