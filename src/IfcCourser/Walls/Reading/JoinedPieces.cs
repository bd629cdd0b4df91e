using System.Collections.Immutable;
using IfcCourser.Geometry;

namespace IfcCourser.Walls.Reading;

/// <summary>One outline around the masonry of a wall whose body falls into pieces side by side.</summary>
/// <param name="Outline">One polygon, its holes still open.</param>
/// <param name="Gaps">Between two pieces, as high as both stand there.</param>
/// <param name="LeftOut">Area, mm2, of pieces above, below or away from the others.</param>
public sealed record JoinedPieces(Region Outline, ImmutableArray<Region> Gaps, double LeftOut)
{
    /// <summary>Narrower gaps, mm, are closed. Common practice, no source.</summary>
    private const double Closed = 20;

    /// <summary>Pieces that share less height than this, mm, stand above each other.</summary>
    private const double LeastHeight = 100;

    /// <summary>Joins the pieces beside the largest one to it.</summary>
    /// <param name="elevation">Not empty.</param>
    public static JoinedPieces Of(Region elevation)
    {
        var pieces = elevation.Parts;
        var rights = pieces.Skip(1).Where(piece => piece.Bounds.Left >= pieces[0].Bounds.Right).OrderBy(piece => piece.Bounds.Left);
        var lefts = pieces.Skip(1).Where(piece => piece.Bounds.Right <= pieces[0].Bounds.Left).OrderByDescending(piece => piece.Bounds.Right);
        var right = rights.Aggregate(new JoinedPieces(pieces[0], [], 0), (joined, piece) => joined.With(piece, joined.Outline.Bounds.Right, piece.Bounds.Left));
        var all = lefts.Aggregate(right, (joined, piece) => joined.With(piece, piece.Bounds.Right, joined.Outline.Bounds.Left));
        return all with { LeftOut = elevation.Subtract(all.Outline).Area };
    }

    // The piece as joined by a gap from one place of the run to another; without it where the two ends share no height.
    private JoinedPieces With(Region piece, double from, double to)
    {
        const double Edge = 1;
        var (left, right) = (Strip(from - Edge, from), Strip(to, to + Edge));
        var gap = Region.Of(new Rect(from, Math.Max(left.Bottom, right.Bottom), to, Math.Min(left.Top, right.Top)));
        if (gap.IsEmpty || gap.Bounds.Height < LeastHeight)
        {
            return this;
        }

        return this with { Outline = Outline.Union(piece).Union(gap), Gaps = to - from <= Closed ? Gaps : Gaps.Add(gap) };

        Rect Strip(double start, double end)
        {
            var whole = Outline.Union(piece);
            return whole.Intersect(Region.Of(new Rect(start, whole.Bounds.Bottom, end, whole.Bounds.Top))).Bounds;
        }
    }
}
