using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Walls;

namespace IfcCourser.Output.Sheets.Schedules;

/// <summary>Storey poles: courses with their numbers, their tops from the level line and from the base, edges of openings.</summary>
internal static class PoleDrawing
{
    private const double TextHeight = 2.5;

    /// <summary>Width of the lath, paper millimetres.</summary>
    private const double Lath = 9;

    public static Canvas Draw(Layout layout, Pole pole, SheetLengths text, DrawingScale scale)
    {
        var canvas = new Canvas(scale.Denominator);
        Draw(canvas, layout, pole, text);
        return canvas;
    }

    /// <summary>Poles beside each other, their level lines at one height.</summary>
    public static Canvas Row(IEnumerable<Canvas> poles, DrawingScale scale)
    {
        var row = new Canvas(scale.Denominator);
        foreach (var pole in poles)
        {
            var left = row.Items.Count == 0 ? 0 : row.Extent.Right + (8 * row.PerPaper);
            row.AddRange(pole.Items.Select(item => item.MovedBy(new Point(left - pole.Extent.Left, 0))));
        }

        return row;
    }

    private static void Draw(Canvas canvas, Layout layout, Pole pole, SheetLengths text)
    {
        var (mm, wall) = (canvas.PerPaper, pole.Tallest);
        var level = wall.LevelLine.Mm;
        foreach (var course in wall.Courses)
        {
            var box = new Box(0, course.Bottom.Mm - level, Lath * mm, course.Top.Mm - level);
            canvas.Add(PolylineItem.Rectangle(course.Kind is CourseKind.BondBeam ? Pen.Lintel : Pen.CutBlock, box));
        }

        new CourseNumbers(Lath / 2 * mm, Lath / 4 * mm, Lath * 3 / 4 * mm).Draw(
            canvas, wall.Courses.Where(course => (course.Top - course.Bottom).Mm / mm > TextHeight), course => ((course.Bottom.Mm + course.Top.Mm) / 2) - level);

        canvas.Add(new LineItem(Pen.LevelLine, new Point(-3 * mm, 0), new Point((Lath + 3) * mm, 0)));
        var tops = wall.Courses.Select(course => course.Top.Mm - level).ToArray();
        Tier(canvas, text, -2 * mm, TextSide.Before, 0, tops[^1], tops.Select(top => new Station(top)), ScheduleText.FromLevelLine);
        Tier(canvas, text, canvas.Extent.Left - (3 * mm), TextSide.Before, -level, tops[^1], tops.Prepend(wall.Courses[0].Bottom.Mm - level).Select(top => new Station(top)), ScheduleText.FromBase);
        Tier(canvas, text, (Lath + 2) * mm, TextSide.After, 0, Math.Max(tops[^1], Edges(layout, pole).Select(edge => edge.At).DefaultIfEmpty().Max()), Edges(layout, pole), SheetText.OpeningHeights);
        canvas.Write(new TextItem(Pen.Heading, new Point(0, canvas.Extent.Top + (4 * mm)), $"{ScheduleText.Pole(pole.Number)}  {wall.Identity.Storey}".TrimEnd(), 3.5));
    }

    private static void Tier(Canvas canvas, SheetLengths text, double x, TextSide side, double origin, double top, IEnumerable<Station> stations, string heading)
    {
        var all = stations.ToArray();
        if (all.Length == 0)
        {
            return;
        }

        new RunningTier(DimensionAxis.Vertical, origin, x, x, side).Draw(canvas, text, all);
        canvas.Write(new TextItem(Pen.Text, new Point(x, top + (5 * canvas.PerPaper)), heading, TextHeight, TextAnchor.MiddleLeft, 90));
    }

    /// <summary>Sills and heads with the openings they belong to; equal heights share a line.</summary>
    private static IEnumerable<Station> Edges(Layout layout, Pole pole)
    {
        const int Named = 3;
        var edges = from wall in pole.Walls
                    from pair in wall.Openings.Zip(OpeningTags.Of(wall.Openings))
                    where pair.First.Interrupts
                    from edge in new[] { pair.First.Placed.Bottom, pair.First.Placed.Top }
                    select (At: Math.Round((edge - wall.LevelLine).Mm, 1), Name: $"{WallNumbers.Sheet(layout, wall)} {pair.Second}");
        return edges.GroupBy(edge => edge.At).Select(same =>
        {
            var names = same.Select(edge => edge.Name).ToArray();
            var more = names.Length > Named ? FormattableString.Invariant($" and {names.Length - Named} more") : string.Empty;
            var sign = same.Key < 0 ? "-" : same.Key > 0 ? "+" : string.Empty;
            return new Station(same.Key, $"{string.Join(", ", names.Take(Named))}{more}  {sign}");
        });
    }
}
