using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Step21;

namespace IfcCourser.Ifc.Bodies;

/// <summary>
/// Points, directions and placements of representation items, in mm. Attribute positions of representation items are
/// those of the EXPRESS definitions, the same in IFC2X3, IFC4 and IFC4X3 for everything read here. For one thread at a time.
/// </summary>
public sealed class ShapeSource
{
    /// <summary>References of one shape. Real ones need thousands; one that names its parts over and over, in parts of parts, ends here as one that can't be read.</summary>
    private const int MostFollowed = 1_000_000;

    private readonly StepFile _file;
    private readonly double _lengthUnitMm;
    private int _followed;

    /// <summary>Reads items of a model.</summary>
    /// <param name="file">The model.</param>
    /// <param name="lengthUnitMm">Millimetres in a length unit of the model.</param>
    /// <param name="angleUnit">Radians in a plane angle unit of the model.</param>
    public ShapeSource(StepFile file, double lengthUnitMm, double angleUnit)
    {
        _file = file;
        _lengthUnitMm = lengthUnitMm;
        AngleUnit = angleUnit;
    }

    /// <summary>Radians in a plane angle unit.</summary>
    public double AngleUnit { get; }

    /// <summary>Says that what follows belongs to another shape.</summary>
    public void Begin() => _followed = 0;

    /// <summary>The instance a value refers to; null where there is none, or the shape has referred too often.</summary>
    public StepInstance? Follow(StepValue value)
    {
        if (value.AsReference is not { } id || _followed >= MostFollowed)
        {
            return null;
        }

        _followed++;
        return _file.Find(id);
    }

    public StepInstance? Find(long id) => _file.Find(id);

    /// <summary>A length in mm; null where the value is no number, or one that no building has.</summary>
    public double? Length(StepValue value) => value.AsReal * _lengthUnitMm is { } mm && Math.Abs(mm) <= IfcPlacements.Farthest ? mm : null;

    /// <summary>A list of two or three coordinates.</summary>
    public Vector3? Coordinates(ImmutableArray<StepValue> list) =>
        list.Length >= 2 && Length(list[0]) is { } x && Length(list[1]) is { } y
            ? new Vector3(x, y, list.Length > 2 ? Length(list[2]) ?? 0 : 0)
            : null;

    /// <summary>IfcCartesianPoint; where a plane point has no third coordinate it is 0.</summary>
    public Vector3? Point(StepValue value) =>
        Follow(value) is { Type: "IFCCARTESIANPOINT" } point ? Coordinates(point[0].AsList) : null;

    public Vector2? PlanePoint(StepValue value) => Point(value)?.Plan;

    /// <summary>IfcDirection, as a unit vector; null where there is none or it has no length.</summary>
    public Vector3? Direction(StepValue value)
    {
        var ratios = Follow(value)?[0].AsList ?? [];
        if (ratios.Length < 2)
        {
            return null;
        }

        var direction = new Vector3(ratios[0].AsReal ?? 0, ratios[1].AsReal ?? 0, ratios.Length > 2 ? ratios[2].AsReal ?? 0 : 0);
        return direction.Length > 0 ? direction.Unit() : null;
    }

    /// <summary>
    /// IfcAxis2Placement2D and IfcAxis2Placement3D; where absent the identity (ISO 10303-42 build_axes: the reference
    /// direction is made square to the axis).
    /// </summary>
    public Transform3 Placement(StepValue value)
    {
        if (Follow(value) is not { } placement)
        {
            return Transform3.Identity;
        }

        var origin = Point(placement[0]) ?? default;
        if (placement.Type is "IFCAXIS2PLACEMENT2D")
        {
            var along = (Direction(placement[1]) ?? new Vector3(1, 0, 0)).Plan.Unit();
            return new Transform3(origin, new Vector3(along.X, along.Y, 0), new Vector3(-along.Y, along.X, 0), new Vector3(0, 0, 1));
        }

        return Frame(origin, Direction(placement[1]) ?? new Vector3(0, 0, 1), Direction(placement[2]) ?? new Vector3(1, 0, 0));
    }

    /// <summary>
    /// IfcCartesianTransformationOperator in 2D and 3D, uniform and not; where absent the identity (ISO 10303-42 base_axis).
    /// </summary>
    public Transform3 Operator(StepValue value)
    {
        if (Follow(value) is not { } map)
        {
            return Transform3.Identity;
        }

        var origin = Point(map[2]) ?? default;
        var scale = map[3].AsReal ?? 1;
        if (map.Type.StartsWith("IFCCARTESIANTRANSFORMATIONOPERATOR2D", StringComparison.Ordinal))
        {
            var along = Direction(map[0]) ?? new Vector3(1, 0, 0);
            var left = new Vector3(-along.Y, along.X, 0);
            var across = Direction(map[1]) is { } given && Vector3.Dot(given, left) < 0 ? -left : left;
            return new Transform3(origin, along * scale, across * (map[4].AsReal ?? scale), new Vector3(0, 0, 1));
        }

        var axes = Frame(origin, Direction(map[4]) ?? new Vector3(0, 0, 1), Direction(map[0]) ?? new Vector3(1, 0, 0));
        var y = Direction(map[1]) is { } second && Vector3.Dot(second, axes.Y) < 0 ? -axes.Y : axes.Y;
        return new Transform3(origin, axes.X * scale, y * (map[5].AsReal ?? scale), axes.Z * (map[6].AsReal ?? scale));
    }

    private static Transform3 Frame(Vector3 origin, Vector3 axis, Vector3 reference)
    {
        var x = reference - (axis * Vector3.Dot(reference, axis));
        if (x.Length < 1e-9)
        {
            var other = Math.Abs(axis.X) < 0.9 ? new Vector3(1, 0, 0) : new Vector3(0, 1, 0);
            x = other - (axis * Vector3.Dot(other, axis));
        }

        return new Transform3(origin, x.Unit(), Vector3.Cross(axis, x.Unit()), axis);
    }
}
