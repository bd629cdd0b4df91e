using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Modules;

/// <summary>Holds each opening of a wall, as it is wanted, to the wall's module and course lines, and seeks the least shift that cures it.</summary>
/// <param name="courses">The wall's courses from the bottom up, each from its underside to its top.</param>
internal sealed class OpeningChecks(Wall wall, PlacedOpenings placed, ImmutableArray<Interval> courses, LayoutRules rules)
{
    private readonly ModuleGrid _grid = new(placed.Lines, rules.Catalog.HeadJoint.Nominal);
    private readonly RefusedMoves _refused = new(wall, placed.Openings, placed.Lines, rules);

    /// <summary>What stands in the way of a shift where openings are kept: what would if they could move.</summary>
    private readonly RefusedMoves _hindered = new(wall, placed.Openings, placed.Lines, rules with { Openings = OpeningPolicy.Move });

    public OpeningCheck Of(OpeningLayout opening)
    {
        if (!opening.Interrupts)
        {
            return new OpeningCheck(ModuleState.NotCoursed, null, Length.Zero, Length.Zero, null);
        }

        var deviation = Deviation(opening.Design);
        if (opening.Opening.IsFixed || Length.Max(Length.Abs(deviation.Left), Length.Abs(deviation.Right)) <= rules.ModuleTolerance)
        {
            return new OpeningCheck(opening.Opening.IsFixed ? ModuleState.Fixed : ModuleState.OnModule, deviation, Length.Zero, Length.Zero, null);
        }

        if (opening.OnModule)
        {
            var (design, moved) = (opening.Design, opening.Placed);
            return new OpeningCheck(ModuleState.Cured, deviation, moved.Left - design.Left, moved.Right - design.Right, null);
        }

        var (hindered, cure) = (_hindered.BothJambs(opening), _refused.BothJambs(opening));
        var isHindered = rules.Openings == OpeningPolicy.Keep && hindered.Why is (Refusal.PastLargestShift or Refusal.PierShort);
        return new OpeningCheck(StateOf(hindered), deviation, cure.Shift.Left, Tolerated(cure), RefusedMoves.Said(isHindered ? hindered : cure, rules));
    }

    private ModuleState StateOf(RefusedMove hindered) => hindered.Why switch
    {
        Refusal.Widens => ModuleState.WidthOff,
        Refusal.Others when rules.Openings == OpeningPolicy.Keep => ModuleState.Curable,
        _ => ModuleState.Stuck,
    };

    /// <summary>The right jamb's shift: as the left one's where the width is off by no more than the tolerance.</summary>
    private Length Tolerated(RefusedMove cure) => Length.Abs(cure.Widening) <= rules.ModuleTolerance ? cure.Shift.Left : cure.Shift.Right;

    private OpeningDeviation Deviation(ElevationRect design) => new(
        _grid.LeftJambToLine(design.Left),
        _grid.RightJambToLine(design.Right),
        design.Bottom <= Length.Zero ? null : Nearest(courses.Select(course => course.To - design.Bottom)),
        Nearest(courses.Select(course => course.From - design.Top).Where(way => way >= Length.Zero)));

    private static Length? Nearest(IEnumerable<Length> ways) =>
        ways.OrderBy(Length.Abs).Select(way => (Length?)way).FirstOrDefault();
}
