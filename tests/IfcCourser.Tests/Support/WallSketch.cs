using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Runs;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Tests.Support;

/// <summary>Walls for solver tests, stated by their elevations, without a model file.</summary>
internal static class WallSketch
{
    public static Wall Straight(
        Length length, Length height, Length thickness, params (double Left, double Right, double Bottom, double Top)[] openings) => new()
        {
            Identity = new WallIdentity("W0", 10, "wall", "Ground floor", null),
            Frame = new WallFrame(default, new Vector2(1, 0), length, thickness),
            Body = new BodyFacts(0, 0, default, default),
            Outline = Rectangle(length, height),
            Openings = [.. openings.Select((o, i) => Opening(i, o.Left, o.Right, o.Bottom, o.Top))],
            Start = WallEnd.Free,
            End = WallEnd.Free,
            Findings = [],
        };

    public static ImmutableArray<ElevationPoint> Rectangle(Length length, Length height) =>
        [new(Length.Zero, Length.Zero), new(length, Length.Zero), new(length, height), new(Length.Zero, height)];

    public static WallOpening Opening(int number, double left, double right, double bottom, double top) => new(
        FormattableString.Invariant($"O{number}"), 100 + number, null, bottom <= 0 ? OpeningKind.Door : OpeningKind.Window, null, null,
        new ElevationRect(Length.FromMm(left), Length.FromMm(right), Length.FromMm(bottom), Length.FromMm(top)), null);

    /// <summary>Four walls of two lengths, counter-clockwise, their corners shared.</summary>
    public static WallModel Box(Length a, Length b, Length height, Length thickness)
    {
        var t = thickness.Mm;
        Wall Side(int i, double x, double y, double dx, double dy, Length length) => Straight(length, height, thickness) with
        {
            Identity = new WallIdentity(FormattableString.Invariant($"W{i}"), 10 + i, null, "Ground floor", null),
            Frame = new WallFrame(new Vector3(x, y, 0), new Vector2(dx, dy), length, thickness),
            Start = new WallEnd(EndKind.Corner, [(i + 3) % 4]),
            End = new WallEnd(EndKind.Corner, [(i + 1) % 4]),
        };
        ImmutableArray<Wall> walls =
        [
            Side(0, 0, t, 1, 0, a), Side(1, a.Mm - t, 0, 0, 1, b), Side(2, a.Mm, b.Mm - t, -1, 0, a), Side(3, t, b.Mm, 0, -1, b),
        ];
        return new WallModel
        {
            Walls = walls,
            Skipped = [],
            Junctions =
            [
                .. Enumerable.Range(0, 4).Select(i => new Junction(
                    JunctionKind.Corner, i, (i + 1) % 4,
                    new JunctionPlace(JunctionSide.End, walls[i].Frame.Length - thickness, walls[i].Frame.Length),
                    new JunctionPlace(JunctionSide.Start, Length.Zero, thickness),
                    thickness, thickness, IsSquare: true)),
            ],
            Findings = [],
        };
    }

    /// <summary>A wall and another whose end stands against its left face; both start from one base.</summary>
    /// <param name="at">Where the abutting wall's thickness begins along the main wall.</param>
    public static WallModel Tee(Wall host, Wall abutting, Length at)
    {
        var (a, b) = (host.Frame, abutting.Frame);
        abutting = abutting with
        {
            Identity = abutting.Identity with { GlobalId = "W1", StepId = 11 },
            Frame = b with { Origin = new Vector3((at + b.Thickness).Mm, b.Length.Mm, 0), Direction = new Vector2(0, -1) },
            End = new WallEnd(EndKind.Tee, [0]),
        };
        return new WallModel
        {
            Walls = [host, abutting],
            Skipped = [],
            Junctions =
            [
                new Junction(
                    JunctionKind.Tee, 0, 1,
                    new JunctionPlace(JunctionSide.Along, at, at + b.Thickness), new JunctionPlace(JunctionSide.End, b.Length, b.Length),
                    b.Thickness, Length.Zero, IsSquare: true),
            ],
            Findings = [],
        };
    }

    public static WallModel Alone(Wall wall) => new() { Walls = [wall], Skipped = [], Junctions = [], Findings = [] };

    public static Layout LayOut(WallModel model, LayoutRules rules) => LayoutBuilder.Build(
        model, rules, new ModelFacts("sketch.ifc", new string('0', 64), "IFC4", 1, null, null, "2026-01-01"));

    public static WallLayout LayOut(Wall wall, LayoutRules rules) => LayOut(Alone(wall), rules).Walls[0];
}
