using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Runs;

/// <summary>How the bars of all cores are built, once every wall is laid out: starters, laps or couplers, bars that run on into the wall above, grout lifts.</summary>
internal sealed class CoreDetails
{
    private static readonly Length _inLine = Length.FromMm(1);

    private readonly ImmutableArray<WallLayout> _walls;
    private readonly BarRule _rule;
    private readonly BarListForm _form;
    private readonly Dictionary<CoreBelow, CoreBelow> _below = [];
    private readonly Dictionary<CoreBelow, Length> _slabAbove = [];

    /// <param name="walls">All walls laid out.</param>
    /// <param name="rule">The rules of their bars.</param>
    /// <param name="form">Whose bends they have.</param>
    public CoreDetails(ImmutableArray<WallLayout> walls, BarRule rule, BarListForm form)
    {
        _walls = walls;
        _rule = rule;
        _form = form;
        foreach (var wall in walls)
        {
            foreach (var (other, core, at) in BarsBelow.Of(wall.Wall, walls))
            {
                var above = wall.Cores.FirstOrDefault(own => Length.Abs(own.At - at) <= _inLine && StandsOnSlab(wall, own));
                var lower = new CoreBelow(other.Identity.GlobalId, core.Id);
                if (above is not null && _below.TryAdd(new CoreBelow(wall.Identity.GlobalId, above.Id), lower))
                {
                    _slabAbove.TryAdd(lower, Length.FromModelMm(wall.Frame.Origin.Z + above.Bottom.Mm - (other.Frame.Origin.Z + core.Top.Mm)));
                }
            }
        }
    }

    /// <summary>The walls with their cores' bars.</summary>
    public ImmutableArray<WallLayout> Fill() =>
        [.. _walls.Select(wall => wall with { Cores = [.. wall.Cores.Select(core => core with { Bars = Of(wall, core) })] })];

    /// <summary>Whether a core begins at the foot of its wall, not over a head.</summary>
    private static bool StandsOnSlab(WallLayout wall, Core core) =>
        !wall.Openings.Any(o => o.Interrupts && o.Placed.Left < core.At && o.Placed.Right > core.At && o.Placed.Top == core.Bottom)
        && !wall.Lintels.Any(lintel => lintel.From < core.At && lintel.To > core.At && lintel.Top == core.Bottom);

    private CoreBars Of(WallLayout wall, Core core)
    {
        var key = new CoreBelow(wall.Identity.GlobalId, core.Id);
        var below = _below.GetValueOrDefault(key);
        var isOnSlab = StandsOnSlab(wall, core);
        var stickUp = _rule.Splice.Coupler is null ? _rule.Lap : _rule.Starter.CouplerStickUp;
        var starter = isOnSlab && below is null
            ? new StarterBar(
                _rule.Starter.IsHooked,
                _rule.Starter.Embedment,
                _rule.Starter.IsHooked ? BarShapes.HookLeg(_rule.Bar, _form, _rule.Starter.HookExtension) : Length.Zero,
                stickUp)
            : null;
        var lifts = Lifts(core);
        var bases = _rule.Lengths == BarLengths.Lift ? lifts.Skip(1).Select(lift => lift.From).Where(z => core.Top - z > _rule.Lap).ToList() : [];
        var foot = isOnSlab && _rule.Splice.Coupler is not null ? core.Bottom + stickUp : core.Bottom;
        var top = core.Top + (_slabAbove.TryGetValue(key, out var slab) ? slab + stickUp : Length.Zero);
        var splices = (isOnSlab ? bases.Prepend(foot) : bases).Select(SpliceAt);
        return new CoreBars(
            _rule.BarsInCore, _rule.Bar.Diameter, Set(foot, bases, top), [.. splices], _rule.Splice.Coupler is not null, starter, below,
            Math.PI * core.Diameter.Mm * core.Diameter.Mm / 4 * (core.Top - core.Bottom).Mm / 1e9, lifts);
    }

    /// <summary>A lap above a foot, or the coupler around it.</summary>
    private Interval SpliceAt(Length foot) => _rule.Splice.Coupler is { } length
        ? new Interval(foot - (length / 2), foot + (length / 2))
        : new Interval(foot, foot + _rule.Lap);

    private ImmutableArray<Interval> Set(Length foot, List<Length> bases, Length top)
    {
        var feet = bases.Prepend(foot).ToList();
        return [.. feet.Select((from, i) => new Interval(from, i == feet.Count - 1 ? top : feet[i + 1] + _rule.Lap))];
    }

    private ImmutableArray<Interval> Lifts(Core core)
    {
        var lifts = ImmutableArray.CreateBuilder<Interval>();
        for (var from = core.Bottom; from < core.Top; from += _rule.GroutLift)
        {
            lifts.Add(new Interval(from, Length.Min(from + _rule.GroutLift, core.Top)));
        }

        return lifts.ToImmutable();
    }
}
