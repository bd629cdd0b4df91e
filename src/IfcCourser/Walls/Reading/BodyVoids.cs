using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Ifc;

namespace IfcCourser.Walls.Reading;

/// <summary>Voids that a body has without an opening element: holes, niches in one face, gaps between its pieces.</summary>
public static class BodyVoids
{
    /// <summary>The voids of a wall's masonry.</summary>
    /// <param name="wall">Gives the voids its identity, as they have none.</param>
    /// <param name="pieces">The masonry with its holes open.</param>
    /// <param name="pockets">Where a part of the thickness is missing.</param>
    /// <param name="openings">Voids of opening elements; what they take is no gap.</param>
    public static IEnumerable<OpeningDraft> Of(IfcWallRecord wall, JoinedPieces pieces, Region pockets, IEnumerable<OpeningDraft> openings)
    {
        const double Most = 0.5;
        var taken = openings.Where(opening => opening.GoesThrough).ToList();
        var count = 0;
        WallOpening Nameless(string what)
        {
            count++;
            var id = FormattableString.Invariant($"{wall.GlobalId}/{what}-{count}");
            return new WallOpening(id, null, FormattableString.Invariant($"{what} {count}"), OpeningKind.Void, null, null, default, null);
        }

        foreach (var hole in pieces.Outline.Holes)
        {
            yield return new OpeningDraft(hole, GoesThrough: true, Nameless("hole"));
        }

        foreach (var niche in Niches(pieces.Outline, pockets))
        {
            yield return new OpeningDraft(niche, GoesThrough: false, Nameless("niche"));
        }

        foreach (var gap in pieces.Gaps.Where(gap => !taken.Exists(opening => opening.Shape.Intersect(gap).Area > Most * gap.Area)))
        {
            yield return new OpeningDraft(gap, GoesThrough: true, Nameless("gap") with { IsFixed = true });
        }
    }

    // Pockets that reach the top or the foot belong to walls that enter there.
    private static ImmutableArray<Region> Niches(Region outline, Region pockets)
    {
        const double Rim = 1;
        var all = outline.Bounds;
        return [.. pockets.Parts.Where(part => part.Bounds is var box && box.Bottom > all.Bottom + Rim && box.Top < all.Top - Rim)];
    }
}
