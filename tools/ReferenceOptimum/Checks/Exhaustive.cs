using System.Collections.Immutable;
using ReferenceOptimum.Problems;
using ReferenceOptimum.Solving;

namespace ReferenceOptimum.Checks;

/// <summary>The best bond of a toy block by trying every filling of every course and every place of every bar on the grid.</summary>
internal static class Exhaustive
{
    public static BondCount Best(Block block)
    {
        var best = new BondCount(int.MaxValue, 0, 0);
        foreach (var bars in Places(block))
        {
            // The best wall up to a course, by the filling of that course: later courses do not see further down.
            var below = new List<(ImmutableArray<ImmutableArray<Stretch>> Runs, BondCount Count)>();
            for (var course = block.FirstCourse; course <= block.LastCourse; course++)
            {
                var alone = block.Window(course, course) with { Bars = [.. block.Bars.Select(bar => bar with { Courses = [.. bar.Courses.Where(c => c.Course == course)] })] };
                var fillings = Fillings(alone).Select(runs => (Runs: runs, Count: BlockCount.Of(alone, new BlockBond(runs, bars)))).ToList();
                below = course == block.FirstCourse ? fillings : [.. fillings.Select(filling => (filling.Runs, filling.Count + Least(below, filling.Runs, block.Sizes)))];
            }

            var least = below.Min(wall => wall.Count);
            best = least.CompareTo(best) < 0 ? least : best;
        }

        return best;
    }

    /// <summary>The fewest breaches of a pair of courses, and whether a joint stands under a bearing, by cuts of either course.</summary>
    public static Dictionary<(int Lower, int Upper, bool Bears), int> Pairs(Block pair)
    {
        var fewest = new Dictionary<(int, int, bool), int>();
        var lower = pair.Window(pair.FirstCourse, pair.FirstCourse);
        var upper = pair.Window(pair.LastCourse, pair.LastCourse);
        foreach (var bars in Places(pair))
        {
            foreach (var below in Fillings(lower))
            {
                foreach (var above in Fillings(upper))
                {
                    var count = BlockCount.Of(pair, new BlockBond([.. below, .. above], bars));
                    var key = (Cuts(lower, below), Cuts(upper, above), count.Bearings > 0);
                    fewest[key] = Math.Min(count.Breaches, fewest.GetValueOrDefault(key, int.MaxValue));
                }
            }
        }

        return fewest;
    }

    /// <summary>The cheapest filling of a pair of courses: cuts and joints at their prices, each breach at the price of a lap.</summary>
    public static double Cheapest(Block pair, CoursePrices lower, CoursePrices upper, double lap, bool mayBear, bool mayBreak)
    {
        var cheapest = double.PositiveInfinity;
        var (ofLower, ofUpper) = (pair.Window(pair.FirstCourse, pair.FirstCourse), pair.Window(pair.LastCourse, pair.LastCourse));
        foreach (var bars in Places(pair))
        {
            foreach (var below in Fillings(ofLower))
            {
                var cost = Cost(ofLower, below, lower);
                foreach (var above in Fillings(ofUpper))
                {
                    var count = BlockCount.Of(pair, new BlockBond([.. below, .. above], bars));
                    if ((mayBreak || count.Breaches == 0) && (mayBear || count.Bearings == 0))
                    {
                        cheapest = Math.Min(cheapest, cost + Cost(ofUpper, above, upper) + (count.Breaches * lap));
                    }
                }
            }
        }

        return cheapest;

        double Cost(Block course, ImmutableArray<ImmutableArray<Stretch>> runs, CoursePrices prices) =>
            (Cuts(course, runs) * prices.Cut) + BondCount.Inner(runs).Sum(centre2 => prices.Joints[(centre2 - (2 * pair.Origin)) / pair.Sizes.Grid]);
    }

    private static int Cuts(Block course, ImmutableArray<ImmutableArray<Stretch>> runs) =>
        runs.Select((run, i) => run.Count(piece => course.Stretches[i].Run.IsCut(piece, course.Sizes))).Sum();

    private static BondCount Least(
        List<(ImmutableArray<ImmutableArray<Stretch>> Runs, BondCount Count)> below, ImmutableArray<ImmutableArray<Stretch>> runs, BondSizes sizes)
    {
        var upper = BondCount.Inner(runs).ToList();
        return below.Min(wall =>
        {
            var lower = BondCount.Inner(wall.Runs);
            return wall.Count + new BondCount(lower.Sum(a => upper.Count(b => Math.Abs(a - b) < 2 * sizes.Lap)), 0, 0);
        });
    }

    private static IEnumerable<ImmutableArray<ImmutableArray<Stretch>>> Fillings(Block course) => course.Stretches.Aggregate(
        (IEnumerable<ImmutableArray<ImmutableArray<Stretch>>>)[[]],
        (all, stretch) => [.. all.SelectMany(runs => Fillings(stretch, course.Sizes).Select(run => runs.Add(run)))]);

    public static List<ImmutableArray<Stretch>> Fillings(BlockStretch stretch, BondSizes sizes)
    {
        var all = new List<ImmutableArray<Stretch>>();
        Lay([], stretch.From);
        return all;

        void Lay(ImmutableArray<Stretch> run, long at)
        {
            for (var end = at + sizes.Grid; end <= at + sizes.Unit && end <= stretch.To; end += sizes.Grid)
            {
                var longer = run.Add(new Stretch(at, end));
                if (end == stretch.To && !stretch.Run.IsShort(longer[0], longer[^1]))
                {
                    all.Add(longer);
                }

                for (var joint = sizes.JointMin; joint <= sizes.JointMax && end + joint < stretch.To; joint += sizes.Grid)
                {
                    Lay(longer, end + joint);
                }
            }
        }
    }

    /// <summary>Every choice of places for the bars, on half cells, that keeps the spacing.</summary>
    private static List<ImmutableArray<long>> Places(Block block)
    {
        List<ImmutableArray<long>> all = [[]];
        foreach (var bar in block.Bars)
        {
            all =
            [
                .. all.SelectMany(places => Enumerable.Range(0, (int)((bar.Most2 - bar.Least2) / block.Sizes.Grid) + 1)
                    .Select(step => bar.Least2 + (step * block.Sizes.Grid))
                    .Where(place => bar.SpacedFrom is not { } other || place - places[other] <= 2 * block.Sizes.BarSpacing)
                    .Select(place => places.Add(place))),
            ];
        }

        return all;
    }
}
