using System.Collections.Immutable;
using System.Globalization;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Runs;

/// <summary>The bars of all walls as they are ordered: equal bars of one use share a mark.</summary>
internal sealed class BarSchedules
{
    private readonly LayoutRules _rules;
    private readonly BarListForm _form;
    private readonly ImmutableArray<(Shape Shape, string Mark)> _order;
    private readonly Dictionary<Shape, string> _marks;

    /// <param name="walls">With the bars of their cores and bond beams.</param>
    /// <param name="rules">Sizes, steel and list form.</param>
    public BarSchedules(ImmutableArray<WallLayout> walls, LayoutRules rules)
    {
        (_rules, _form) = (rules, rules.BarListForm);
        _order =
        [
            .. walls.SelectMany(Shapes).Distinct().GroupBy(shape => shape.Use).OrderBy(use => use.Key)
                .SelectMany(use => use.OrderByDescending(shape => shape.B).ThenBy(shape => shape.Length).ThenBy(shape => shape.A)
                    .Select((shape, i) => (shape, Prefix(use.Key) + (i + 1).ToString(CultureInfo.InvariantCulture)))),
        ];
        _marks = _order.ToDictionary(pair => pair.Shape, pair => pair.Mark);
        Walls = [.. walls.Select(Marked)];
    }

    /// <summary>Their bars bear their marks.</summary>
    public ImmutableArray<WallLayout> Walls { get; }

    /// <summary>By mark, then in the walls' order.</summary>
    public ImmutableArray<BarScheduleRow> Rows()
    {
        var bars = Walls.SelectMany((wall, w) => Shapes(wall).Select(shape => (Wall: w, Shape: shape))).ToLookup(bar => bar.Shape);
        return
        [
            .. _order.SelectMany(mark => bars[mark.Shape].GroupBy(bar => bar.Wall).OrderBy(group => group.Key)
                .Select(group => Row(mark.Shape, mark.Mark, Walls[group.Key].Identity.GlobalId, group.Count()))),
        ];
    }

    private static string Prefix(BarUse use) => use switch
    {
        BarUse.Vertical => "V",
        BarUse.Beam => "H",
        _ => "HC",
    };

    private BarScheduleRow Row(Shape shape, string mark, string wall, int number)
    {
        var (size, steel, each) = shape.Use == BarUse.Vertical
            ? (_rules.Set.Bars!.Bar, _rules.Set.Bars.Steel, _rules.Set.Bars.BarsInCore)
            : (_rules.Set.BondBeams!.Bars.Size, _rules.Set.BondBeams.Bars.Steel, 1);
        var radius = shape.B == Length.Zero ? Length.Zero : BarShapes.Radius(size, _form);
        return new BarScheduleRow(mark, wall, size, steel, number * each, Code(shape), shape.A, shape.B, radius, shape.Length) { Use = shape.Use };
    }

    private WallLayout Marked(WallLayout wall) => wall with
    {
        Cores = [.. wall.Cores.Select(core => core.Bars is { } bars ? core with { Bars = Marked(bars) } : core)],
        BondBeams =
        [
            .. wall.BondBeams.Select(beam => beam with
            {
                Steel = [.. beam.Steel.Select(bar => bar with { Mark = _marks[Of(bar, beam)] })],
                Corners = [.. beam.Corners.Select(corner => corner with { Bars = [.. corner.Bars.Select(bar => bar with { Mark = _marks[Of(corner)] })] })],
            }),
        ],
    };

    private CoreBars Marked(CoreBars bars) => bars with
    {
        Starter = bars.Starter is { } starter ? starter with { Mark = _marks[Of(starter)] } : null,
        Marks = [.. bars.Set.Select((_, i) => _marks[Of(bars, i)])],
    };

    private IEnumerable<Shape> Shapes(WallLayout wall) => wall.Cores.Select(core => core.Bars).OfType<CoreBars>().SelectMany(Shapes)
        .Concat(wall.BondBeams.SelectMany(beam => beam.Steel.Select(bar => Of(bar, beam))))
        .Concat(wall.BondBeams.SelectMany(beam => beam.Corners).SelectMany(corner => corner.Bars.Select(_ => Of(corner))));

    private IEnumerable<Shape> Shapes(CoreBars bars) =>
        (bars.Starter is { } starter ? [Of(starter)] : Enumerable.Empty<Shape>()).Concat(bars.Set.Select((_, i) => Of(bars, i)));

    private Shape Of(StarterBar starter)
    {
        var a = starter.Embedment + starter.StickUp;
        return starter.IsHooked
            ? new Shape(BarUse.Vertical, a, starter.HookLeg, BarShapes.Bent(a, starter.HookLeg, _rules.Set.Bars!.Bar, _form))
            : Straight(BarUse.Vertical, BarShapes.Lapped(a, _form));
    }

    /// <summary>A bar that laps with one above is not shorter than asked for; one that ends in the wall is not longer, but no shorter than the lap at its foot. Between couplers it is as long as asked for.</summary>
    private Shape Of(CoreBars bars, int i)
    {
        var bar = bars.Set[i];
        if (i < bars.Set.Length - 1 || bar.To > bars.Lifts[^1].To)
        {
            return Straight(BarUse.Vertical, bars.IsCoupled ? bar.Size : BarShapes.Lapped(bar.Size, _form));
        }

        var lap = bars.IsCoupled ? Length.Zero : bars.Splices.Where(splice => splice.From == bar.From).Select(splice => splice.Size).FirstOrDefault();
        return Straight(BarUse.Vertical, Length.Max(BarShapes.Straight(bar.Size, _form), Length.Min(bar.Size, lap)));
    }

    /// <summary>Bars that lap may be longer; one that goes through from cover to cover may not.</summary>
    private Shape Of(BeamBar bar, BondBeam beam) => Straight(BarUse.Beam, beam.Steel.Count(other => other.Bar == bar.Bar) > 1
        ? BarShapes.Lapped(bar.Size, _rules.Set.BondBeams!.Bars.Stock, _form)
        : BarShapes.Straight(bar.Size, _form));

    private Shape Of(BeamCorner corner)
    {
        var size = _rules.Set.BondBeams!.Bars.Size;
        var leg = BarShapes.Leg(corner.Leg + (size.Diameter / 2), _form);
        return new Shape(BarUse.Corner, leg, leg, BarShapes.Bent(leg, leg, size, _form));
    }

    private static Shape Straight(BarUse use, Length length) => new(use, length, Length.Zero, length);

    /// <summary>BS 8666 shape codes; types of typical bends of ACI 315 (from memory): 2 has standard hooks of 90 degrees, 17 one right angle between legs.</summary>
    private string Code(Shape shape) => (_form, shape.B == Length.Zero) switch
    {
        (BarListForm.Bs8666, true) => "00",
        (BarListForm.Bs8666, false) => "11",
        (_, true) => "straight",
        _ => shape.Use == BarUse.Corner ? "17" : "2",
    };

    /// <param name="A">Longer leg, to its outside.</param>
    /// <param name="B">Hook or other leg, to its outside; zero of a straight bar.</param>
    /// <param name="Length">As cut.</param>
    private readonly record struct Shape(BarUse Use, Length A, Length B, Length Length);
}
