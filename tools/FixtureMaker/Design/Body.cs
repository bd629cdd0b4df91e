using System.Collections.Immutable;

namespace FixtureMaker.Design;

/// <summary>How a wall's body is modelled, in the wall's own axes: x along it, y to its left, z up from its base.</summary>
internal abstract record Body
{
    /// <summary>A rectangle in plan over the whole thickness, extruded upwards.</summary>
    internal sealed record Box(double From, double To, double Height) : Body;

    /// <summary>Any closed plan outline, extruded upwards: what a mitred wall has.</summary>
    internal sealed record Plan(ImmutableArray<Point> Outline, double Height) : Body;

    /// <summary>An elevation outline, extruded across the thickness.</summary>
    internal sealed record Upright(ImmutableArray<Point> Outline) : Body;

    /// <summary>A box with everything above each of the roof lines cut away.</summary>
    internal sealed record Clipped(double From, double To, double Height, ClipBounds Bounds, ImmutableArray<RoofLine> Roof)
        : Body;
}
