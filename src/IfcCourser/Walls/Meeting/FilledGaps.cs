using System.Collections.Immutable;
using IfcCourser.Walls.Reading;

namespace IfcCourser.Walls.Meeting;

/// <summary>
/// Some programs cut a wall in two where another one passes: such gaps are no openings. They are closed, and the wall that
/// was cut yields to the one that passes.
/// </summary>
public static class FilledGaps
{
    /// <summary>The walls without the gaps that other walls stand in, and the encounters with the cut wall second at crossings.</summary>
    public static (ImmutableArray<WallDraft> Walls, ImmutableArray<Encounter> Joined) Of(ImmutableArray<WallDraft> walls, ImmutableArray<Encounter> joined) => (
        [
            .. walls.Select((wall, i) => wall with
            {
                Openings = [.. wall.Openings.Where(opening => !joined.Any(encounter => Fills(encounter, i, wall, opening)))],
            }),
        ],
        [
            .. joined.Select(encounter => encounter.Kind == JunctionKind.Cross && IsCut(walls, encounter, encounter.First.Wall) && !IsCut(walls, encounter, encounter.Second.Wall)
                ? encounter with { First = encounter.Second, Second = encounter.First }
                : encounter),
        ]);

    private static bool IsCut(ImmutableArray<WallDraft> walls, Encounter encounter, int wall) =>
        walls[wall].Openings.Any(opening => Fills(encounter, wall, walls[wall], opening));

    private static bool Fills(Encounter encounter, int wall, WallDraft draft, OpeningDraft opening)
    {
        if (!opening.Opening.IsFixed || (encounter.First.Wall != wall && encounter.Second.Wall != wall) || encounter.Kind == JunctionKind.Continued)
        {
            return false;
        }

        var gap = opening.Shape.Bounds;
        var height = encounter.Height.ShiftedBy(-draft.Space.Origin.Z);
        return new Slab(gap.Left, gap.Right).Common(encounter.ArmOf(wall).Stretch) > gap.Width / 2
            && new Slab(gap.Bottom, gap.Top).Common(height) > gap.Height / 2;
    }
}
