using IfcCourser.Geometry;
using IfcCourser.Ifc;
using IfcCourser.Step21;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Output.IfcWriteBack.Parts;

/// <summary>Places things of a wall's elevation relative to the wall's own placement.</summary>
internal sealed class WallPlace
{
    private readonly GeometryWriter _geometry;
    private readonly WallFrame _frame;
    private readonly StepValue _wall;
    private readonly Transform3 _toWall;

    public WallPlace(IfcModel model, GeometryWriter geometry, long wall, WallFrame frame)
    {
        _geometry = geometry;
        _frame = frame;
        var placement = model.Find(wall)?["ObjectPlacement"].AsReference;
        var isLocal = model.Find(placement) is { Type: "IFCLOCALPLACEMENT" };
        _wall = isLocal ? StepValue.Reference(placement!.Value) : StepValue.Omitted;
        _toWall = isLocal ? model.Placement(placement).RigidInverse() : Transform3.Identity;
    }

    /// <summary>The placement of a block: its lower left corner on the left face. Around a curve blocks lie along chords.</summary>
    public StepValue Block(Length from, Length to, Length bottom)
    {
        var half = _frame.Thickness / 2;
        var (start, end) = (_frame.PointAt(from, half, bottom), _frame.PointAt(to, half, bottom));
        var along = _frame.Curve is null ? _frame.Direction : (end - start).Plan.Unit();
        var origin = _frame.Curve is null
            ? _frame.PointAt(from, Length.Zero, bottom)
            : Raised(_frame.PointAt(from + ((to - from) / 2), half, bottom).Plan - (along * ((to - from).Mm / 2)) + (along.Left * half.Mm), start.Z);
        return Placed(origin, along);
    }

    /// <summary>The placement of what stands at a point.</summary>
    /// <param name="s">Along the run.</param>
    /// <param name="t">From the left face.</param>
    /// <param name="z">Above the wall's base.</param>
    public StepValue Point(Length s, Length t, Length z)
    {
        var step = Length.FromMm(1);
        var along = _frame.Curve is null ? _frame.Direction : (_frame.PointAt(s + step, t, z) - _frame.PointAt(s - step, t, z)).Plan.Unit();
        return Placed(_frame.PointAt(s, t, z), along);
    }

    /// <summary>The placement of what lies along a line, at its first point, and the line in the placement's axes, mm: x along the wall's direction at its start.</summary>
    /// <param name="points">In model axes, mm.</param>
    public (StepValue Placement, IReadOnlyList<Vector3> Line) Line(IReadOnlyList<Vector3> points)
    {
        var (origin, along) = (points[0], _frame.Direction);
        var line = points.Select(point => point - origin)
            .Select(to => new Vector3(Rounded(Vector2.Dot(to.Plan, along)), Rounded(Vector2.Dot(to.Plan, along.Left)), Rounded(to.Z)));
        return (Placed(origin, along), [.. line]);
    }

    // Lines that differ by noise are one shape.
    private static double Rounded(double mm) => Math.Round(mm, 4) + 0.0;

    private static Vector3 Raised(Vector2 point, double z) => new(point.X, point.Y, z);

    private StepValue Placed(Vector3 origin, Vector2 along) =>
        _geometry.Placement(_wall, _toWall.After(new Transform3(origin, Raised(along, 0), Raised(along.Left, 0), new Vector3(0, 0, 1))));
}
