using System.Collections.Immutable;
using IfcCourser.Geometry;

namespace IfcCourser.Walls;

/// <summary>An opening as it meets the masonry layer, in the wall's elevation.</summary>
/// <param name="GlobalId">Of the opening element; of a void that no element makes, the wall's with a suffix.</param>
/// <param name="StepId">Instance number of the opening element; null where no element makes the void.</param>
/// <param name="Name">Of the door or window that fills it, else of the opening.</param>
/// <param name="FillingId">GlobalId of the door or window that fills it.</param>
/// <param name="FillingStepId">Its instance number.</param>
/// <param name="Model">Rectangle around the void as drawn.</param>
/// <param name="Outline">The void's own outline where it is no rectangle, counter-clockwise.</param>
public sealed record WallOpening(
    string GlobalId,
    long? StepId,
    string? Name,
    OpeningKind Kind,
    string? FillingId,
    long? FillingStepId,
    ElevationRect Model,
    ImmutableArray<ElevationPoint>? Outline)
{
    /// <summary>Whether it is a gap that the wall's own body leaves, as at a column: nobody may move it.</summary>
    public bool IsFixed { get; init; }

    /// <summary>What people call it: its name, else its instance number.</summary>
    public string Label => string.IsNullOrWhiteSpace(Name) ? FormattableString.Invariant($"opening #{StepId}") : Name;
}
