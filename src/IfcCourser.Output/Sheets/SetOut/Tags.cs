using System.Globalization;
using IfcCourser.Output.Sheets.Plans;
using IfcCourser.Output.Sheets.Walls;

namespace IfcCourser.Output.Sheets.SetOut;

/// <summary>Numbers beside bars, control points and walls.</summary>
internal static class Tags
{
    public static void Draw(Canvas canvas, SetOutFacts facts)
    {
        foreach (var bar in facts.CastIn)
        {
            PlanTag.Place(canvas, SetOutFacts.At(bar), bar.Number.ToString(CultureInfo.InvariantCulture), Pen.Heading);
        }

        foreach (var place in facts.Storey.ControlPoints.GroupBy(point => (Math.Round(point.X.Mm), Math.Round(point.Y.Mm))))
        {
            PlanTag.Place(canvas, SetOutFacts.At(place.First()), place.Min(point => point.Number).ToString(CultureInfo.InvariantCulture), Pen.Dimension);
        }

        foreach (var wall in facts.Walls)
        {
            var frame = wall.Frame;
            var middle = facts.Part is null ? frame.Length / 2 : CoursePlan.LongestSpan(facts.Course, wall);
            PlanTag.Place(canvas, facts.At(wall, middle, frame.Thickness / 2), facts.WallNumber(wall.Identity.GlobalId), Pen.Text);
        }
    }
}
