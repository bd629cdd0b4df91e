using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Siting;

/// <summary>A wall where its plan is mirrored or turned.</summary>
internal static class SitedWall
{
    public static WallLayout Of(WallLayout wall, LotSiting siting)
    {
        var isMirrored = siting.IsMirrored;
        var sited = wall with
        {
            Wall = wall.Wall with
            {
                Frame = Of(wall.Frame, siting),
                Body = Of(wall.Wall.Body, siting),
                Start = isMirrored ? Mirrored(wall.Wall.Start) : wall.Wall.Start,
                End = isMirrored ? Mirrored(wall.Wall.End) : wall.Wall.End,
            },
        };
        return sited with
        {
            Cores = [.. wall.Cores.Select(core => Of(core, wall.Frame.Thickness, siting))],
            Courses = isMirrored ? [.. wall.Courses.Select(Mirrored)] : wall.Courses,
        };
    }

    /// <summary>Box of the turned box: larger than the body's own where the turn is no quarter.</summary>
    public static BodyFacts Of(BodyFacts body, LotSiting siting)
    {
        var corners = new[] { body.Min.X, body.Max.X }.SelectMany(x => new[] { body.Min.Y, body.Max.Y }.Select(y => siting.Of(new Vector2(x, y)))).ToList();
        return body with
        {
            Min = new Vector3(corners.Min(corner => corner.X), corners.Min(corner => corner.Y), body.Min.Z),
            Max = new Vector3(corners.Max(corner => corner.X), corners.Max(corner => corner.Y), body.Max.Z),
        };
    }

    /// <summary>What was the right face is the left one of a mirrored wall.</summary>
    private static WallFrame Of(WallFrame frame, LotSiting siting) => frame with
    {
        Origin = siting.Of(siting.IsMirrored ? frame.PointAt(Length.Zero, frame.Thickness, Length.Zero) : frame.Origin),
        Direction = siting.Of(frame.Direction),
        Curve = frame.Curve is { } curve ? curve with { Centre = siting.Of(curve.Centre) } : null,
    };

    private static WallEnd Mirrored(WallEnd end) => end with { Slant = -end.Slant };

    private static Core Of(Core core, Length thickness, LotSiting siting) => core with
    {
        Across = siting.IsMirrored ? thickness - core.Across : core.Across,
        Point = siting.Of(core.Point),
    };

    private static Course Mirrored(Course course) =>
        course.Pieces.Any(piece => piece.Notch is not null) ? course with { Pieces = [.. course.Pieces.Select(Mirrored)] } : course;

    private static Piece Mirrored(Piece piece) =>
        piece.Notch is { } notch ? piece with { Notch = notch with { Face = notch.Face == "left" ? "right" : "left" } } : piece;
}
