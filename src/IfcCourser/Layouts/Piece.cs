using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Units;

namespace IfcCourser.Layouts;

/// <summary>A block as laid.</summary>
public sealed record Piece
{
    /// <summary>Unique in its wall, such as C3P5.</summary>
    public required string Id { get; init; }

    public required string Product { get; init; }

    public required Length From { get; init; }

    public required Length To { get; init; }

    public required Length Bottom { get; init; }

    public required Length Top { get; init; }

    /// <summary>Corner points where the piece is no upright rectangle, counter-clockwise; else null.</summary>
    public ImmutableArray<ElevationPoint>? Outline { get; init; }

    public required Cuts Cut { get; init; }

    /// <summary>A whole unit of the catalog: neither cut nor a bought part length.</summary>
    public required bool IsFull { get; init; }

    /// <summary>Whether it is a trough unit, open upwards for a bond beam's bars and grout.</summary>
    public bool IsTrough { get; init; }

    /// <summary>Ids of the cores that pass through it.</summary>
    public required ImmutableArray<string> Cores { get; init; }

    /// <summary>Ids of the corner cores, listed by other walls, that pass through it.</summary>
    public ImmutableArray<string> CornerCores { get; init; } = [];

    public Notch? Notch { get; init; }

    /// <summary>Of the first course, once its slab was read; else null.</summary>
    public PieceBed? Bed { get; init; }

    public Length Length => To - From;

    public Length Height => Top - Bottom;
}
