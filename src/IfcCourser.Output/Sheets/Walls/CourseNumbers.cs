using System.Globalization;
using IfcCourser.Layouts;

namespace IfcCourser.Output.Sheets.Walls;

/// <summary>Numbers of courses above each other: in one column, in two where courses are lower than a line of text.</summary>
/// <param name="Middle">Of the column.</param>
/// <param name="Outer">Where numbers that stand too near to the one below step to.</param>
/// <param name="Inner">Where the ones that they stand too near to step to.</param>
internal sealed record CourseNumbers(double Middle, double Outer, double Inner)
{
    private const double TextHeight = 2.5;

    /// <summary>Of courses in order, each where <paramref name="middle"/> puts it.</summary>
    public void Draw(Canvas canvas, IEnumerable<Course> courses, Func<Course, double> middle)
    {
        var all = courses.Select(course => (Text: course.Number.ToString(CultureInfo.InvariantCulture), Y: middle(course))).ToArray();
        var isAside = false;
        for (var i = 0; i < all.Length; i++)
        {
            isAside = !isAside && IsNear(i - 1);
            var x = isAside ? Outer : IsNear(i) ? Inner : Middle;
            canvas.Write(new TextItem(Pen.Heading, new Point(x, all[i].Y), all[i].Text, TextHeight, TextAnchor.Middle));
        }

        bool IsNear(int lower) => lower >= 0 && lower + 1 < all.Length && all[lower + 1].Y - all[lower].Y < TextHeight * (1 + TextMetrics.Descent) * canvas.PerPaper;
    }
}
