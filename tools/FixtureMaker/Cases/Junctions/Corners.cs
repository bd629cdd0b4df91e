using System.Collections.Immutable;
using FixtureMaker.Design;
using static FixtureMaker.Cases.Junctions.JunctionCase;

namespace FixtureMaker.Cases.Junctions;

/// <summary>Corners, as programs end their bodies there, and corners that are not plain.</summary>
internal static class Corners
{
    private const double Low = 1269; // a bed of 20, five units of 249 and four joints of 1

    public static ImmutableArray<House> All =>
    [
        Of("corner-butted", "A runs through, B butts", East("A", 0, 4000), North("B", 4000, 240, 3000)),
        Of("corner-mitred", "both bodies are mitred", Mitred("A", [new(0, 0), new(4000, 0), new(3760, 240), new(0, 240)], new(0, 0), Heading.East),
            Mitred("B", [new(0, 0), new(3000, 0), new(3000, 240), new(240, 240)], new(4000, 0), Heading.North)),
        Of("corner-overlapping", "both bodies hold the corner", East("A", 0, 4000), North("B", 4000, 0, 3000)),
        Of("corner-open", "both bodies stop short of the corner", East("A", 0, 3760), North("B", 4000, 240, 3000)),
        Of("corner-unlike-thickness", "365 meets 175", East("A", 0, 4000, buildUp: Block(365)), North("B", 4000, 365, 3000, buildUp: Block(175))),
        Of("corner-low-butts", "a low wall butts against a high one", East("A", 0, 4000), North("B", 4000, 240, 3000, Low)),
        Of("corner-low-through", "a low wall runs through, a high one butts", East("A", 0, 3760), North("B", 4000, 0, 3000, Low)),
        Of("corner-acute", "B turns back over A", East("A", 0, 4000), Aslant("B", new(-0.6, 0.8))),
        Of("corner-obtuse", "B turns away from A", East("A", 0, 4000), Aslant("B", new(0.6, 0.8))),
        Of("corner-return", "a return of 500 mm", East("A", 0, 4000), North("B", 4000, 240, 500)),
        Layered.House,
    ];

    private static Wall Mitred(string name, ImmutableArray<Point> outline, Point start, Heading heading)
    {
        var length = outline.Max(p => p.X);
        return new(name, Block240, start, heading, new Body.Plan(outline, Height)) { AxisFrom = 0, AxisTo = length };
    }

    // Starts on A's right face at its end and runs 3000 mm.
    private static Wall Aslant(string name, Heading heading) => SmallModel.Straight(name, Block240, new(4000, 0), heading, 3000, Height);
}
