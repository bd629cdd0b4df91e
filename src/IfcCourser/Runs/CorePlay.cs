using IfcCourser.Coursing;
using IfcCourser.Reinforcement;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Runs;

/// <summary>How far a bar may stand from its place before it comes too near a head joint of a course it passes.</summary>
internal static class CorePlay
{
    public static (Length Minus, Length Plus) Of(BarPlace bar, IReadOnlyList<LaidCourse> laid, LayoutRules rules)
    {
        var (minus, plus) = (rules.Catalog.UnitLength, rules.Catalog.UnitLength);
        foreach (var course in laid.Where(course => course.Shape.Band.Top > bar.Heights.From && course.Shape.Band.Bottom < bar.Heights.To))
        {
            var ends = course.Shape.Spans.SelectMany(span => new[] { span.Run.From, span.Run.To });
            foreach (var place in course.Joints.Concat(ends))
            {
                minus = place <= bar.At ? Length.Min(minus, bar.At - place - rules.CoreClearance) : minus;
                plus = place >= bar.At ? Length.Min(plus, place - bar.At - rules.CoreClearance) : plus;
            }
        }

        return (Length.Max(minus, Length.Zero), Length.Max(plus, Length.Zero));
    }
}
