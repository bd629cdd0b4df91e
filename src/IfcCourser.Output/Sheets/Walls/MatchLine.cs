using IfcCourser.Layouts;

namespace IfcCourser.Output.Sheets.Walls;

/// <summary>Where a wall is parted over two sheets: it follows the head joints, so that each block stands on one sheet, whole.</summary>
/// <param name="At">Start of the block right of it in the first course or the second, or the middle of the movement joint it follows; from the wall's start, real millimetres.</param>
/// <param name="Steps">Where it stands in each course, from the bottom up.</param>
internal sealed record MatchLine(double At, ImmutableArray<MatchStep> Steps)
{
    public static MatchLine Of(WallLayout wall, double at) => new(at, [.. wall.Courses.Select(course => Step(course, at))]);

    /// <summary>Whether a piece belongs to the sheet before the line.</summary>
    public bool HasBefore(Piece piece) => IsBefore(piece, At);

    public double AtHeight(double z) => Steps.Select(step => (MatchStep?)step).FirstOrDefault(step => z < step!.Value.Top)?.S ?? Steps[^1].S;

    /// <summary>From the foot upwards.</summary>
    public ImmutableArray<Point> Path => [.. Steps.SelectMany(step => new[] { new Point(step.S, step.Bottom), new Point(step.S, step.Top) })];

    private static bool IsBefore(Piece piece, double at) => (piece.From.Mm + piece.To.Mm) / 2 < at;

    /// <summary>Half way through the joint; where no blocks stand beside it, as near to its place as they leave room.</summary>
    private static MatchStep Step(Course course, double at)
    {
        const double WidestJoint = 30;
        var before = course.Pieces.Where(piece => IsBefore(piece, at)).Select(piece => piece.To.Mm).DefaultIfEmpty(double.MinValue).Max();
        var after = course.Pieces.Where(piece => !IsBefore(piece, at)).Select(piece => piece.From.Mm).DefaultIfEmpty(double.MaxValue).Min();
        var s = after - before <= WidestJoint ? (before + after) / 2 : Math.Max(before, Math.Min(at, after));
        return new MatchStep(course.Bottom.Mm, course.Top.Mm, s);
    }
}
