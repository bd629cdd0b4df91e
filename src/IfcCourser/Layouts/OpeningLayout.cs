using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Layouts;

/// <summary>An opening with the masonry opening wanted (design) and the one laid out (placed).</summary>
/// <param name="Opening">The opening as drawn.</param>
/// <param name="Design">As drawn plus the rules' allowances.</param>
/// <param name="Placed">Where the masonry leaves room for it.</param>
/// <param name="OnModule">Both jambs stand on module lines within the tolerance.</param>
public sealed record OpeningLayout(WallOpening Opening, ElevationRect Design, ElevationRect Placed, bool OnModule)
{
    /// <summary>How it stands to the module; null where nobody looked.</summary>
    public OpeningCheck? Check { get; init; }

    /// <summary>Whether courses stop at it; recesses and drilled holes do not interrupt the coursing.</summary>
    public bool Interrupts => Opening.Kind is OpeningKind.Door or OpeningKind.Window or OpeningKind.Void;

    /// <summary>The void's own outline where it is no rectangle, as it stands in the placed opening: moved with the sill, in the middle of the width.</summary>
    public ImmutableArray<ElevationPoint>? Outline => Opening.Outline is { } outline
        ? [.. outline.Select(point => new ElevationPoint(point.S + Along, point.Z + (Placed.Bottom - Design.Bottom)))]
        : null;

    private Length Along => (Placed.Left - Design.Left + (Placed.Right - Design.Right)) / 2;
}
