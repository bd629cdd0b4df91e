using System.Collections.Immutable;
using FixtureMaker.Design;
using static FixtureMaker.Cases.Junctions.JunctionCase;

namespace FixtureMaker.Cases.Junctions;

/// <summary>Tees, crosses, continuations, gaps and overlaps.</summary>
internal static class Meetings
{
    private const double Low = 1769; // a bed of 20, seven units of 249 and six joints of 1

    private static Wall Stepped => East("A", 0, 13000) with
    {
        Body = new Body.Upright([new(0, 0), new(13000, 0), new(13000, Low), new(9000, Low), new(9000, Height), new(0, Height)]),
        Openings = [Opening.Window("Window", 4000, 2001, 770, 1249)],
    };

    public static ImmutableArray<House> All =>
    [
        Of("tee-on-face", "B stops on the near face of A", East("A", 0, 6000), North("B", 3240, 240, 3000)),
        Of("tee-to-axis", "B runs into A up to its axis", East("A", 0, 6000), North("B", 3240, 120, 3000)),
        Of("cross", "A and B pass through each other", East("A", 0, 6000), North("B", 3240, -2000, 3000)),
        Of("continued", "B goes on where A ends", East("A", 0, 3000), East("B", 3000, 6000)),
        Of("continued-thicker", "a long wall steps down, and B goes on thicker where it ends", Stepped, East("B", 13000, 17000, height: Low, buildUp: Block(365))),
        Of("gap-3", "a tee 3 mm short", East("A", 0, 6000), North("B", 3240, 243, 3000)),
        Of("gap-12", "a tee 12 mm short", East("A", 0, 6000), North("B", 3240, 252, 3000)),
        Of("gap-150", "a tee 150 mm short", East("A", 0, 6000), North("B", 3240, 390, 3000)),
        Of("coincident", "B stands in the place of A", East("A", 0, 4000), East("B", 0, 4000)),
        Of("overlapping-runs", "B begins 500 mm before A ends", East("A", 0, 3000), East("B", 2500, 6000)),
        Of(
            "tee-in-opening", "B meets A in front of a door",
            East("A", 0, 6000) with { Openings = [Opening.Door("Door", 2600, 1000, 2010)] }, North("B", 3240, 240, 3000)),
    ];
}
