using System.Collections.Immutable;
using CsCheck;
using IfcCourser.Catalogs;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Modules;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Tests.Modules;

/// <summary>Moves against the best of all, on a toy module of 25 mm (joint 1, largest shift 12, tolerance 2, least pier 40) that leaves few places to try.</summary>
public sealed class OpeningMovesTests
{
    private const int Walls = 2000;

    private static readonly Gen<OpeningPolicy> _policy = Gen.Int[1, 2].Select(policy => (OpeningPolicy)policy);

    /// <summary>Up to four openings on two levels, piers from none to ample.</summary>
    private static readonly Gen<AllMoves.Opening[]> _openings = Gen
        .Select(Gen.Int[0, 130], Gen.Int[30, 140], Gen.Int[0, 1])
        .Array[1, 4]
        .Select(parts => InARow(parts, _ => 0));

    /// <summary>The same, with stacks of their own.</summary>
    private static readonly Gen<AllMoves.Opening[]> _stacked = Gen
        .Select(Gen.Select(Gen.Int[0, 130], Gen.Int[30, 140], Gen.Int[0, 1]).Array[2, 4], Gen.Int[0, 1].Array[4])
        .Select((parts, stacks) => InARow(parts, i => stacks[i]));

    [Fact]
    public void Moves_on_given_lines_are_as_good_as_the_best_of_all() => Gen.Select(_openings, _policy, Gen.Int[0, 24]).ForAll(
        (openings, policy, start) =>
        {
            var own = Alone(openings);
            Assert.Equal(AllMoves.Best(own, start, Limits(policy)), Solved(own, policy, start));
        },
        cases: Walls);

    [Fact]
    public void Stacks_move_together_and_as_well_as_the_best_of_all() => Gen.Select(_stacked, _policy, Gen.Int[0, 24]).ForAll(
        (openings, policy, start) => Assert.Equal(AllMoves.Best(openings, start, Limits(policy)), Solved(openings, policy, start)), cases: Walls);

    /// <summary>Every start of the lines in whole millimetres is tried; openings measure whole millimetres, so that no start between them is better.</summary>
    [Fact]
    public void The_best_datum_is_as_good_as_the_best_of_all_starts() => Gen.Select(_openings, _policy).ForAll(
        (openings, policy) =>
        {
            var own = Alone(openings);
            Assert.Equal(AllMoves.BestOfAllStarts(own, Limits(policy)), BestDatum(own, policy));
        },
        cases: Walls / 4);

    [Fact]
    public void The_best_datum_of_stacks_is_as_good_as_the_best_of_all_starts() => Gen.Select(_stacked, _policy).ForAll(
        (openings, policy) => Assert.Equal(AllMoves.BestOfAllStarts(openings, Limits(policy)), BestDatum(openings, policy)), cases: Walls / 4);

    [Fact]
    public void Kept_openings_do_not_move() => _openings.ForAll(openings =>
        Assert.All(OpeningMoves.Solve(Movable(Alone(openings)), Grid(0), Rules(OpeningPolicy.Keep)).Shifts, shift => Assert.Equal(default, shift)));

    /// <summary>The piers between 60 openings in a row all fall short where two neighbours move apart: no choice of 2^60 is skipped, none is tried twice.</summary>
    [Fact]
    public void A_long_row_of_openings_with_least_piers_is_settled_at_once()
    {
        var openings = Alone(InARow([.. Enumerable.Range(0, 60).Select(i => (Pier: 41 + (i % 3), Width: 50 + (i * 7 % 23), Level: 0))], _ => 0));
        var (shifts, _) = OpeningMoves.Solve(Movable(openings), Grid(3), Rules(OpeningPolicy.Move));
        Assert.Equal(60, shifts.Length);
    }

    /// <summary>checkvalues.csv M-SNAP-02: a jamb at 37 in goes to 40 in on an 8 in grid; here the right jamb, with the module tolerance at 1/4 in.</summary>
    [Fact]
    public void A_jamb_at_37_in_goes_to_40_in()
    {
        var rules = LayoutRules.For(BuiltInRuleSets.Get("us"), BuiltInCatalogs.Get("aac-in"), OpeningPolicy.Move);
        var design = new ElevationRect(Length.FromInches(84.875), Length.FromInches(125), Length.Zero, Length.FromInches(80));
        var opening = new MovableOpening(design, new Interval(Length.Zero, Length.FromInches(240)), 0, 0);
        var grid = new ModuleGrid(new ModuleLines(Length.Zero, rules.Module), rules.Catalog.HeadJoint.Nominal);

        var placed = OpeningMoves.Solve([opening], grid, rules).Shifts[0].Of(design);

        Assert.Equal((87.875, 128d), (placed.Left.Inches, placed.Right.Inches));
    }

    private static AllMoves.Opening[] InARow((int Pier, int Width, int Level)[] parts, Func<int, int> stack)
    {
        var openings = new List<AllMoves.Opening>();
        var at = new[] { 0, 0 };
        for (var i = 0; i < parts.Length; i++)
        {
            var (pier, width, level) = parts[i];
            var left = at[level] + pier;
            at[level] = left + width;
            openings.Add(new AllMoves.Opening(left, left + width, level, 0, stack(i), 0, 0));
        }

        return [.. openings.Select(opening => opening with { RunTo = at.Max() + (at.Min() % 60) })];
    }

    private static AllMoves.Opening[] Alone(AllMoves.Opening[] openings) => [.. openings.Select((opening, i) => opening with { Stack = i })];

    private static (int Off, int Inexact, int Moved) Solved(AllMoves.Opening[] openings, OpeningPolicy policy, int start)
    {
        var (shifts, score) = OpeningMoves.Solve(Movable(openings), Grid(start), Rules(policy));
        Assert.Equal(openings.Length, shifts.Length);
        Assert.All(openings.Zip(shifts).GroupBy(pair => pair.First.Stack), stack => Assert.Single(stack.Select(pair => pair.Second).Distinct()));
        return (score.OffLines, score.NotExact, (int)score.Movement.Mm);
    }

    private static (int Off, int Inexact, int Moved) BestDatum(AllMoves.Opening[] openings, OpeningPolicy policy)
    {
        var movable = Movable(openings);
        return ModuleDatums.Critical(movable, Rules(policy)).Min(start => Solved(openings, policy, (int)start.Mm));
    }

    private static ImmutableArray<MovableOpening> Movable(AllMoves.Opening[] openings) =>
    [
        .. openings.Select(opening => new MovableOpening(
            new ElevationRect(Mm(opening.Left), Mm(opening.Right), Mm(3000 * opening.Level), Mm((3000 * opening.Level) + 1000)),
            new Interval(Mm(opening.RunFrom), Mm(opening.RunTo)), opening.Wall, opening.Stack)),
    ];

    private static ModuleGrid Grid(int start) => new(new ModuleLines(Mm(start), Mm(25)), Mm(1));

    private static AllMoves.Limits Limits(OpeningPolicy policy) => new(policy, 25, 1, 12, 2, 40);

    private static LayoutRules Rules(OpeningPolicy policy)
    {
        var catalog = BuiltInCatalogs.Get("aac-mm") with { Module = Mm(25), LeastPier = Mm(40) };
        return LayoutRules.For(BuiltInRuleSets.Get("eu") with { ModuleTolerance = Mm(2) }, catalog, policy, Mm(12));
    }

    private static Length Mm(int mm) => Length.FromMm(mm);
}
