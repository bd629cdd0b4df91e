using IfcCourser.Output.Sheets.Walls;

namespace IfcCourser.Output.Sheets.Details;

/// <summary>Places drawings in rows from the upper left.</summary>
internal static class DetailRows
{
    private const double Gap = 10;

    /// <summary>Lower left corners in the space, paper millimetres; null where they don't fit.</summary>
    public static ImmutableArray<Point>? Place(IReadOnlyList<Canvas> drawings, Box space)
    {
        var places = ImmutableArray.CreateBuilder<Point>();
        var (left, top, lowest) = (space.Left, space.Top, space.Top);
        foreach (var drawing in drawings)
        {
            var (width, height) = (drawing.Extent.Width / drawing.PerPaper, drawing.Extent.Height / drawing.PerPaper);
            if (left > space.Left && left + width > space.Right)
            {
                (left, top) = (space.Left, lowest - Gap);
            }

            if (left + width > space.Right || top - height < space.Bottom)
            {
                return null;
            }

            places.Add(new Point(left, top - height));
            (left, lowest) = (left + width + Gap, Math.Min(lowest, top - height));
        }

        return places.ToImmutable();
    }
}
