using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Units;

namespace IfcCourser.SettingOut;

/// <summary>Finds the block that a bar's foot stands in, in its own wall or, at corners, in the one that shares it.</summary>
internal static class FootBlocks
{
    public static FootBlock? Of(WallLayout wall, Core core, IReadOnlyDictionary<string, WallLayout> walls) =>
        In(wall, core.At, core.Bottom)
        ?? core.SharedWith.Select(id => walls.GetValueOrDefault(id)).OfType<WallLayout>()
            .Where(other => other.Frame.Curve is null)
            .Select(other => In(other, AlongOf(other, core.Point), core.Bottom + Length.FromModelMm(wall.Frame.Origin.Z - other.Frame.Origin.Z)))
            .FirstOrDefault(block => block is not null);

    private static FootBlock? In(WallLayout wall, Length at, Length foot)
    {
        var course = wall.Courses.FirstOrDefault(course => course.Top > foot);
        return course?.Pieces.FirstOrDefault(piece => piece.From < at && piece.To > at && piece.Top > foot) is { } piece
            ? new FootBlock(wall.Identity.GlobalId, course.Number, at - piece.From, piece.To - at)
            : null;
    }

    private static Length AlongOf(WallLayout wall, Vector2 point) =>
        Length.FromModelMm(Vector2.Dot(point - wall.Frame.Origin.Plan, wall.Frame.Direction));
}
