namespace IfcCourser.Geometry;

/// <summary>An upright box along the axes, mm.</summary>
public readonly record struct Box3(Vector3 Min, Vector3 Max)
{
    public Vector3 Size => Max - Min;

    public Vector3 Centre => (Min + Max) * 0.5;

    public static Box3 Around(IEnumerable<Vector3> points)
    {
        var min = new Vector3(double.PositiveInfinity, double.PositiveInfinity, double.PositiveInfinity);
        var max = -min;
        foreach (var p in points)
        {
            min = new Vector3(Math.Min(min.X, p.X), Math.Min(min.Y, p.Y), Math.Min(min.Z, p.Z));
            max = new Vector3(Math.Max(max.X, p.X), Math.Max(max.Y, p.Y), Math.Max(max.Z, p.Z));
        }

        return new Box3(min, max);
    }

    public Box3 Grown(double by)
    {
        var margin = new Vector3(by, by, by);
        return new Box3(Min - margin, Max + margin);
    }

    public bool Overlaps(Box3 other) =>
        Min.X < other.Max.X && other.Min.X < Max.X
        && Min.Y < other.Max.Y && other.Min.Y < Max.Y
        && Min.Z < other.Max.Z && other.Min.Z < Max.Z;
}
