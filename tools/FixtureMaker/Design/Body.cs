using System.Collections.Immutable;
using FixtureMaker.Ifc;
using FixtureMaker.Step;

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

    /// <summary>Representation items of a kind that no house needs, for a case of its own.</summary>
    internal sealed record Items(string Kind, Func<ModelFile, ImmutableArray<Reference>> Write) : Body;

    /// <summary>No body: the wall's parts have theirs.</summary>
    internal sealed record None : Body;
}
