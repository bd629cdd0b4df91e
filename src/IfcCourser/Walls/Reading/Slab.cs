namespace IfcCourser.Walls.Reading;

/// <summary>A range of one wall coordinate, mm: across the wall from its right to its left face, or along its run.</summary>
public readonly record struct Slab(double From, double To)
{
    public double Size => To - From;

    public double Middle => (From + To) / 2;

    public double Common(Slab other) => Math.Min(To, other.To) - Math.Max(From, other.From);

    public Slab Intersect(Slab other) => new(Math.Max(From, other.From), Math.Min(To, other.To));

    public Slab ShiftedBy(double by) => new(From + by, To + by);
}
