using System.Collections.Immutable;
using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Modules;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Runs;

/// <summary>What is to be told of heads and sills: off the course lines and what stands between them, or moved far to one.</summary>
internal sealed class OpeningHeightFindings(ImmutableArray<Interval> courses, ImmutableArray<Lintel> lintels, LayoutRules rules)
{
    private readonly UnitSystem _units = rules.Catalog.Units;

    /// <param name="openings">The wall's openings.</param>
    public IEnumerable<Finding> Of(ImmutableArray<OpeningLayout> openings) => openings
        .Where(opening => opening.Interrupts && !opening.Opening.IsFixed)
        .SelectMany(opening => new[] { RaisedFar(opening), HeadOffCourse(opening), SillOffCourse(opening) })
        .OfType<Finding>();

    /// <summary>A head that had to go further up than openings may move otherwise.</summary>
    private Finding? RaisedFar(OpeningLayout opening)
    {
        var up = opening.Placed.Top - opening.Design.Top;
        if (up <= rules.MaxShift)
        {
            return null;
        }

        var below = courses.Where(course => course.From <= opening.Design.Top).Select(course => (Length?)(opening.Design.Top - course.From)).LastOrDefault();
        return new Finding(
            FindingCodes.HeadRaised, Messages.HeadRaised(OpeningFindings.NameOf(opening), up, below, rules.MaxShift, _units), OpeningFindings.PlaceOf(opening));
    }

    private Finding? HeadOffCourse(OpeningLayout opening)
    {
        var (head, name) = (opening.Placed.Top, OpeningFindings.NameOf(opening));
        if (OpeningHeights.LineOver(head, courses) is { } line)
        {
            return line == head ? null : Finding(FindingCodes.HeadOffCourse, opening, Over(opening) is not { } lintel
                ? Messages.HeadOffCourse(name, line - head, _units)
                : lintel.Bottom == head
                    ? Messages.HeadInMidCourse(name, line - head, _units)
                    : Messages.HeadOpen(name, lintel.Bottom - head, _units));
        }

        return head > courses[^1].From && head < courses[^1].To
            ? Finding(FindingCodes.HeadOffCourse, opening, Over(opening) is null
                ? Messages.HeadAboveCourses(name, head - courses[^1].From, _units)
                : Messages.HeadInLastCourse(name, head - courses[^1].From, _units))
            : null;
    }

    private Lintel? Over(OpeningLayout opening) => lintels
        .Where(lintel => lintel.From <= opening.Placed.Left && lintel.To >= opening.Placed.Right && lintel.Bottom >= opening.Placed.Top)
        .MinBy(lintel => lintel.Bottom);

    private Finding? SillOffCourse(OpeningLayout opening)
    {
        var (placed, design) = (opening.Placed, opening.Design);
        var bed = rules.Catalog.BedJoint.Nominal;
        if (placed.Bottom <= courses[0].From || courses.Any(course => placed.Bottom >= course.To && placed.Bottom <= course.To + bed))
        {
            return null;
        }

        var way = courses.Select(course => course.To - design.Bottom).Append(-design.Bottom).MinBy(Length.Abs);
        var why = rules.Openings == OpeningPolicy.Keep ? Messages.RefusedToKeep
            : Length.Abs(way) > rules.MaxShift ? Messages.RefusedPastLargestShift(rules.MaxShift, _units)
            : Messages.RefusedToLower;
        return Finding(FindingCodes.SillOffCourse, opening, Messages.SillOffCourse(OpeningFindings.NameOf(opening), way, why, _units));
    }

    private static Finding Finding(FindingCode code, OpeningLayout opening, string message) => new(code, message, OpeningFindings.PlaceOf(opening));
}
