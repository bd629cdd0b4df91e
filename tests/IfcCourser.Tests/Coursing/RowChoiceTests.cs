using System.Collections.Immutable;
using CsCheck;
using IfcCourser.Catalogs;
using IfcCourser.Coursing;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Tests.Coursing;

public sealed class RowChoiceTests
{
    private static readonly LayoutRules _rules = LayoutRules.For(BuiltInRuleSets.Get("eu"), BuiltInCatalogs.Get("aac-mm"), OpeningPolicy.Keep);
    private static readonly RowLaps _laps = new(Length.FromMm(175), _rules);

    [Fact]
    public void The_chosen_wall_costs_as_little_as_the_best_of_all_that_the_rows_make() => Gen.Select(
        Gen.Int[900, 2400].Array[2], Gen.Int[300, 1500].Array[4, 10], Gen.Int[0, 3].Array[6])
        .ForAll((sizes, joints, start) =>
        {
            // Three courses with a door in the middle one's middle: one segment, two, one; rows that answer joints anywhere.
            var whole = Rows(Length.Zero, sizes[0] + sizes[1] + 1000, joints);
            SegmentRows[] segments = [whole, Rows(Length.Zero, sizes[0], joints), Rows(Length.FromMm(sizes[0] + 1000), sizes[1], joints), whole];
            ImmutableArray<(int Lower, int Upper)> pairs = [(0, 1), (0, 2), (1, 3), (2, 3)];
            int[] given = [.. segments.Select((segment, s) => start[s] % segment.Rows.Count)];
            long Cost(int[] rows) => rows.Select((row, s) => segments[s].Rows[row].Cost).Sum()
                + pairs.Sum(pair => _laps.Of(segments[pair.Lower].Rows[rows[pair.Lower]].Joints, segments[pair.Upper].Rows[rows[pair.Upper]].Joints));

            var best = All([.. segments.Select(segment => segment.Rows.Count)]).Min(Cost);
            Assert.Equal(best, Cost(new RowChoice([.. segments], pairs, Solvers()).Best(given, Cost(given))));
        }, cases: 200);

    [Fact]
    public void What_a_row_costs_from_the_foot_or_the_top_is_the_least_of_all_ways_to_it() => Gen.Select(Gen.Int[900, 2400], Gen.Int[300, 1500].Array[4, 10]).ForAll((size, joints) =>
    {
        SegmentRows[] segments = [Rows(Length.Zero, size, joints), Rows(Length.Zero, size, joints[1..]), Rows(Length.Zero, size, joints[2..])];
        ImmutableArray<(int Lower, int Upper)> pairs = [(0, 1), (1, 2)];
        var choice = new RowChoice([.. segments], pairs, Solvers());
        foreach (var isFromBelow in (ReadOnlySpan<bool>)[true, false])
        {
            var reaching = choice.Reaching(isFromBelow);
            for (var s = 0; s < segments.Length; s++)
            {
                int[] way = isFromBelow ? [.. Enumerable.Range(0, s + 1)] : [.. Enumerable.Range(s, segments.Length - s)];
                long Cost(int[] rows) => way.Select((segment, i) => segments[segment].Rows[rows[i]].Cost).Sum()
                    + way.Skip(1).Select((segment, i) => _laps.Of(segments[segment - 1].Rows[rows[i]].Joints, segments[segment].Rows[rows[i + 1]].Joints)).Sum();

                var all = All([.. way.Select(segment => segments[segment].Rows.Count)]).ToLookup(rows => rows[isFromBelow ? ^1 : 0], Cost);
                var best = all.Min(costs => costs.Min());
                Assert.Equal(Enumerable.Range(0, segments[s].Rows.Count).Select(row => all[row].Min() - best), reaching[s]);
            }
        }
    }, cases: 100);

    private static BondSolvers Solvers() => new(Length.FromMm(175), _rules, new RestTables());

    private static SegmentRows Rows(Length left, int size, int[] joints)
    {
        var task = new SegmentTask(Length.FromMm(size), SegmentEnd.Upright(0), SegmentEnd.Upright(0), []);
        var rows = new SegmentRows(left, task, most: 200, Solvers());
        foreach (var joint in joints)
        {
            rows.Cheapest(new JointsBeside(_laps, [[Length.FromMm(joint), Length.FromMm(joint + 700)]], []));
        }

        return rows;
    }

    private static IEnumerable<int[]> All(int[] counts) => counts.Aggregate(
        (IEnumerable<int[]>)[[]], (some, count) => some.SelectMany(rows => Enumerable.Range(0, count).Select(row => (int[])[.. rows, row])));
}
