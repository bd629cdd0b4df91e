using System.Collections.Immutable;
using CsCheck;
using IfcCourser.Catalogs;
using IfcCourser.Coursing;
using IfcCourser.Geometry;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Tests.Coursing;

public sealed class PairSolverTests
{
    /// <summary>A toy catalog on a 10 mm grid, small enough to try every pair of fillings: unit 60, part 30, joint 10, least piece 20, lap 20.</summary>
    private static readonly Catalog _toy = BuiltInCatalogs.Get("aac-mm") with
    {
        UnitLength = Length.FromMm(60),
        PartLengths = [Length.FromMm(30)],
        HeadJoint = new LengthRange(Length.FromMm(10), Length.FromMm(10), Length.FromMm(10)),
        CutGrid = Length.FromMm(10),
        MinPiece = Length.FromMm(20),
        PreferredPiece = Length.FromMm(20),
    };

    private static readonly LayoutRules _rules = LayoutRules.For(BuiltInRuleSets.Get("none"), _toy, OpeningPolicy.Keep) with
    {
        MinPiece = _toy.MinPiece,
        PreferredPiece = _toy.PreferredPiece,
        MinOverlap = Length.FromMm(20),
    };

    private static readonly RowLaps _laps = new(Length.FromMm(100), _rules);

    [Fact]
    public void Two_rows_have_as_few_cuts_as_the_best_of_all_pairs_without_a_breach() => Gen.Select(
        Gen.Int[8, 16], Gen.Int[8, 16], Gen.Int[-4, 4], Gen.Int[0, 15].Array[0, 2], Gen.Bool.Array[4])
        .ForAll((lower, upper, shift, joints, jambs) =>
        {
            // Cut pieces at some of the four ends cost three cuts more.
            var ends = jambs.Select(isJamb => SegmentEnd.Upright(isJamb ? 3 * _rules.Set.Aims.Cut : 0)).ToList();
            var zones = joints.Select(joint => new JointZone(Length.FromMm(10 * joint), Length.FromMm(20), BondAims.Breach)).ToImmutableArray();
            var below = new PairTask(Length.Zero, Task(lower, zones) with { Start = ends[0], End = ends[1] }, 1);
            var above = new PairTask(Length.FromMm(10 * shift), Task(upper, []) with { Start = ends[2], End = ends[3] }, 1);
            var best = Fillings(lower).SelectMany(a => Fillings(upper).Select(b => Cost(below, a, above, b))).Min();
            var found = new PairSolver(_laps, new BondEffort(), _rules).Solve(below, above, BondAims.Breach);
            Assert.Equal(best < BondAims.Breach, found.Pieces is not null);
            if (found.Pieces is { } rows)
            {
                Assert.Equal(best / _rules.Set.Aims.Cut, Cost(below, rows.Lower, above, rows.Upper) / _rules.Set.Aims.Cut);
            }
        });

    [Fact]
    public void What_is_known_already_is_not_found_again()
    {
        var row = new PairTask(Length.Zero, Task(13, []), 1);
        var solver = new PairSolver(_laps, new BondEffort(), _rules);
        var (a, b) = solver.Solve(row, row, BondAims.Breach).Pieces!.Value;
        Assert.Null(solver.Solve(row, row, Cost(row, a, row, b)).Pieces);
    }

    [Fact]
    public void What_two_rows_cost_at_least_is_never_over_the_best_of_all_pairs_however_little_may_be_searched() => Gen.Select(
        Gen.Int[8, 16], Gen.Int[8, 16], Gen.Int[-4, 4], Gen.Int[0, 2].Select(i => i == 0 ? 0 : 199_998 + i))
        .ForAll((lower, upper, shift, spent) =>
        {
            var below = new PairTask(Length.Zero, Task(lower, []), 1);
            var above = new PairTask(Length.FromMm(10 * shift), Task(upper, []), 1);
            var best = Math.Min(BondAims.Breach, Fillings(lower).SelectMany(a => Fillings(upper).Select(b => Cost(below, a, above, b))).Min());
            var effort = new BondEffort();
            effort.SpendPairs(spent, JointWidths.Useful);
            var least = new PairSolver(_laps, effort, _rules).Solve(below, above, BondAims.Breach).Least;
            Assert.True(least <= best, $"{least} over {best}");
            if (spent == 0)
            {
                // To the cut: a lap under the preferred one past the last joint of a row that is done is not counted.
                Assert.Equal(best / _rules.Set.Aims.Cut, least / _rules.Set.Aims.Cut);
            }
        });

    private static SegmentTask Task(int cells, ImmutableArray<JointZone> zones) =>
        new(Length.FromMm(10 * cells), SegmentEnd.Upright(0), SegmentEnd.Upright(0), zones);

    private static long Cost(PairTask lower, ImmutableArray<Interval> below, PairTask upper, ImmutableArray<Interval> above)
    {
        var costs = new PieceCosts(_rules);
        return costs.Of(below, lower.Segment) + costs.Of(above, upper.Segment) + _laps.Of(Joints(lower.Left, below), Joints(upper.Left, above));
    }

    private static Length[] Joints(Length left, ImmutableArray<Interval> pieces) =>
        [.. pieces.Zip(pieces.Skip(1), (a, b) => left + ((a.To + b.From) / 2))];

    /// <summary>Every row of pieces of 20 to 60 with joints of 10.</summary>
    private static List<ImmutableArray<Interval>> Fillings(int cells)
    {
        var all = new List<ImmutableArray<Interval>>();
        void Lay(ImmutableArray<Interval> row, int at)
        {
            for (var end = at + 2; end <= at + 6 && end <= cells; end++)
            {
                var longer = row.Add(new Interval(Length.FromMm(10 * at), Length.FromMm(10 * end)));
                if (end == cells)
                {
                    all.Add(longer);
                }

                Lay(longer, end + 1);
            }
        }

        Lay([], 0);
        return all;
    }
}
