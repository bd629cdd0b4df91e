using System.Collections.Immutable;
using IfcCourser.Findings;
using IfcCourser.Reinforcement;
using IfcCourser.Rules;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Coursing;

/// <summary>
/// Settles the heights of all walls: walls that touch share course lines where the levelling bed takes up the difference of
/// their bases, or a cut first course of the fewer walls does; else each side keeps its own lines, the junction is butted and
/// a finding says which step of the slab would do. No first course is cut to share lines with another storey, unless the
/// rules let courses run on through the storeys; then walls share lines with the walls under them as well.
/// </summary>
internal sealed class LevelGroups
{
    /// <summary>Bases further apart stand on the slabs of two storeys. Common practice, no source.</summary>
    private static readonly Length _highestStep = Length.FromMm(1500);

    private readonly WallModel _model;
    private readonly LayoutRules _rules;
    private readonly ImmutableArray<MasonryOutline> _masonry;
    private readonly WallHeights[] _heights;
    private readonly LevelSets _sets;
    private readonly ImmutableArray<Finding>.Builder _findings = ImmutableArray.CreateBuilder<Finding>();

    private LevelGroups(WallModel model, LayoutRules rules)
    {
        _model = model;
        _rules = rules;
        _masonry = [.. model.Walls.Select(wall => MasonryOutline.Of(wall, rules))];
        _heights = [.. model.Walls.Zip(_masonry, (wall, masonry) => WallHeights.Of(wall, masonry.Outline.Box.Top, rules))];
        ImmutableArray<(int Lower, int Upper, bool IsDirect)> stacks =
            rules.Set.StoreyStart == StoreyStart.Continuous ? [.. StoreyStacks.Of(model.Walls, rules)] : [];
        foreach (var (_, upper, _) in stacks.Where(stack => stack.IsDirect))
        {
            _heights[upper] = _heights[upper] with { StandsOnWall = true, Bed = OnWall(rules.Catalog.BedJoint.Nominal) };
        }

        _sets = new LevelSets(_heights, rules);
        Join(model.Junctions, stacks);
        foreach (var junction in model.Junctions.Where(junction => !_sets.Share(junction.First, junction.Second)))
        {
            Report(junction.First, junction.Second, Messages.SlabStep);
        }

        foreach (var (lower, upper, _) in stacks.Where(stack => !_sets.Share(stack.Lower, stack.Upper)))
        {
            Report(lower, upper, Messages.StoreyStep);
        }
    }

    /// <returns>Each wall with its courses, in the model's order, and what keeps walls from sharing lines.</returns>
    public static (ImmutableArray<WallLines> Walls, ImmutableArray<Finding> Findings) Of(WallModel model, LayoutRules rules)
    {
        var groups = new LevelGroups(model, rules);
        return (groups.Lines(), groups._findings.ToImmutable());
    }

    /// <summary>Whether first courses may be cut to share lines; the names of storeys don't tell, many hold walls of several slabs.</summary>
    private bool MayCut(int first, int second) => _rules.Set.StoreyStart == StoreyStart.Continuous
        || Length.Abs(_heights[first].Base - _heights[second].Base) <= _highestStep;

    /// <summary>First what can share lines whole, so that then the smaller set of two is cut.</summary>
    private void Join(ImmutableArray<Junction> junctions, ImmutableArray<(int Lower, int Upper, bool IsDirect)> stacks)
    {
        List<(int First, int Second)> pairs =
        [
            .. junctions.Select(junction => (junction.First, junction.Second)),
            .. stacks.Select(stack => (stack.Lower, stack.Upper)),
        ];
        foreach (var (first, second) in pairs)
        {
            _sets.JoinWhole(first, second);
        }

        foreach (var (first, second) in pairs.Where(pair => MayCut(pair.First, pair.Second)))
        {
            _sets.JoinByCutting(first, second);
        }
    }

    /// <summary>Over a wall lies a bed joint, of which its top may already have left a part.</summary>
    private static LengthRange OnWall(Length joint) => new(Length.Zero, joint, joint);

    private ImmutableArray<WallLines> Lines()
    {
        var lines = new WallLines[_heights.Length];
        var (play, choice) = (new BedPlay(_rules), new LineChoice(_rules));
        var (besideAnotherTop, besideHigher) = WallsBesideAnotherTop();
        var number = 0;
        foreach (var walls in _sets.All())
        {
            var heights = play.Limit([.. walls.Select(i => _heights[i] with { MeetsAnotherTop = besideAnotherTop.Contains(i), MeetsHigher = besideHigher.Contains(i) })]);
            var (chosen, stacks) = choice.Choose(heights);
            var group = new LevelGroup(FormattableString.Invariant($"G{++number}"), chosen);
            for (var k = 0; k < walls.Length; k++)
            {
                var wall = _model.Walls[walls[k]];
                lines[walls[k]] = new WallLines(
                    wall, group, _masonry[walls[k]].Outline, heights[k], stacks[k]?.Bands(heights[k].Base, _rules.Catalog) ?? [])
                {
                    RakedBeams = _masonry[walls[k]].Beams,
                };
            }
        }

        return [.. lines];
    }

    /// <summary>The walls that bond at a corner with one that ends at another height, and those of them that end lower.</summary>
    private (HashSet<int> Other, HashSet<int> Lower) WallsBesideAnotherTop()
    {
        var unlike = _model.Junctions
            .Where(junction => junction.Kind == JunctionKind.Corner && _sets.Share(junction.First, junction.Second))
            .Where(junction => _heights[junction.First].Top != _heights[junction.Second].Top)
            .ToList();
        return (
            [.. unlike.SelectMany(junction => new[] { junction.First, junction.Second })],
            [.. unlike.Select(junction => _heights[junction.First].Top < _heights[junction.Second].Top ? junction.First : junction.Second)]);
    }

    private void Report(int first, int second, Func<string, string, Length, Length, Length, UnitSystem, string> message)
    {
        if (!_model.Walls[first].IsSelected && !_model.Walls[second].IsSelected)
        {
            return;
        }

        var (lower, higher) = _sets.StepsThatWork(first, second);
        _findings.Add(new Finding(
            FindingCodes.SlabStep,
            message(
                Name(first), Name(second), Length.Abs(_heights[first].Base - _heights[second].Base), lower, higher, _rules.Catalog.Units)));
    }

    private string Name(int wall)
    {
        var identity = _model.Walls[wall].Identity;
        return FormattableString.Invariant($"{identity.Name ?? "wall"} (#{identity.StepId})");
    }
}
