using System.Collections.Immutable;
using IfcCourser.Coursing;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Reinforcement;
using IfcCourser.Units;

namespace IfcCourser.Runs;

/// <summary>
/// Bond and bars together: the bond gives way to the bars that it leaves no clear place; where that costs a broken rule or a cut,
/// bars are tried at the ends of their ranges.
/// </summary>
internal sealed class BarBond(
    ImmutableArray<ShapedCourse> shapes,
    ImmutableArray<Lintel> lintels,
    BarPlacement placement,
    ImmutableArray<BarPlace> required,
    BondSolvers solvers)
{
    public (ImmutableArray<LaidCourse> Laid, ImmutableArray<BarPlace> Bars) Solve()
    {
        var fixedBars = required.Where(bar => bar.Range.Size == Length.Zero).ToImmutableArray();
        var free = Try(fixedBars);
        if (free.Score.Breaches == 0)
        {
            return (free.Laid, free.Bars);
        }

        var draft = Move(GiveWay(free), free);
        var best = draft == free ? free : Better(free, solvers.Effort.MaySearch() ? Better(draft, Try(draft.Held)) : draft);
        return (best.Laid, best.Bars);
    }

    public static Bar AsBar(BarPlace bar) => new(bar.At, bar.Heights.From, bar.Heights.To);

    /// <summary>Round after round, the bond is laid around the bars that stand on joints, and at last around all of them.</summary>
    private Attempt GiveWay(Attempt free)
    {
        const int Rounds = 3;
        var (best, last, held) = (free, free, free.Held);
        for (var round = 0; round <= Rounds && best.Score.Breaches > 0 && solvers.Effort.MaySearch(); round++)
        {
            held = held.AddRange(last.Bars.Where(bar => (round == Rounds || OnJoint(bar, last.Laid)) && !held.Any(other => other.At == bar.At && other.Heights == bar.Heights)));
            last = Try(held, isDraft: true);
            best = Better(best, last);
        }

        return best;
    }

    /// <summary>Bar after bar that the free bond has no room for is tried over its range, while rules are broken or bars cost cuts.</summary>
    /// <param name="best">The best so far.</param>
    /// <param name="free">The bond without movable bars.</param>
    private Attempt Move(Attempt best, Attempt free)
    {
        for (var i = 0; i < free.Bars.Length && (best.Score.Breaches > 0 || best.Score.Cuts > free.Score.Cuts); i++)
        {
            if (!OnJoint(free.Bars[i], free.Laid))
            {
                continue;
            }

            var range = RangeOf(free.Bars, i);
            foreach (var place in Places(range).TakeWhile(_ => solvers.Effort.MaySearch()))
            {
                best = Better(best, Try([.. best.Held.Where(bar => !range.Contains(bar.At)), placement.At(free.Bars[i], place)], isDraft: true));
            }
        }

        return best;
    }

    /// <summary>Where a bar may stand; a bar for the spacing as far from those beside it as the rule allows.</summary>
    private Interval RangeOf(ImmutableArray<BarPlace> bars, int i)
    {
        var (bar, spacing) = (bars[i], solvers.Rules.Set.Bars!.LargestSpacing);
        if (bar.Range.Size > Length.Zero || bar.Junction is not null || i == 0 || i == bars.Length - 1)
        {
            return bar.Range;
        }

        var (from, to) = (Length.Max(bars[i - 1].At, bars[i + 1].At - spacing), Length.Min(bars[i + 1].At, bars[i - 1].At + spacing));
        return from < to ? new Interval(from, to) : bar.Range;
    }

    /// <summary>Both ends of a range and places between them, no nearer to each other than a bar to a joint.</summary>
    private IEnumerable<Length> Places(Interval range)
    {
        const int MostBays = 4;
        var bays = range.Size == Length.Zero ? -1 : Math.Clamp((int)(range.Size / solvers.Rules.CoreClearance), 1, MostBays);
        return Enumerable.Range(0, bays + 1).Select(bay => range.From + (range.Size * bay / bays));
    }

    private static Attempt Better(Attempt best, Attempt other) => other.Score.CompareTo(best.Score) < 0 ? other : best;

    private Attempt Try(ImmutableArray<BarPlace> held, bool isDraft = false)
    {
        var laid = new WallBond(shapes, lintels, [.. held.Select(AsBar)], solvers).Solve(isDraft);
        var courses = laid.Select(course => new CourseMasonry(new Interval(course.Shape.Band.Bottom, course.Shape.Band.Top), [.. course.Joints], [.. course.Pieces])).ToList();
        var bars = placement.SettleAll(courses, isDraft);
        return new Attempt(held, laid, bars, BondScore.Of(laid, [.. bars.Select(AsBar)], lintels, solvers.Rules));
    }

    private bool OnJoint(BarPlace bar, ImmutableArray<LaidCourse> laid) => laid.Any(course =>
        AsBar(bar).Passes(course.Shape.Band) && LapCheck.Nearest(course.Joints, bar.At) < solvers.Rules.CoreClearance);

    private sealed record Attempt(ImmutableArray<BarPlace> Held, ImmutableArray<LaidCourse> Laid, ImmutableArray<BarPlace> Bars, BondScore Score);
}
