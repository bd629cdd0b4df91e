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
        var lifts = Lifts(wall, core);
        var bases = _rule.Lengths == BarLengths.Lift ? lifts.Skip(1).Select(lift => lift.From).Where(z => core.Top - z > Above).ToList() : [];
        var foot = isOnSlab && _rule.Splice.Coupler is not null ? core.Bottom + stickUp : core.Bottom;
        var top = core.Top + (_slabAbove.TryGetValue(key, out var slab) ? slab + stickUp : Length.Zero);
        var splices = (isOnSlab ? bases.Prepend(foot) : bases).Select(SpliceAt);
        return new CoreBars(
            _rule.BarsInCore, _rule.Bar.Diameter, Set(foot, bases, top), [.. splices], _rule.Splice.Coupler is not null, starter, below,
            Math.PI * core.Diameter.Mm * core.Diameter.Mm / 4 * (core.Top - core.Bottom).Mm / 1e9, lifts);
    }

    /// <summary>How far a bar runs past the foot of the next: bars that a coupler joins meet in its middle.</summary>
    private Length Overlap => _rule.Splice.Coupler is null ? _rule.Lap : Length.Zero;

    /// <summary>What a splice takes above a foot.</summary>
    private Length Above => _rule.Splice.Coupler is { } length ? length / 2 : _rule.Lap;

    /// <summary>A lap above a foot, or the coupler around it.</summary>
    private Interval SpliceAt(Length foot) => _rule.Splice.Coupler is { } length
        ? new Interval(foot - (length / 2), foot + (length / 2))
        : new Interval(foot, foot + _rule.Lap);

    private ImmutableArray<Interval> Set(Length foot, List<Length> bases, Length top)
    {
        var feet = bases.Prepend(foot).ToList();
        return [.. feet.Select((from, i) => new Interval(from, i == feet.Count - 1 ? top : feet[i + 1] + Overlap))];
    }

    private ImmutableArray<Interval> Lifts(WallLayout wall, Core core)
    {
        var beams = wall.BondBeams.Where(beam => beam.From <= core.At && beam.To >= core.At && beam.Top < core.Top).Select(beam => beam.Bottom).ToList();
        var lifts = ImmutableArray.CreateBuilder<Interval>();
        for (var from = core.Bottom; from < core.Top;)
        {
            var to = Length.Min(LiftTop(from, beams), core.Top);
            lifts.Add(new Interval(from, to));
            from = to;
        }

        return lifts.ToImmutable();
    }

    /// <summary>TMS 602-16 3.5 D: with beams in the pour (from memory) a lift ends under the lowest one further up than the shorter lift.</summary>
    private Length LiftTop(Length from, IEnumerable<Length> beams) => _rule.GroutLiftCured is { } cured
        ? beams.Where(beam => beam > from + _rule.GroutLift).Append(from + cured).Min()
        : from + _rule.GroutLift;
}
