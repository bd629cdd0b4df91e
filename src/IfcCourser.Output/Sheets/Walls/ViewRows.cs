namespace IfcCourser.Output.Sheets.Walls;

/// <summary>Drawings in rows, left to right and downwards, those of a row standing on one height.</summary>
/// <param name="Width">Of all, paper millimetres.</param>
/// <param name="Height">Of all, paper millimetres.</param>
/// <param name="At">Lower left corners of the drawings, from the lower left corner of all, paper millimetres.</param>
internal sealed record ViewRows(double Width, double Height, ImmutableArray<Point> At)
{
    private const double Gap = 10;

    /// <summary>Every way to break the drawings into rows, the smallest rectangle first.</summary>
    /// <param name="drawings">In order; a few.</param>
    public static IEnumerable<ViewRows> Of(IReadOnlyList<Canvas> drawings) =>
        Enumerable.Range(0, 1 << (drawings.Count - 1)).Select(breaks => Broken(drawings, breaks)).OrderBy(rows => rows.Width * rows.Height);

    /// <param name="breaks">Bit i is set where a row ends after drawing i.</param>
    private static ViewRows Broken(IReadOnlyList<Canvas> drawings, int breaks)
    {
        var rows = new List<List<Canvas>> { new() };
        for (var i = 0; i < drawings.Count; i++)
        {
            rows[^1].Add(drawings[i]);
            if (i < drawings.Count - 1 && (breaks >> i & 1) == 1)
            {
                rows.Add([]);
            }
        }

        var places = new List<Point>();
        var (width, down) = (0.0, 0.0);
        foreach (var row in rows)
        {
            var (above, below) = (row.Max(one => one.Extent.Top / one.PerPaper), row.Min(one => one.Extent.Bottom / one.PerPaper));
            var left = 0.0;
            foreach (var one in row)
            {
                places.Add(new Point(left, down - above + (one.Extent.Bottom / one.PerPaper)));
                left += (one.Extent.Width / one.PerPaper) + Gap;
            }

            width = Math.Max(width, left - Gap);
            down += below - above - Gap;
        }

        var height = -down - Gap;
        return new ViewRows(width, height, [.. places.Select(place => place + new Point(0, height))]);
    }
}
