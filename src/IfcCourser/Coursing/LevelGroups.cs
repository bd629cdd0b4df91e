using System.Collections.Immutable;
using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Rules;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Coursing;

/// <summary>
/// Settles the heights of all walls: walls that touch share course lines where some lines suit all their bases; else each
/// side keeps its own lines, the junction is butted and a finding says which step of the slab would do. Where the rules let
/// courses run on through the storeys, walls share lines with the walls under them as well.
/// </summary>
internal sealed class LevelGroups
{
    private readonly WallModel _model;
    private readonly LayoutRules _rules;
    private readonly WallHeights[] _heights;
    private readonly LevelSets _sets;
    private readonly ImmutableArray<Finding>.Builder _findings = ImmutableArray.CreateBuilder<Finding>();

    private LevelGroups(WallModel model, LayoutRules rules)
    {
        _model = model;
        _rules = rules;
        _heights = [.. model.Walls.Select(wall => WallHeights.Of(wall, rules))];
        ImmutableArray<(int Lower, int Upper, bool IsDirect)> stacks =
            rules.Set.StoreyStart == StoreyStart.Continuous ? [.. StoreyStacks.Of(model.Walls, rules)] : [];
        foreach (var (_, upper, _) in stacks.Where(stack => stack.IsDirect))
        {
            _heights[upper] = _heights[upper] with { StandsOnWall = true, Bed = OnWall(rules.Catalog.BedJoint.Nominal) };
        }

        _sets = new LevelSets(_heights, rules);
        foreach (var junction in model.Junctions.Where(junction => !_sets.Join(junction.First, junction.Second)))
        {
            Report(junction.First, junction.Second, Messages.SlabStep);
        }

        foreach (var (lower, upper, _) in stacks.Where(stack => !_sets.Join(stack.Lower, stack.Upper)))
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

    /// <summary>Over a wall lies a bed joint, of which its top may already have left a part.</summary>
    private static LengthRange OnWall(Length joint) => new(Length.Zero, joint, joint);

    private ImmutableArray<WallLines> Lines()
    {
        var lines = new WallLines[_heights.Length];
        var (play, choice) = (new BedPlay(_rules), new LineChoice(_rules));
        var bonded = Bonded();
        var sharing = Sharing(bonded);
        var number = 0;
        foreach (var set in Enumerable.Range(0, _heights.Length).GroupBy(_sets.Root).OrderBy(set => set.Key))
        {
            var walls = set.ToList();
            var limits = play.LimitsOver([.. walls.Select(i => _heights[i]).Where(wall => !wall.StandsOnWall).Select(wall => wall.Base).Distinct()]);
            var heights = walls.Select(i => _heights[i] with
            {
                Bed = _heights[i].StandsOnWall ? _heights[i].Bed : limits,
                SharesRips = sharing.Contains(bonded.Root(i)),
            }).ToList();
            var (chosen, stacks) = choice.Choose(heights);
            var group = new LevelGroup(FormattableString.Invariant($"G{++number}"), chosen);
            for (var k = 0; k < walls.Count; k++)
            {
                var wall = _model.Walls[walls[k]];
                lines[walls[k]] = new WallLines(
                    wall, group, new ElevationOutline(wall.Outline), heights[k], stacks[k]?.Bands(heights[k].Base, _rules.Catalog) ?? []);
            }
        }

        return [.. lines];
    }

    /// <summary>Walls that bond with each other, directly or through others.</summary>
    private DisjointSets Bonded()
    {
        var bonded = new DisjointSets(_heights.Length);
        foreach (var junction in _model.Junctions.Where(junction => junction.Kind == JunctionKind.Corner && _sets.Root(junction.First) == _sets.Root(junction.Second)))
        {
            bonded.Unite(junction.First, junction.Second);
        }

        return bonded;
    }

    /// <summary>Two rips may share a thin rest only where all walls that bond with each other end at one height, lest corners part.</summary>
    private HashSet<int> Sharing(DisjointSets bonded) => Enumerable.Range(0, _heights.Length)
        .GroupBy(bonded.Root)
        .Where(set => set.All(wall => _heights[wall].IsLevel && _heights[wall].Top == _heights[set.Key].Top))
        .Select(set => set.Key)
        .ToHashSet();

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
