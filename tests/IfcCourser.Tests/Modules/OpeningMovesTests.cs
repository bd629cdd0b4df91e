using CsCheck;
using IfcCourser.Catalogs;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Modules;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Tests.Modules;

public sealed class OpeningMovesTests
{
    private static readonly Gen<ElevationRect[]> _openings = Gen
        .Select(Gen.Int[100, 1600], Gen.Int[400, 1400], Gen.Int[0, 1])
        .Array[1, 3]
        .Select(parts =>
        {
            var rects = new List<ElevationRect>();
            var at = 0;
            foreach (var (pier, width, storey) in parts)
            {
                at += pier;
                rects.Add(Rect(at, at + width, 3000 * storey));
                at += width;
            }

            return rects.ToArray();
        });

    [Fact]
    public void Moves_are_as_good_as_the_best_of_all_moves_on_a_millimetre_grid() =>
        Gen.Select(_openings, Gen.Bool).Sample(
            (openings, moves) =>
            {
                var rules = Rules(moves ? OpeningPolicy.Move : OpeningPolicy.Keep);
                var run = new Interval(Length.Zero, openings[^1].Right + Length.FromMm(700));
                var lines = new ModuleLines(Length.Zero, rules.Module);
                var (placed, score) = OpeningMoves.Solve([.. openings], run, lines, rules);
                Assert.Equal(BestOfAll(openings, run, rules), Measure(openings, placed, rules));
                Assert.Equal(openings.Length, placed.Length);
                Assert.True(score.Movement >= Length.Zero);
            },
            iter: 150);

    /// <summary>checkvalues.csv M-SNAP-02: a jamb at 37 in goes to 40 in on an 8 in grid; here the right jamb, with the module tolerance at 1/4 in.</summary>
    [Fact]
    public void A_jamb_at_37_in_goes_to_40_in()
    {
        var catalog = BuiltInCatalogs.Get("aac-in");
        var rules = LayoutRules.For(BuiltInRuleSets.Get("us"), catalog, OpeningPolicy.Move);
        var design = new ElevationRect(Length.FromInches(84.875), Length.FromInches(125), Length.Zero, Length.FromInches(80));
        var (placed, _) = OpeningMoves.Solve(
            [design], new Interval(Length.Zero, Length.FromInches(240)), new ModuleLines(Length.Zero, catalog.Module), rules);
        Assert.Equal(Length.FromInches(128), placed[0].Right);
        Assert.Equal(Length.FromInches(87.875), placed[0].Left);
    }

    [Fact]
    public void Resize_never_makes_an_opening_smaller() => _openings.Sample(openings =>
    {
        var rules = Rules(OpeningPolicy.Resize);
        var run = new Interval(Length.Zero, openings[^1].Right + Length.FromMm(700));
        var (placed, _) = OpeningMoves.Solve([.. openings], run, new ModuleLines(Length.Zero, rules.Module), rules);
        Assert.All(placed.Zip(openings), pair =>
        {
            Assert.True(pair.First.Left <= pair.Second.Left && pair.First.Left >= pair.Second.Left - rules.MaxShift);
            Assert.True(pair.First.Right >= pair.Second.Right && pair.First.Right <= pair.Second.Right + rules.MaxShift);
        });
    });

    private static LayoutRules Rules(OpeningPolicy policy) =>
        LayoutRules.For(BuiltInRuleSets.Get("eu"), BuiltInCatalogs.Get("aac-mm"), policy);

    private static ElevationRect Rect(int left, int right, int bottom) =>
        new(Length.FromMm(left), Length.FromMm(right), Length.FromMm(bottom), Length.FromMm(bottom + 1000));

    /// <summary>Every combination of whole-millimetre shifts that puts a jamb on a line, or none: the best measure.</summary>
    private static (int, int, Length) BestOfAll(ElevationRect[] openings, Interval run, LayoutRules rules)
    {
        var shifts = rules.Openings == OpeningPolicy.Keep
            ? [[0]]
            : openings.Select(o => Enumerable.Range(-62, 125)
                .Where(shift => shift == 0 || OnLine(o, shift))
                .ToArray()).ToArray();
        var best = (int.MaxValue, 0, Length.Zero);
        void Try(int i, ElevationRect[] placed)
        {
            if (i == openings.Length)
            {
                if (Holds(openings, placed, run, rules) && Measure(openings, placed, rules) is var measure && measure.CompareTo(best) < 0)
                {
                    best = measure;
                }

                return;
            }

            foreach (var shift in shifts[rules.Openings == OpeningPolicy.Keep ? 0 : i])
            {
                Try(i + 1, [.. placed, openings[i].ShiftedBy(Length.FromMm(shift), Length.Zero)]);
            }
        }

        Try(0, []);
        return best;
    }

    private static bool OnLine(ElevationRect o, int shift) =>
        ((long)o.Left.Mm + shift + 1) % 125 == 0 || ((long)o.Right.Mm + shift) % 125 == 0;

    private static (int, int, Length) Measure(ElevationRect[] openings, IEnumerable<ElevationRect> placed, LayoutRules rules)
    {
        var (off, inexact, moved) = (0, 0, Length.Zero);
        foreach (var (rect, design) in placed.Zip(openings))
        {
            foreach (var line in new[] { rect.Left + Length.FromMm(1), rect.Right })
            {
                var rest = line.Modulo(rules.Module);
                var away = Length.Min(rest, rules.Module - rest);
                off += away > rules.ModuleTolerance ? 1 : 0;
                inexact += away > Length.Zero ? 1 : 0;
            }

            moved += Length.Abs(rect.Left - design.Left) + Length.Abs(rect.Right - design.Right);
        }

        return (off, inexact, moved);
    }

    private static bool Holds(ElevationRect[] openings, ElevationRect[] placed, Interval run, LayoutRules rules)
    {
        bool Pier(Length pier, Length designed) => pier >= rules.Catalog.LeastPier || pier >= designed;
        for (var i = 0; i < placed.Length; i++)
        {
            if (!Pier(placed[i].Left - run.From, openings[i].Left - run.From) || !Pier(run.To - placed[i].Right, run.To - openings[i].Right))
            {
                return false;
            }

            for (var j = 0; j < i; j++)
            {
                if (openings[i].StandsBeside(openings[j]) && !Pier(placed[i].Left - placed[j].Right, openings[i].Left - openings[j].Right))
                {
                    return false;
                }
            }
        }

        return true;
    }
}
