using System.Collections.Immutable;
using IfcCourser.Findings;
using IfcCourser.Geometry;

namespace IfcCourser.Walls.Reading;

/// <summary>A wall that is to be laid out, before its run is settled against its neighbours; lengths in mm in <see cref="Space"/>.</summary>
public sealed record WallDraft
{
    public required WallIdentity Identity { get; init; }

    public required WallSpace Space { get; init; }

    /// <summary>The whole body across the wall, all layers.</summary>
    public required Slab Across { get; init; }

    /// <summary>The masonry layer across the wall.</summary>
    public required Slab Masonry { get; init; }

    /// <summary>The whole body along the run.</summary>
    public required Slab Run { get; init; }

    /// <summary>The whole body's height, in model axes.</summary>
    public required Slab Height { get; init; }

    /// <summary>Elevation of the masonry, one polygon.</summary>
    public required Region Outline { get; init; }

    public required ImmutableArray<OpeningDraft> Openings { get; init; }

    /// <summary>Doors and windows that stand in the masonry without an opening.</summary>
    public ImmutableArray<LooseFilling> Loose { get; init; } = [];

    public required BodyFacts Body { get; init; }

    public bool? LoadBearing { get; init; }

    public required MasonryChoice Choice { get; init; }

    public required ImmutableArray<Finding> Findings { get; init; }
}
