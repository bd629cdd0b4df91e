using IfcCourser.Rules;

namespace IfcCourser.Tests.Modules;

/// <summary>
/// The best placement of openings by trying every one, on whole millimetres, stated again from the rules: jambs off their
/// lines by more than the tolerance, jambs not exactly on a line, movement.
/// </summary>
internal static class AllMoves
{
    /// <summary>An opening in whole millimetres; openings of one stack move together, those of one wall and level crowd each other.</summary>
    public sealed record Opening(int Left, int Right, int Level, int Wall, int Stack, int RunFrom, int RunTo);

    /// <param name="Pitch">Module.</param>
    /// <param name="Joint">Head joint.</param>
    /// <param name="MaxShift">Largest shift of a jamb.</param>
    /// <param name="Tolerance">Of a jamb on a line.</param>
    /// <param name="LeastPier">Least pier.</param>
    public sealed record Limits(OpeningPolicy Policy, int Pitch, int Joint, int MaxShift, int Tolerance, int LeastPier);

    /// <summary>The best score over all starts of the lines.</summary>
    public static (int Off, int Inexact, int Moved) BestOfAllStarts(Opening[] openings, Limits limits) =>
        Enumerable.Range(0, limits.Pitch).Min(start => Best(openings, start, limits));

    /// <summary>The best score on lines from a start.</summary>
    public static (int Off, int Inexact, int Moved) Best(Opening[] openings, int start, Limits limits)
    {
        var stacks = openings.GroupBy(opening => opening.Stack).Select(stack => stack.ToArray()).ToArray();
        var best = (Off: int.MaxValue, Inexact: 0, Moved: 0);
        Try(0, [], (0, 0, 0));
        return best;

        void Try(int stack, (int Left, int Right)[] shifts, (int Off, int Inexact, int Moved) score)
        {
            if (score.CompareTo(best) >= 0)
            {
                return;
            }

            if (stack == stacks.Length)
            {
                best = score;
                return;
            }

            foreach (var shift in Shifts(stacks[stack], start, limits))
            {
                (int Left, int Right)[] tried = [.. shifts, shift];
                if (Holds(stacks, tried, limits))
                {
                    Try(stack + 1, tried, Plus(score, stacks[stack].Select(opening => Score(opening, shift, start, limits)).Aggregate(Plus)));
                }
            }
        }
    }

    /// <summary>Every whole-millimetre shift that could lower a score: none, or one that puts a jamb of the stack on a line.</summary>
    private static IEnumerable<(int Left, int Right)> Shifts(Opening[] stack, int start, Limits limits)
    {
        if (limits.Policy == OpeningPolicy.Keep)
        {
            return [(0, 0)];
        }

        var all = Enumerable.Range(-limits.MaxShift, (2 * limits.MaxShift) + 1).ToArray();
        var lefts = all.Where(shift => shift == 0 || stack.Any(opening => Away(opening.Left + shift + limits.Joint - start, limits) == 0)).ToArray();
        var rights = all.Where(shift => shift == 0 || stack.Any(opening => Away(opening.Right + shift - start, limits) == 0)).ToArray();
        return limits.Policy == OpeningPolicy.Move
            ? lefts.Concat(rights).Distinct().Select(shift => (shift, shift))
            : lefts.Where(left => left <= 0).SelectMany(_ => rights.Where(right => right >= 0), (left, right) => (left, right));
    }

    private static bool Holds(Opening[][] stacks, (int Left, int Right)[] shifts, Limits limits)
    {
        var placed = shifts.SelectMany((shift, i) => stacks[i].Select(opening => (Was: opening, Left: opening.Left + shift.Left, Right: opening.Right + shift.Right))).ToArray();
        return placed.All(one =>
            IsPier(one.Left - one.Was.RunFrom, one.Was.Left - one.Was.RunFrom) && IsPier(one.Was.RunTo - one.Right, one.Was.RunTo - one.Was.Right)
            && placed.Where(other => other.Was.Wall == one.Was.Wall && other.Was.Level == one.Was.Level && other.Was.Left > one.Was.Left)
                .All(other => IsPier(other.Left - one.Right, other.Was.Left - one.Was.Right)));

        bool IsPier(int pier, int designed) => pier >= limits.LeastPier || pier == designed || (designed > 0 && pier > designed);
    }

    private static (int Off, int Inexact, int Moved) Score(Opening opening, (int Left, int Right) shift, int start, Limits limits)
    {
        int[] away = [Away(opening.Left + shift.Left + limits.Joint - start, limits), Away(opening.Right + shift.Right - start, limits)];
        return (away.Count(a => a > limits.Tolerance), away.Count(a => a > 0), Math.Abs(shift.Left) + Math.Abs(shift.Right));
    }

    private static int Away(int place, Limits limits)
    {
        var rest = ((place % limits.Pitch) + limits.Pitch) % limits.Pitch;
        return Math.Min(rest, limits.Pitch - rest);
    }

    private static (int Off, int Inexact, int Moved) Plus((int Off, int Inexact, int Moved) a, (int Off, int Inexact, int Moved) b) =>
        (a.Off + b.Off, a.Inexact + b.Inexact, a.Moved + b.Moved);
}
