using System.Collections.Immutable;
using IfcCourser.Layouts;
using IfcCourser.Walls;

namespace IfcCourser.Comparing;

/// <summary>A wall of a layout, whether laid out or not.</summary>
/// <param name="Body">Null where the model's body could not be read.</param>
/// <param name="Layout">Null where it is skipped.</param>
internal sealed record ComparedWall(WallIdentity Identity, BodyFacts? Body, WallLayout? Layout, string? Reason)
{
    /// <summary>In the order of their instance numbers, as sheets are numbered.</summary>
    public static ImmutableArray<ComparedWall> Of(Layout layout) =>
    [
        .. layout.Walls.Select(wall => new ComparedWall(wall.Identity, wall.Wall.Body, wall, null))
            .Concat(layout.Skipped.Select(wall => new ComparedWall(wall.Identity, wall.Body, null, wall.Reason.Code.Id)))
            .OrderBy(wall => wall.Identity.StepId),
    ];

    /// <summary>Whether its body fills the same box as the other's.</summary>
    public bool StandsWhere(ComparedWall other) =>
        Body is { } own && other.Body is { } body && Nearness.Is(own.Min, body.Min) && Nearness.Is(own.Max, body.Max);
}
