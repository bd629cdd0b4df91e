using System.Collections.Immutable;
using System.Globalization;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Runs;

/// <summary>The vertical bars of all walls as they are ordered: equal bars share a mark.</summary>
internal sealed class BarSchedules
{
    private readonly BarRule _rule;
    private readonly Dictionary<Shape, string> _marks;

    /// <param name="walls">With their cores' bars.</param>
    /// <param name="rule">Size, steel and list form.</param>
    public BarSchedules(ImmutableArray<WallLayout> walls, BarRule rule)
    {
        _rule = rule;
        _marks = walls.SelectMany(wall => wall.Cores).SelectMany(core => Shapes(core.Bars!)).Distinct()
            .OrderByDescending(shape => shape.B).ThenBy(shape => shape.Length).ThenBy(shape => shape.A)
            .Select((shape, i) => (shape, Mark: "V" + (i + 1).ToString(CultureInfo.InvariantCulture))).ToDictionary(pair => pair.shape, pair => pair.Mark);
        Walls = [.. walls.Select(wall => wall with { Cores = [.. wall.Cores.Select(core => core with { Bars = Marked(core.Bars!) })] })];
    }

    /// <summary>Their bars bear their marks.</summary>
    public ImmutableArray<WallLayout> Walls { get; }

    /// <summary>By mark, then in the walls' order.</summary>
    public ImmutableArray<BarScheduleRow> Rows()
    {
        var bars = Walls.SelectMany((wall, w) => wall.Cores.SelectMany(core => Shapes(core.Bars!)).Select(shape => (Wall: w, Shape: shape))).ToLookup(bar => bar.Shape);
        return
        [
            .. _marks.SelectMany(mark => bars[mark.Key].GroupBy(bar => bar.Wall).OrderBy(group => group.Key).Select(group => new BarScheduleRow(
                mark.Value, Walls[group.Key].Identity.GlobalId, _rule.Bar, _rule.Steel, group.Count() * _rule.BarsInCore, Code(mark.Key),
                mark.Key.A, mark.Key.B, mark.Key.B == Length.Zero ? Length.Zero : BarShapes.Radius(_rule.Bar, _rule.ListForm), mark.Key.Length))),
        ];
    }

    private CoreBars Marked(CoreBars bars) => bars with
    {
        Starter = bars.Starter is { } starter ? starter with { Mark = _marks[Of(starter)] } : null,
        Marks = [.. bars.Set.Select(bar => _marks[Of(bar)])],
    };

    private IEnumerable<Shape> Shapes(CoreBars bars) =>
        (bars.Starter is { } starter ? [Of(starter)] : Enumerable.Empty<Shape>()).Concat(bars.Set.Select(Of));

    private Shape Of(StarterBar starter)
    {
        var a = starter.Embedment + starter.StickUp;
        return new Shape(a, starter.HookLeg, starter.IsHooked ? BarShapes.Bent(a, starter.HookLeg, _rule.Bar, _rule.ListForm) : a);
    }

    private Shape Of(Interval bar)
    {
        var length = BarShapes.Straight(bar.Size, _rule.ListForm);
        return new Shape(length, Length.Zero, length);
    }

    private string Code(Shape shape) => (_rule.ListForm, shape.B == Length.Zero) switch
    {
        (BarListForm.Bs8666, true) => "00",
        (BarListForm.Bs8666, false) => "11",
        (_, true) => "straight",
        _ => "hook 90",
    };

    /// <param name="A">Longer leg, to its outside.</param>
    /// <param name="B">Hook, to its outside; zero of a straight bar.</param>
    /// <param name="Length">As cut.</param>
    private readonly record struct Shape(Length A, Length B, Length Length);
}
