using System.Collections.Immutable;
using System.Globalization;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Runs;

/// <summary>The vertical bars of all walls as they are ordered: equal bars share a mark.</summary>
internal static class BarSchedules
{
    /// <param name="walls">With their cores' bars.</param>
    /// <param name="rule">Size, steel and list form.</param>
    /// <returns>By mark, then in the walls' order.</returns>
    public static ImmutableArray<BarScheduleRow> Of(ImmutableArray<WallLayout> walls, BarRule rule)
    {
        var bars = walls.SelectMany((wall, w) => wall.Cores.SelectMany(core => Shapes(core.Bars!, rule)).Select(shape => (Wall: w, Shape: shape))).ToList();
        var marks = bars.Select(bar => bar.Shape).Distinct().OrderByDescending(shape => shape.B).ThenBy(shape => shape.Length).ThenBy(shape => shape.A)
            .Select((shape, i) => (shape, Mark: "V" + (i + 1).ToString(CultureInfo.InvariantCulture))).ToList();
        return
        [
            .. marks.SelectMany(mark => bars.Where(bar => bar.Shape == mark.shape).GroupBy(bar => bar.Wall).OrderBy(group => group.Key).Select(group => new BarScheduleRow(
                mark.Mark, walls[group.Key].Identity.GlobalId, rule.Bar, rule.Steel, group.Count() * rule.BarsInCore, Code(mark.shape, rule.ListForm),
                mark.shape.A, mark.shape.B, mark.shape.B == Length.Zero ? Length.Zero : BarShapes.Radius(rule.Bar, rule.ListForm), mark.shape.Length))),
        ];
    }

    private static IEnumerable<(Length A, Length B, Length Length)> Shapes(CoreBars bars, BarRule rule)
    {
        if (bars.Starter is { } starter)
        {
            var a = starter.Embedment + starter.StickUp;
            yield return (a, starter.HookLeg, starter.IsHooked ? BarShapes.Bent(a, starter.HookLeg, rule.Bar, rule.ListForm) : a);
        }

        foreach (var length in bars.Set.Select(bar => BarShapes.Straight(bar.Size, rule.ListForm)))
        {
            yield return (length, Length.Zero, length);
        }
    }

    private static string Code((Length A, Length B, Length Length) shape, BarListForm form) => (form, shape.B == Length.Zero) switch
    {
        (BarListForm.Bs8666, true) => "00",
        (BarListForm.Bs8666, false) => "11",
        (_, true) => "straight",
        _ => "hook 90",
    };
}
