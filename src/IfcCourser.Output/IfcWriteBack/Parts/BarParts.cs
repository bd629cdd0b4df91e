using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Step21;
using IfcCourser.Units;

namespace IfcCourser.Output.IfcWriteBack.Parts;

/// <summary>
/// The bars of a wall as IfcReinforcingBar: those of bond beams by <see cref="BeamBarParts"/>, the vertical bars of cores here, swept along their axes. The starter stands in the core's middle; where bars lap, every
/// second one stands beside it by its diameter. Bars of one core stand on a circle of half the core's diameter.
/// </summary>
internal sealed class BarParts
{
    private const int ChordsOfBend = 8;

    private readonly Addition _addition;
    private readonly GeometryWriter _geometry;
    private readonly SharedShapes _shapes;
    private readonly PartSolids _solids;
    private readonly BarEntities _bars;
    private readonly BeamBarParts _beams;
    private readonly Dictionary<CoreBelow, Core> _cores;

    public BarParts(Addition addition, GeometryWriter geometry, SharedShapes shapes, Layout layout)
    {
        _addition = addition;
        _geometry = geometry;
        _shapes = shapes;
        _solids = new PartSolids(geometry);
        _bars = new BarEntities(addition, geometry, layout);
        _beams = new BeamBarParts(_bars, shapes, _solids, layout);
        _cores = layout.Walls.SelectMany(wall => wall.Cores.Select(core => (Key: new CoreBelow(wall.Identity.GlobalId, core.Id), core)))
            .ToDictionary(pair => pair.Key, pair => pair.core);
    }

    /// <summary>The bars of a wall, also as a group of their own.</summary>
    public List<StepValue> Add(WallLayout wall, WallPlace place)
    {
        var bars = wall.Cores.Where(core => core.Bars is not null).SelectMany(core => Bars(wall, place, core, core.Bars!)).Concat(_beams.Of(wall, place)).ToList();
        if (bars.Count > 0)
        {
            var group = _geometry.Add(
                "IFCGROUP", _bars.Guid(wall, "bars"), _addition.Owner, StepValue.String($"Bars of {wall.Identity.Label}"), StepValue.Omitted, StepValue.Omitted);
            _geometry.Add(
                "IFCRELASSIGNSTOGROUP", _bars.Guid(wall, "bars relation"), _addition.Owner, StepValue.Omitted, StepValue.Omitted,
                StepValue.List([.. bars]), StepValue.Omitted, group);
        }

        return bars;
    }

    private IEnumerable<StepValue> Bars(WallLayout wall, WallPlace place, Core core, CoreBars bars)
    {
        for (var n = 0; n < bars.Count; n++)
        {
            var turn = bars.Count == 1 ? 0 : 2 * Math.PI * n / bars.Count;
            var radius = bars.Count == 1 ? 0 : core.Diameter.Mm / 4;
            var (s, t) = (core.At + Length.FromMm(radius * Math.Cos(turn)), core.Across + Length.FromMm(radius * Math.Sin(turn)));
            if (bars.Starter is { } starter)
            {
                yield return Starter(wall, place, core, starter, s, t, n);
            }

            var beside = BarsUnder(core);
            for (var i = 0; i < bars.Set.Length; i++)
            {
                var at = bars.IsCoupled || (beside + i) % 2 == 0 ? t : t + bars.Diameter;
                yield return Straight(wall, place, core, i, at, s, n);
            }
        }
    }

    /// <summary>How many bars stand under the first one set, in this core and those that run on into it.</summary>
    private int BarsUnder(Core core)
    {
        var count = core.Bars?.Starter is null ? 0 : 1;
        var seen = new HashSet<Core> { core };
        var next = core;
        while (next.Bars?.RunsOnFrom is { } below && _cores.TryGetValue(below, out var lower) && seen.Add(lower))
        {
            count += (lower.Bars?.Set.Length ?? 0) + (lower.Bars?.Starter is null ? 0 : 1);
            next = lower;
        }

        return count;
    }

    private StepValue Straight(WallLayout wall, WallPlace place, Core core, int i, Length across, Length along, int n)
    {
        var (bars, bar) = (core.Bars!, core.Bars!.Set[i]);
        var shape = _shapes.Add(
            PartLayer.Bars,
            FormattableString.Invariant($"bar {bars.Diameter.Nanometres} {bar.Size.Nanometres}"),
            () => _solids.Bar([default, new Vector3(0, 0, bar.Size.Mm)], bars.Diameter));
        var mark = i < bars.Marks.Length ? bars.Marks[i] : string.Empty;
        var role = FormattableString.Invariant($"bar {core.Id} {i} {n}");
        return _bars.Add(wall, role, new PartBar(mark, core.Bar, core.Id, "MAIN", bars.Diameter), place.Point(along, across, bar.From), shape, bar.Size);
    }

    /// <summary>A straight starter, or one whose foot is bent along the wall towards its middle.</summary>
    private StepValue Starter(WallLayout wall, WallPlace place, Core core, StarterBar starter, Length s, Length t, int n)
    {
        var diameter = core.Bars!.Diameter;
        var bend = _bars.Row(starter.Mark) is { } row ? row.Radius.Mm + (diameter.Mm / 2) : 0;
        var side = s < wall.Frame.Length / 2 ? 1 : -1;
        var length = starter.Embedment + starter.StickUp;
        Vector3[] line = starter.IsHooked && starter.HookLeg > diameter ? Hooked(starter, diameter, bend, side) : [default, new Vector3(0, 0, length.Mm)];
        var shape = _shapes.Add(
            PartLayer.Bars,
            FormattableString.Invariant($"starter {diameter.Nanometres} {length.Nanometres} {starter.HookLeg.Nanometres} {bend} {side}"),
            () => _solids.Bar(line, diameter));
        var role = FormattableString.Invariant($"starter {core.Id} {n}");
        return _bars.Add(
            wall, role, new PartBar(starter.Mark, core.Bar, core.Id, "ANCHORING", diameter), place.Point(s, t, core.Bottom - starter.Embedment), shape, length + starter.HookLeg);
    }

    /// <summary>From the hook's end to the top; the origin is where the bar's upright axis meets the hook's underside.</summary>
    private static Vector3[] Hooked(StarterBar starter, Length diameter, double bend, int side)
    {
        var half = diameter.Mm / 2;
        var reach = Math.Max(starter.HookLeg.Mm - half, bend);
        var around = Enumerable.Range(0, ChordsOfBend + 1)
            .Select(i => Math.PI / 2 * i / ChordsOfBend)
            .Select(turn => new Vector3(side * bend * (1 - Math.Sin(turn)), 0, half + (bend * (1 - Math.Cos(turn)))));
        Vector3[] end = reach > bend ? [new Vector3(side * reach, 0, half)] : [];
        return [.. end, .. around, new Vector3(0, 0, (starter.Embedment + starter.StickUp).Mm)];
    }
}
