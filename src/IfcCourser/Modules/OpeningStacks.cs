using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Units;

namespace IfcCourser.Modules;

/// <summary>Openings that stand above each other with a jamb or their middles in line: the facade shows it where one moves alone.</summary>
internal static class OpeningStacks
{
    /// <summary>The openings, each a stack of its own.</summary>
    public static ImmutableArray<MovableOpening> Alone(ImmutableArray<MovableOpening> openings) =>
        [.. openings.Select((opening, i) => opening with { Stack = i })];

    /// <summary>The openings, numbered by the stacks they belong to.</summary>
    /// <param name="openings">Openings of a facade.</param>
    /// <param name="tolerance">Jambs and middles no further apart than this are in line.</param>
    public static ImmutableArray<MovableOpening> InLine(ImmutableArray<MovableOpening> openings, Length tolerance)
    {
        var stacks = Enumerable.Range(0, openings.Length).ToArray();
        for (var i = 0; i < openings.Length; i++)
        {
            for (var j = 0; j < i; j++)
            {
                if (IsInLine(openings[i], openings[j], tolerance))
                {
                    var (kept, given) = (Math.Min(stacks[i], stacks[j]), Math.Max(stacks[i], stacks[j]));
                    stacks = [.. stacks.Select(stack => stack == given ? kept : stack)];
                }
            }
        }

        return [.. openings.Select((opening, i) => opening with { Stack = stacks[i] })];
    }

    private static bool IsInLine(MovableOpening a, MovableOpening b, Length tolerance) =>
        !a.IsFixed && !b.IsFixed && (a.Wall != b.Wall || !a.Design.StandsBeside(b.Design))
        && (Length.Abs(a.Design.Left - b.Design.Left) <= tolerance
            || Length.Abs(a.Design.Right - b.Design.Right) <= tolerance
            || Length.Abs(MiddleOf(a.Design) - MiddleOf(b.Design)) <= tolerance);

    private static Length MiddleOf(ElevationRect rect) => (rect.Left + rect.Right) / 2;
}
