using IfcCourser.Layouts;

namespace IfcCourser.Output.Sheets.Walls;

/// <summary>Where another wall's block stands in this wall's face because it runs through in that course: a crossed rectangle.</summary>
internal static class NeighbourEnds
{
    public static IEnumerable<Box> Of(WallFacts facts) => facts.Wall.Courses.SelectMany(course => Of(facts, course));

    public static IEnumerable<SheetItem> Cross(Box box) =>
    [
        PolylineItem.Rectangle(Pen.Neighbour, box),
        new LineItem(Pen.Neighbour, new Point(box.Left, box.Bottom), new Point(box.Right, box.Top)),
        new LineItem(Pen.Neighbour, new Point(box.Left, box.Top), new Point(box.Right, box.Bottom)),
    ];

    /// <summary>Between the run's ends and the spans, a head joint clear of this wall's masonry.</summary>
    public static IEnumerable<Box> Of(WallFacts facts, Course course)
    {
        var joint = facts.Layout.Rules.Catalog.HeadJoint.Nominal.Mm;
        var (from, wasWall) = (WallFacts.Start, facts.Stretch?.Before is null);
        foreach (var span in course.Spans)
        {
            if (span.StartEdge == EdgeKind.Wall && wasWall && span.Run.From.Mm - joint > from)
            {
                yield return new Box(from, course.Bottom.Mm, span.Run.From.Mm - joint, course.Top.Mm);
            }

            (from, wasWall) = (span.Run.To.Mm + joint, span.EndEdge == EdgeKind.Wall);
        }

        var end = facts.Wall.Frame.Length.Mm;
        if (wasWall && !course.Spans.IsEmpty && end > from)
        {
            yield return new Box(from, course.Bottom.Mm, end, course.Top.Mm);
        }
    }
}
