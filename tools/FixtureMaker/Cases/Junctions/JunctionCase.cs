using System.Collections.Immutable;
using FixtureMaker.Design;

namespace FixtureMaker.Cases.Junctions;

/// <summary>
/// Walls that meet: A runs east on the line y = 0, B mostly north from it; layers lie to the left, so that A stands from
/// y = 0 to 240 and B, which starts at x = 4000, from x = 3760 to 4000.
/// </summary>
internal static class JunctionCase
{
    public const double Height = 2519; // a bed of 20, ten units of 249 and nine joints of 1

    public static readonly BuildUp Block240 = Block(240);

    public static BuildUp Block(double thickness) =>
        new($"Block wall {thickness:0}", 0, LayerSense.Positive, [new($"Aerated concrete block {thickness:0}", thickness)]);

    public static House Of(string key, string title, params ImmutableArray<Wall> walls) => SmallModel.Of(key, title, 0, walls);

    /// <summary>Along y = 0 between two x.</summary>
    public static Wall East(string name, double from, double to, double y = 0, double height = Height, BuildUp? buildUp = null) =>
        SmallModel.Straight(name, buildUp ?? Block240, new(from, y), Heading.East, to - from, height);

    /// <summary>Its right face on a line of x, between two y.</summary>
    public static Wall North(string name, double x, double from, double to, double height = Height, BuildUp? buildUp = null) =>
        SmallModel.Straight(name, buildUp ?? Block240, new(x, from), Heading.North, to - from, height);
}
