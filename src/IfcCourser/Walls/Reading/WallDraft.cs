using System.Collections.Immutable;
using IfcCourser.Findings;
using IfcCourser.Geometry;

namespace IfcCourser.Walls.Reading;

/// <summary>A wall that is to be laid out, before its run is settled against its neighbours; lengths in mm in <see cref="Space"/>.</summary>
public sealed record WallDraft
{
    public required WallIdentity Identity { get; init; }

    public required WallSpace Space { get; init; }

    /// <summary>What a curved wall is unrolled along, relative to the space's origin; null for a straight one.</summary>
    public PlanCurve? Curve { get; init; }

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

    /// <summary>What through openings leave of the elevation.</summary>
    public Region Net => Openings.Where(opening => opening.GoesThrough).Aggregate(Outline, (rest, opening) => rest.Subtract(opening.Shape));

    /// <summary>The wall with ends, foot or top taken off: what is off is off in all layers.</summary>
    public WallDraft Cut(Region outline)
    {
        const double Same = 1;
        var (before, after) = (Outline.Bounds, outline.Bounds);
        double From(double body, double was, double isNow) => isNow > was + Same ? Math.Max(body, isNow) : body;
        double To(double body, double was, double isNow) => isNow < was - Same ? Math.Min(body, isNow) : body;
        var height = Height.ShiftedBy(-Space.Origin.Z);
        return this with
        {
            Outline = outline,
            Run = new Slab(From(Run.From, before.Left, after.Left), To(Run.To, before.Right, after.Right)),
            Height = new Slab(From(height.From, before.Bottom, after.Bottom), To(height.To, before.Top, after.Top)).ShiftedBy(Space.Origin.Z),
        };
    }
}
