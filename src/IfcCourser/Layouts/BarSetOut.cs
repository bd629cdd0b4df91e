using IfcCourser.Geometry;
using IfcCourser.Units;

namespace IfcCourser.Layouts;

/// <summary>Where a bar is set out.</summary>
public sealed record BarSetOut
{
    /// <summary>Unique in the layout: its place in the walk around the storeys.</summary>
    public required int Number { get; init; }

    /// <summary>GlobalId of the wall that lists the bar.</summary>
    public required string Wall { get; init; }

    /// <summary>Id of its core in that wall.</summary>
    public required string Core { get; init; }

    /// <summary>What it begins in.</summary>
    public required BarFoot Foot { get; init; }

    /// <summary>Whether a starter for it is cast into the slab.</summary>
    public bool IsCastIn => Foot == BarFoot.Slab;

    /// <summary>Foot of the bar, model axes, mm.</summary>
    public required Vector3 Point { get; init; }

    /// <summary>In the storey's axes.</summary>
    public required Length X { get; init; }

    /// <summary>In the storey's axes.</summary>
    public required Length Y { get; init; }

    /// <summary>The block that the bar's foot stands in; null where it meets none.</summary>
    public required FootBlock? Block { get; init; }

    /// <summary>Along and square to the face of a wall askew to the axes; null for others.</summary>
    public required SkewPlace? OnFace { get; init; }
}
