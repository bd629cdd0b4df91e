using System.Collections.Immutable;
using IfcCourser.Geometry;

namespace IfcCourser.Walls.Reading;

/// <summary>Voids that take a whole end, the whole top or the whole foot of a wall: they make it shorter or lower, and are no openings in it.</summary>
public static class RimVoids
{
    /// <summary>Rims that move by no more than this, mm, stay.</summary>
    private const double Least = 1;

    /// <summary>The elevation without them, the openings that are left, and the voids cut off.</summary>
    public static (Region Outline, ImmutableArray<OpeningDraft> Openings, ImmutableArray<OpeningDraft> Cut) Of(
        Region outline, ImmutableArray<OpeningDraft> openings)
    {
        var cut = ImmutableArray.CreateBuilder<OpeningDraft>();
        foreach (var opening in openings.Where(opening => opening.GoesThrough))
        {
            var rest = outline.Subtract(opening.Shape);
            if (rest.Parts.Length == 1 && IsSmaller(rest.Bounds, outline.Bounds))
            {
                outline = rest;
                cut.Add(opening);
            }
        }

        return (outline, [.. openings.Except(cut)], cut.ToImmutable());
    }

    private static bool IsSmaller(Rect rest, Rect all) =>
        rest.Left > all.Left + Least || rest.Right < all.Right - Least || rest.Bottom > all.Bottom + Least || rest.Top < all.Top - Least;
}
