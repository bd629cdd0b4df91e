using IfcCourser.Comparing;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.SettingOut;
using IfcCourser.Units;

namespace IfcCourser.Output.Sheets.Plans;

/// <summary>A storey's first or second course with what its plan needs of the layout.</summary>
internal sealed class PlanFacts
{
    /// <param name="part">Null for the whole plan.</param>
    public PlanFacts(Layout layout, string? storey, int index, Reissue? since = null, PlanPart? part = null)
    {
        Layout = layout;
        Storey = storey;
        Index = index;
        Part = part;
        Text = new SheetLengths(layout.Rules.Catalog.Units);
        Axes = StoreyAxes.Of(layout, storey);
        var whole = OnStorey(layout.Walls).OrderBy(wall => wall.Identity.StepId).ToArray();
        Walls = part is null ? [.. whole] : [.. whole.Select(wall => part.Of(wall, index, At)).OfType<WallLayout>()];
        Gone = [.. OnStorey(since?.Gone ?? []).Where(wall => !GoneWalls.Shown(wall, At, part).IsEmpty)];
        Clouds = new PlanClouds(since, Walls.Select(wall => (wall, CourseOf(wall))), Gone, At, part);
        Ground = new PlanGround([.. whole.Concat(Gone).Select(wall => Box.Around(GoneWalls.Loop(wall, At)))]);

        IEnumerable<WallLayout> OnStorey(ImmutableArray<WallLayout> walls) =>
            walls.Where(wall => string.Equals(wall.Identity.Storey, storey, StringComparison.Ordinal) && wall.Courses.Length > index);
    }

    public Layout Layout { get; }

    public string? Storey { get; }

    /// <summary>0 for the first course of each wall, 1 for the second.</summary>
    public int Index { get; }

    public SheetLengths Text { get; }

    public SetOutAxes Axes { get; }

    /// <summary>What a sheet shows of the plan; null where that is all of it.</summary>
    public PlanPart? Part { get; }

    /// <summary>The whole storey's walls.</summary>
    public PlanGround Ground { get; }

    /// <summary>Walls of the last issue that had the course and are laid out no more.</summary>
    public ImmutableArray<WallLayout> Gone { get; }

    /// <summary>Coursed walls of the storey that have the course.</summary>
    public ImmutableArray<WallLayout> Walls { get; }

    /// <summary>What changed since the last issue.</summary>
    public PlanClouds Clouds { get; }

    public Course CourseOf(WallLayout wall) => wall.Courses[Index];

    public string NumberOf(WallLayout wall) => WallNumbers.Sheet(Layout, wall);

    /// <summary>A point of the model in the plan's axes, mm.</summary>
    public Point At(Vector2 point)
    {
        var at = Axes.Of(point);
        return new Point(at.X, at.Y);
    }

    public Point At(WallLayout wall, Length s, Length t) => At(wall.Frame.PointAt(s, t, Length.Zero).Plan);

    /// <summary>Whether a wall runs along x or y of the plan; null where it is askew or curved.</summary>
    public DimensionAxis? AxisOf(WallLayout wall)
    {
        const double Straight = 1e-4;
        var along = Vector2.Dot(wall.Frame.Direction, Axes.Along);
        return wall.Frame.Curve is not null ? null
            : Math.Abs(along) > 1 - (Straight * Straight) ? DimensionAxis.Horizontal
            : Math.Abs(along) < Straight ? DimensionAxis.Vertical
            : null;
    }

    /// <summary>Openings that the course stops at, with their tags.</summary>
    public IEnumerable<(OpeningLayout Opening, string Tag)> OpeningsIn(WallLayout wall) => Openings(wall, isInCourse: true);

    /// <summary>Openings over the course, with their tags.</summary>
    public IEnumerable<(OpeningLayout Opening, string Tag)> OpeningsOver(WallLayout wall) => Openings(wall, isInCourse: false);

    /// <summary>Whether a point of the plan is on this sheet.</summary>
    public bool Shows(Point at) => Part?.Shows(at) != false;

    private IEnumerable<(OpeningLayout Opening, string Tag)> Openings(WallLayout wall, bool isInCourse)
    {
        var course = CourseOf(wall);
        return wall.Openings.Zip(OpeningTags.Of(wall.Openings)).Where(pair => pair.First.Interrupts
            && (pair.First.Placed.Bottom < course.Top && pair.First.Placed.Top > course.Bottom) == isInCourse
            && Part?.Meets(Box.Around(PlanShape.Loop(wall, new Interval(pair.First.Placed.Left, pair.First.Placed.Right), At))) != false);
    }
}
