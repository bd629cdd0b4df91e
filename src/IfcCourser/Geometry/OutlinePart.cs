using System.Collections.Immutable;

namespace IfcCourser.Geometry;

/// <summary>A connected part of an outline inside a rectangle.</summary>
/// <param name="Box">The rectangle around it.</param>
/// <param name="Points">Its corners, counter-clockwise, where it does not fill its box; else null.</param>
/// <param name="Area">m2.</param>
public sealed record OutlinePart(ElevationRect Box, ImmutableArray<ElevationPoint>? Points, double Area)
{
    /// <summary>Its corners, counter-clockwise, those of its box where it fills it.</summary>
    public ImmutableArray<ElevationPoint> Corners => Points
        ?? [new(Box.Left, Box.Bottom), new(Box.Right, Box.Bottom), new(Box.Right, Box.Top), new(Box.Left, Box.Top)];
}
