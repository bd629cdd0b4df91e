using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Units;

namespace IfcCourser.Layouts;

/// <summary>A stretch of grouted masonry, or of formed concrete, with bars along the wall; bars go through from end to end.</summary>
public sealed record BondBeam
{
    /// <summary>B1, B2, ... from the bottom up, from left to right.</summary>
    public required string Id { get; init; }

    public required BondBeamKind Kind { get; init; }

    /// <summary>Number of the course it is; null for a beam along a slope.</summary>
    public required int? Course { get; init; }

    public required Length Bottom { get; init; }

    public required Length Top { get; init; }

    public required Length From { get; init; }

    public required Length To { get; init; }

    /// <summary>In the wall's elevation, of a raked beam; else null.</summary>
    public ImmutableArray<ElevationPoint>? Outline { get; init; }

    /// <summary>Reasons: top, corner, height, spacing, over-opening, under-opening.</summary>
    public required ImmutableArray<string> Why { get; init; }

    public required int BarCount { get; init; }

    public required string BarSize { get; init; }

    /// <summary>Length of the laps.</summary>
    public required Length Lap { get; init; }

    /// <summary>Where bars go on in others, bar by bar, along the wall also where it slopes; laps of neighbouring bars don't lie beside each other.</summary>
    public required ImmutableArray<BarLap> Laps { get; init; }

    /// <summary>What is laid in: bar by bar, from start to end.</summary>
    public ImmutableArray<BeamBar> Steel { get; init; } = [];

    /// <summary>Bent bars that tie it to the beams of walls that share a corner; listed in one of the two walls.</summary>
    public required ImmutableArray<BeamCorner> Corners { get; init; }

    /// <summary>Hollow to be filled, bars and waste not counted, m3; for a formed beam its concrete.</summary>
    public required double GroutVolume { get; init; }

    public string Bars => FormattableString.Invariant($"{BarCount} {BarSize}");
}
