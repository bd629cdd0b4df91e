using IfcCourser.Geometry;
using IfcCourser.Walls;

namespace IfcCourser.Layouts;

/// <summary>
/// A layout whose coordinates, areas and volumes have the decimals that files give them: what is drawn from a layout and from its file read back
/// is the same to the last digit.
/// </summary>
public static class RoundedLayout
{
    public static Layout Of(Layout layout) => layout with
    {
        Model = layout.Model with { LengthUnitMm = Of(layout.Model.LengthUnitMm) },
        Walls = [.. layout.Walls.Select(Of)],
        Skipped = [.. layout.Skipped.Select(wall => wall with { Body = wall.Body is { } body ? Of(body) : null })],
        SetOut = Of(layout.SetOut),
    };

    private static WallLayout Of(WallLayout wall) => wall with
    {
        Wall = wall.Wall with { Frame = Of(wall.Frame), Body = Of(wall.Wall.Body) },
        Cores = [.. wall.Cores.Select(core => core with
        {
            Point = Of(core.Point),
            Bars = core.Bars is { } bars ? bars with { GroutVolume = Of(bars.GroutVolume) } : null,
        })],
        BondBeams = [.. wall.BondBeams.Select(beam => beam with { GroutVolume = Of(beam.GroutVolume) })],
        Quantities = wall.Quantities with
        {
            GrossArea = Of(wall.Quantities.GrossArea),
            OpeningArea = Of(wall.Quantities.OpeningArea),
            NetArea = Of(wall.Quantities.NetArea),
            NetVolume = Of(wall.Quantities.NetVolume),
            BeamGrout = Of(wall.Quantities.BeamGrout),
        },
    };

    private static WallFrame Of(WallFrame frame) => frame with
    {
        Origin = Of(frame.Origin),
        Direction = Direction(frame.Direction),
        Curve = frame.Curve is { } curve ? curve with { Centre = Of(curve.Centre) } : null,
    };

    private static BodyFacts Of(BodyFacts body) => new(Of(body.NetVolume), Of(body.GrossVolume), Of(body.Min), Of(body.Max));

    private static SetOut Of(SetOut setOut) => new(
        setOut.Survey with
        {
            Eastings = Of(setOut.Survey.Eastings),
            Northings = Of(setOut.Survey.Northings),
            Height = Of(setOut.Survey.Height),
            East = Direction(setOut.Survey.East),
        },
        setOut.TrueNorth is { } north ? Direction(north) : null,
        [.. setOut.Storeys.Select(Of)]);

    private static StoreySetOut Of(StoreySetOut storey) => storey with
    {
        Axes = storey.Axes with { Origin = Of(storey.Axes.Origin), Along = Direction(storey.Axes.Along) },
        Outlines = [.. storey.Outlines.Select(outline => outline with { Top = Of(outline.Top), Loop = [.. outline.Loop.Select(Of)] })],
        Grid = [.. storey.Grid.Select(line => line with { From = Of(line.From), To = Of(line.To) })],
        CheckLines = [.. storey.CheckLines.Select(line => line with { From = Of(line.From), To = Of(line.To) })],
        ControlPoints = [.. storey.ControlPoints.Select(point => point with { Point = Of(point.Point) })],
        Bars = [.. storey.Bars.Select(bar => bar with { Point = Of(bar.Point) })],
    };

    private static Vector3 Of(Vector3 point) => new(Of(point.X), Of(point.Y), Of(point.Z));

    private static Vector2 Of(Vector2 point) => new(Of(point.X), Of(point.Y));

    private static Vector2 Direction(Vector2 unit) =>
        new((double)Decimals.Rounded(unit.X, Decimals.OfDirections), (double)Decimals.Rounded(unit.Y, Decimals.OfDirections));

    private static double Of(double value) => (double)Decimals.Rounded(value, Decimals.OfMm);
}
