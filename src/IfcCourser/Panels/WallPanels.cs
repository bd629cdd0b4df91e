using System.Collections.Immutable;
using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Modules;
using IfcCourser.Rules;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Panels;

/// <summary>
/// Divides a wall into panels by movement joints: at given places, at steps of its height, where it meets a wall of another
/// thickness in line, and between these where panels would be longer than the rules allow.
/// </summary>
internal sealed class WallPanels
{
    private readonly Wall _wall;
    private readonly ElevationOutline _outline;
    private readonly ImmutableArray<OpeningLayout> _openings;
    private readonly ModuleGrid _lines;
    private readonly ImmutableArray<MetWall> _met;
    private readonly LayoutRules _rules;
    private readonly MovementJointRule _rule;
    private readonly JointRoom _room;
    private readonly List<Finding> _findings = [];

    private WallPanels(Wall wall, PlacedOpenings placed, ImmutableArray<MetWall> met, LayoutRules rules, MovementJointRule rule)
    {
        _wall = wall;
        _outline = new ElevationOutline(wall.Outline);
        _openings = [.. placed.Openings.Where(opening => opening.Interrupts)];
        _lines = new ModuleGrid(placed.Lines, rules.Catalog.HeadJoint.Nominal);
        _met = met;
        _rules = rules;
        _rule = rule;
        _room = new JointRoom(wall.Frame.Thickness, _openings, met, rules, rule);
    }

    /// <param name="wall">The wall.</param>
    /// <param name="placed">Its openings and module lines.</param>
    /// <param name="met">The walls it meets.</param>
    /// <param name="rules">The rule of movement joints, limits of the catalog, lintels, least pieces.</param>
    public static (ImmutableArray<MovementJoint> Joints, ImmutableArray<Finding> Findings) Of(
        Wall wall, PlacedOpenings placed, ImmutableArray<MetWall> met, LayoutRules rules)
    {
        if (rules.Set.MovementJoints is { } rule)
        {
            return new WallPanels(wall, placed, met, rules, rule).Solve();
        }

        return wall.MovementJoints.IsEmpty ? ([], []) : ([], [PanelFindings.NoRule(rules.Set.Name, wall.MovementJoints[0])]);
    }

    private bool IsDivided => _rule.Walls == JointedWalls.All || _wall.LoadBearing == false;

    private (ImmutableArray<MovementJoint> Joints, ImmutableArray<Finding> Findings) Solve()
    {
        var places = AtThickness().ToList();
        foreach (var asked in Asked())
        {
            if (Refusal(asked, places) is { } refused)
            {
                _findings.Add(refused);
            }
            else
            {
                places.Add(asked);
            }
        }

        if (IsDivided)
        {
            places.AddRange(Stretches([.. places.Select(place => place.At)]).SelectMany(Divide).ToList());
        }

        ImmutableArray<MovementJoint> joints = [.. places.OrderBy(place => place.At).Select(AsJoint)];
        return (joints, joints.IsEmpty ? [.. _findings] : [PanelFindings.Added(joints, _rules), .. _findings]);
    }

    private IEnumerable<JointPlace> Asked()
    {
        var asked = new AskedJoints(_wall, _outline, _rule);
        return IsDivided ? asked.All() : asked.Given();
    }

    /// <summary>Joints against walls of another thickness in the same line, at this wall's ends.</summary>
    private IEnumerable<JointPlace> AtThickness() => _met
        .Where(wall => IsDivided && wall is { Kind: JunctionKind.Continued, Yields: true, Place.Side: not JunctionSide.Along }
            && Length.Abs(wall.Thickness - _wall.Frame.Thickness) >= _rule.ThicknessStep)
        .Select(wall => wall.Place.Side)
        .Distinct()
        .Select(side => new JointPlace(side == JunctionSide.Start ? _rule.Width / 2 : _wall.Frame.Length - (_rule.Width / 2), "thickness"));

    private Finding? Refusal(JointPlace asked, List<JointPlace> places)
    {
        var possible = _room.Possible(new Interval(_outline.Box.Left, _outline.Box.Right));
        if (!possible.Any(range => range.Contains(asked.At)))
        {
            return PanelFindings.NoRoom(asked, possible, _rules);
        }

        var near = places.Where(place => Length.Abs(place.At - asked.At) < _rules.MinPiece + _rule.Width).Select(place => (Length?)place.At).FirstOrDefault();
        return near is { } other ? PanelFindings.NearAnother(asked, other, _rules) : null;
    }

    /// <summary>Stretches between joints; openings over the wall's whole height part it as well.</summary>
    private IEnumerable<Interval> Stretches(IEnumerable<Length> joints)
    {
        var from = _outline.Box.Left;
        var breaks = joints.Select(joint => new Interval(joint, joint)).Concat(_openings
            .Where(opening => opening.Placed.Bottom <= _outline.Box.Bottom
                && opening.Placed.Top >= _outline.HighestWithin(opening.Placed.Left, opening.Placed.Right) - _rules.Set.MortarRest)
            .Select(opening => new Interval(opening.Placed.Left, opening.Placed.Right)));
        foreach (var part in breaks.OrderBy(part => part.From).Append(new Interval(_outline.Box.Right, _outline.Box.Right)))
        {
            if (part.From > from)
            {
                yield return new Interval(from, part.From);
            }

            from = Length.Max(from, part.To);
        }
    }

    private IEnumerable<JointPlace> Divide(Interval run)
    {
        var longest = Longest(run);
        var lengths = PanelLengths.Of(
            longest,
            longest * _rule.AtCornerPercent / 100,
            run.From == _outline.Box.Left && _wall.Start.Kind == EndKind.Corner,
            run.To == _outline.Box.Right && _wall.End.Kind == EndKind.Corner);
        ImmutableArray<Interval> wanted = [.. _room.Wanted(run)];
        var task = new PanelTask(run, lengths, _rules.Catalog.LeastPier + _rule.Width, _rule.Width, _room.Allowed(run), wanted, _lines);
        var (joints, score) = PanelPlan.Solve(task);
        _findings.AddRange(PanelFindings.TooLong(task, joints, score, _rules));
        return joints.Select(at => new JointPlace(at, wanted.Any(range => range.Contains(at)) ? "opening" : "panel"));
    }

    /// <summary>The longest panel of a stretch; its height is the mean one. That a gable counts so: common practice, no source.</summary>
    private Length Longest(Interval run)
    {
        var longest = _rule.LongestPanel;
        if (_rules.Catalog.Panels is { } limits)
        {
            longest = Length.Min(longest, limits.Longest);
            longest = limits.OfHeightPerMille > 0 ? Length.Min(longest, MeanHeight(run) * limits.OfHeightPerMille / 1000) : longest;
        }

        return longest;
    }

    private Length MeanHeight(Interval run) => _outline.IsRectangle
        ? _outline.Box.Height
        : Length.FromMm(_outline.AreaWithin(_outline.Box with { Left = run.From, Right = run.To }) * 1e6 / run.Size.Mm).RoundTo(_rules.Catalog.CutGrid);

    private MovementJoint AsJoint(JointPlace place)
    {
        var half = _rule.Width / 2;
        var parts = _outline.Within(_outline.Box with { Left = place.At - half, Right = place.At + half });
        return new MovementJoint(
            place.At, _rule.Width,
            parts.Select(part => part.Box.Bottom).DefaultIfEmpty(_outline.Box.Bottom).Min(),
            parts.Select(part => part.Box.Top).DefaultIfEmpty(_outline.Box.Top).Max(),
            place.Why);
    }
}
