namespace IfcCourser.Output.Sheets.Plans;

/// <summary>The walls of a storey as boxes, and how their plan is parted over sheets: by straight lines that run along no wall where they need not.</summary>
/// <param name="Walls">Around each wall, axes of the plan, real millimetres; at least one.</param>
/// <param name="Around">What else the plan shows; around the walls.</param>
internal sealed record PlanGround(ImmutableArray<Box> Walls, Box? Around = null)
{
    /// <summary>Without end, and yet no infinity: what is added to it stays a number.</summary>
    private const double Far = 1e12;

    public Box Extent => Walls.Aggregate((a, b) => a.With(b)) is var walls && Around is { } around ? walls.With(around) : walls;

    /// <summary>Parts of a plan in so many columns and rows, those without walls left out.</summary>
    public ImmutableArray<PlanPart> Parts(int columns, int rows)
    {
        var (xs, ys) = (Cuts(columns, isUpright: true), Cuts(rows, isUpright: false));
        var cells = (from row in Enumerable.Range(0, rows).Reverse()
                     from column in Enumerable.Range(0, columns)
                     let window = new Box(xs[column], ys[row], xs[column + 1], ys[row + 1])
                     where Walls.Any(window.Overlaps)
                     select (Column: column, Row: row, Window: window)).ToArray();
        return [.. cells.Select((cell, i) => new PlanPart(i + 1, cells.Length, cell.Window, [.. Edges(cell.Column, cell.Row, cell.Window)]))];

        IEnumerable<PlanEdge> Edges(int column, int row, Box window)
        {
            (int Column, int Row, bool IsUpright, double At)[] sides =
                [(column - 1, row, true, window.Left), (column + 1, row, true, window.Right), (column, row - 1, false, window.Bottom), (column, row + 1, false, window.Top)];
            return sides.Select(side => new PlanEdge(side.IsUpright, side.At, 1 + Array.FindIndex(cells, cell => cell.Column == side.Column && cell.Row == side.Row)))
                .Where(edge => edge.Beyond > 0);
        }
    }

    /// <summary>Near the ends of equal parts, where fewest walls lie along the line, then fewest across it.</summary>
    private double[] Cuts(int count, bool isUpright)
    {
        const double Step = 250;
        var (from, to) = isUpright ? (Extent.Left, Extent.Right) : (Extent.Bottom, Extent.Top);
        var part = (to - from) / count;
        var steps = Math.Min(200, (int)(part / 4 / Step));
        var inner = Enumerable.Range(1, count - 1).Select(i => Enumerable.Range(-steps, (2 * steps) + 1).Select(step => from + (i * part) + (step * Step))
            .OrderBy(at => Weight(at, isUpright)).ThenBy(at => Math.Abs(at - from - (i * part))).First());
        return [-Far, .. inner, Far];
    }

    private int Weight(double at, bool isUpright)
    {
        const double Clear = 300;
        const int Along = 100;
        return Walls.Where(wall => isUpright ? wall.Left - Clear < at && at < wall.Right + Clear : wall.Bottom - Clear < at && at < wall.Top + Clear)
            .Sum(wall => isUpright == wall.Height > wall.Width ? Along : 1);
    }
}
