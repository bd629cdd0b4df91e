using System.Collections.Immutable;
using CsCheck;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Modules;
using IfcCourser.Panels;
using IfcCourser.Units;

namespace IfcCourser.Tests.Panels;

public sealed class PanelPlanTests
{
    private const int Step = 100;

    private static readonly Gen<(int From, int Size)> _range = Gen.Select(Gen.Int[0, 12], Gen.Int[0, 4]);

    /// <summary>Stretches whose ends, ranges, lines and lengths lie on a grid of 100 mm; so do all places worth trying.</summary>
    private static readonly Gen<PanelTask> _tasks = Gen
        .Select(Gen.Int[4, 14], Gen.Int[2, 9], Gen.Select(Gen.Bool, Gen.Bool), _range.Array[1, 3], _range.Array[0, 2], Gen.Int[2, 5])
        .Select((run, longest, corners, free, wanted, pitch) =>
        {
            var allowed = Merged(free.Select(range => Range(range, run - 1)).Where(range => range.From <= range.To));
            return new PanelTask(
                new Interval(Length.Zero, Mm(run)),
                PanelLengths.Of(Mm(longest), Mm((longest + 1) / 2), corners.Item1, corners.Item2),
                Mm(1),
                Length.FromMm(10),
                allowed,
                [.. wanted.Select(range => Range(range, run - 1)).Where(range => range.From <= range.To)],
                new ModuleGrid(new ModuleLines(Length.FromMm(5), Mm(pitch)), Length.FromMm(10)));
        });

    [Fact]
    public void No_set_of_places_misses_less_or_has_shorter_panels_or_fewer_joints() => _tasks.ForAll(
        task =>
        {
            ImmutableArray<Length> grid = [.. Enumerable.Range(1, (int)(task.Run.To / Mm(1)) - 1).Select(Mm).Where(place => task.Free.Any(range => range.Contains(place)))];
            var (best, found) = (AllPanels.Best(task, grid), PanelPlan.Solve(task).Score);
            Assert.Equal((best.Missed, best.Excess, best.Joints), (found.Missed, found.Excess, found.Joints));
        },
        cases: 300);

    [Fact]
    public void No_set_of_its_places_is_better() => _tasks.ForAll(
        task => Assert.Equal(AllPanels.Best(task, [.. PanelPlan.Places(task)]), PanelPlan.Solve(task).Score), cases: 300);

    /// <summary>EN 1996-2:2006 2.3.4.2 (from memory), 6 m: a free wall of 20 m needs three joints and has four panels of 5 m (arithmetic).</summary>
    [Fact]
    public void Twenty_metres_have_three_joints()
    {
        var task = new PanelTask(
            new Interval(Length.Zero, Length.FromMm(20_000)), PanelLengths.Of(Length.FromMm(6000), Length.FromMm(3000), false, false),
            Length.FromMm(250), Length.FromMm(10), [new Interval(Length.FromMm(255), Length.FromMm(19_745))], [],
            new ModuleGrid(new ModuleLines(Length.FromMm(5), Length.FromMm(125)), Length.FromMm(10)));
        Assert.Equal([Length.FromMm(5000), Length.FromMm(10_000), Length.FromMm(15_000)], PanelPlan.Solve(task).Joints);
    }

    private static Length Mm(int steps) => Length.FromMm(steps * Step);

    private static Interval Range((int From, int Size) range, int last) => new(Mm(Math.Max(1, range.From)), Mm(Math.Min(last, range.From + range.Size)));

    private static ImmutableArray<Interval> Merged(IEnumerable<Interval> ranges)
    {
        var merged = new List<Interval>();
        foreach (var range in ranges.OrderBy(range => range.From))
        {
            if (merged.Count > 0 && range.From <= merged[^1].To)
            {
                merged[^1] = merged[^1] with { To = Length.Max(merged[^1].To, range.To) };
            }
            else
            {
                merged.Add(range);
            }
        }

        return [.. merged];
    }
}
