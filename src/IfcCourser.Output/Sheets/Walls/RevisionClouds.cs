using IfcCourser.Geometry;

namespace IfcCourser.Output.Sheets.Walls;

/// <summary>Around what changed since the last issue: rows of arcs, each cloud with the letter of the issue in a triangle where it is free of text.</summary>
internal static class RevisionClouds
{
    /// <summary>Between two tips of a cloud, at most; paper millimetres.</summary>
    private const double Chord = 4;

    /// <summary>How far an arc stands out of its chord, paper millimetres: clear of the course numbers beside the wall.</summary>
    private const double Rise = 1;

    private const double TextHeight = 2.5;

    /// <summary>In a wall's elevation, after all else of the view.</summary>
    public static void Draw(Canvas canvas, WallFacts facts)
    {
        if (facts.Revision is { } revision)
        {
            Draw(canvas, revision.Areas.Select(BoxOf).Where(area => area.Left < facts.Shown.To && area.Right > facts.Shown.From)
                .Select(area => new Box(Math.Max(area.Left, facts.Shown.From), area.Bottom, Math.Min(area.Right, facts.Shown.To), area.Top)), revision.Mark);
        }
    }

    /// <summary>After all else of the view.</summary>
    /// <param name="areas">Real millimetres; a cloud stands a paper millimetre off each.</param>
    /// <param name="mark">Of the issue; empty for none.</param>
    public static void Draw(Canvas canvas, IEnumerable<Box> areas, string mark)
    {
        var mm = canvas.PerPaper;
        foreach (var cloud in areas.Select(area => area.Grown(mm)))
        {
            canvas.AddRange(Around(cloud, mm));
            Letter(canvas, cloud, mark);
        }
    }

    /// <summary>The arcs around a box.</summary>
    /// <param name="mm">Its millimetres in one paper millimetre.</param>
    public static IEnumerable<ArcItem> Around(Box box, double mm)
    {
        var corners = box.Corners();
        return corners.SelectMany((corner, i) => Along(corner, corners[(i + 1) % corners.Length], (i * 90) - 90, mm));
    }

    private static Box BoxOf(ElevationRect rect) => new(rect.Left.Mm, rect.Bottom.Mm, rect.Right.Mm, rect.Top.Mm);

    /// <param name="outwards">Direction, degrees from the x axis.</param>
    private static IEnumerable<ArcItem> Along(Point from, Point to, double outwards, double mm)
    {
        var way = to - from;
        var length = Math.Abs(way.X) + Math.Abs(way.Y);
        var count = Math.Max(1, (int)Math.Ceiling(length / (Chord * mm)));
        var (chord, rise) = (length / count, Rise * mm);
        var radius = ((chord * chord / 4) + (rise * rise)) / (2 * rise);
        var half = Math.Atan2(chord / 2, radius - rise) * 180 / Math.PI;
        var (sin, cos) = Math.SinCos(outwards * Math.PI / 180);
        var inwards = new Point(cos, sin) * (rise - radius);
        return Enumerable.Range(0, count).Select(i => new ArcItem(Pen.Revised, from + (way * ((i + 0.5) / count)) + inwards, radius, outwards - half, outwards + half));
    }

    /// <summary>In the cloud from its upper right, else beside it, else over the view.</summary>
    private static void Letter(Canvas canvas, Box cloud, string mark)
    {
        if (mark.Length == 0)
        {
            return;
        }

        var mm = canvas.PerPaper;
        var width = Math.Max(6, TextMetrics.Width(mark, TextHeight) + 4) * mm;
        var size = new Point(width, 5.5 * mm);
        var room = cloud.Grown(-0.5 * mm);
        var places = from down in Steps(room.Height - size.Y, 3 * mm)
                     from left in Steps(room.Width - size.X, 3 * mm)
                     select new Box(room.Right - left - size.X, room.Top - down - size.Y, room.Right - left, room.Top - down);
        var over = Enumerable.Range(0, int.MaxValue).Select(i =>
            new Box(cloud.Right - size.X, canvas.Extent.Top + mm, cloud.Right, canvas.Extent.Top + mm + size.Y).Moved(new Point(i * size.X, 0)));
        var near = places.Concat(Beside(cloud, size, mm)).ToArray();
        var box = near.Where(canvas.IsFree).Concat(near.Where(canvas.IsFreeOfText)).Concat(over.Where(canvas.IsFreeOfText)).First();
        canvas.Add(new PolylineItem(Pen.Revised, [new(box.Left, box.Bottom), new(box.Right, box.Bottom), new(box.Middle.X, box.Top)], PathEnd.Closed));
        canvas.Write(new TextItem(Pen.Heading, new Point(box.Middle.X, box.Bottom + (1.8 * mm)), mark, TextHeight, TextAnchor.Middle));
        canvas.Take(box);
    }

    /// <summary>Clear of the arcs, right, left, above and below, from the middle of each side outwards.</summary>
    private static IEnumerable<Box> Beside(Box cloud, Point size, double mm)
    {
        const double Clear = Rise + 0.8;
        var (across, up) = ((cloud.Width + size.X) / 2, (cloud.Height + size.Y) / 2);
        var gap = Clear * mm;
        return from step in Enumerable.Range(0, 1 + (int)(Math.Max(across, up) / (3 * mm)))
               from aside in new[] { step * 3 * mm, step * -3 * mm }.Distinct()
               from at in new[] { new Point(across + gap, aside), new Point(-across - gap, aside), new Point(aside, up + gap), new Point(aside, -up - gap) }
               where Math.Abs(at.X) <= across + gap && Math.Abs(at.Y) <= up + gap
               select Box.At(cloud.Middle + at, size.X, size.Y);
    }

    private static IEnumerable<double> Steps(double room, double step) => room < 0 ? [] : Enumerable.Range(0, 1 + (int)(room / step)).Select(i => i * step);
}
