using System.Collections.Immutable;
using FixtureMaker.Design;

namespace FixtureMaker.Houses;

/// <summary>House type "Sorrel": IFC4 in millimetres, two storeys under a gable roof. Layered outer walls whose masonry
/// measures 9999 x 7999 mm (on the 125 mm module); at each corner one wall runs through and the other butts against it.</summary>
internal static class Sorrel
{
    private const double Outside = -95; // face of the render, from the masonry's outer face
    private const double Inside = 250; // face of the plaster
    private const double Long = 9999;
    private const double Short = 7999;

    private static readonly BuildUp _outer = new("External wall 345", Outside, LayerSense.Positive,
    [
        new("Render 15", 15),
        new("Mineral insulation 80", 80),
        new("Aerated concrete block 240", 240),
        new("Gypsum plaster 10", 10),
    ]);

    private static readonly BuildUp _partition = BuildUp.Centred(
        "Partition 135", new("Gypsum plaster 10", 10), new("Aerated concrete block 115", 115), new("Gypsum plaster 10", 10));

    private static readonly BuildUp _spine = BuildUp.Centred("Spine wall 175", new Layer("Aerated concrete block 175", 175));

    private static readonly BuildUp _stud = BuildUp.Centred(
        "Stud partition 100", new("Gypsum board 12.5", 12.5), new("Metal stud 75", 75), new("Gypsum board 12.5", 12.5));

    private static readonly ImmutableArray<Point> _slab = [new(0, 0), new(Long, 0), new(Long, Short), new(0, Short)];

    public static House Design() => new("sorrel", "House type Sorrel", "4 Larkmoor Lane", SchemaVersion.Ifc4, HouseUnits.Millimetre)
    {
        Storeys =
        [
            new("Ground floor", 0, 200, _slab, [.. GroundOuterWalls(), .. GroundInnerWalls()]),
            new("Upper floor", 3000, 230, _slab, UpperWalls()),
        ],
        PathJoints =
        [
            new("Ground south", PathPlace.AtEnd, "Ground east", PathPlace.AtStart),
            new("Ground north", PathPlace.AtStart, "Ground east", PathPlace.AtEnd),
            new("Ground north", PathPlace.AtEnd, "Ground west", PathPlace.AtStart),
            new("Ground south", PathPlace.AtStart, "Ground west", PathPlace.AtEnd),
            new("Ground south", PathPlace.AtPath, "Ground hall", PathPlace.AtStart),
            new("Ground north", PathPlace.AtPath, "Ground hall", PathPlace.AtEnd),
        ],
    };

    private static ImmutableArray<Wall> GroundOuterWalls() =>
    [
        Through("Ground south", new(0, 0), Heading.East, 2770) with
        {
            Openings =
            [
                Opening.Door("Front door", 1124, 1126, 2270) with { Past = 10 },
                Opening.Window("Kitchen window", 3960, 1500, 1019, 1251) with { Past = 10 },
                Opening.Window("Living south window", 6874, 1251, 1019, 1251) with { Past = 10 },
            ],
        },
        Butting("Ground east", new(Long, 0), Heading.North, 2770) with
        {
            Openings =
            [
                Opening.Window("Living east window", 3374, 1251, 1019, 1251),
                Opening.Void("Vent", 6500, 150, 2350, 150),
            ],
        },
        Through("Ground north", new(Long, Short), Heading.West, 2770) with
        {
            Openings =
            [
                Opening.Door("Garden door", 999, 2001, 2270) with { Past = 10 },
                Opening.Sleeve("Water sleeve", 5000, 110, 400),
                Opening.Window("Bath window", 7124, 751, 1519, 751) with { Past = 10 },
            ],
        },
        Butting("Ground west", new(0, Short), Heading.South, 2770) with
        {
            Openings = [Opening.Window("Study window", 2440, 1000, 1019, 1251)],
        },
    ];

    private static ImmutableArray<Wall> GroundInnerWalls() =>
    [
        Inner("Ground hall", _partition, new(5750, Inside), Heading.North, Short - (2 * Inside), 2750) with
        {
            Openings = [Opening.Door("Living door", 2000, 885, 2020)],
        },
        Inner("Ground pantry", _partition, new(5817.5, 5500), Heading.East, Long - Inside - 5817.5, 2750),
        Inner("Ground closet", _stud, new(Inside, 4000), Heading.East, 5682.5 - Inside, 2750) with
        {
            Openings = [Opening.Door("Closet door", 1000, 760, 2010)],
        },
    ];

    private static ImmutableArray<Wall> UpperWalls() =>
    [
        Butting("Upper south", new(0, 0), Heading.East, 2520, Long) with
        {
            Openings =
            [
                Opening.Window("Bedroom west window", 1124, 1126, 1019, 1251),
                Opening.Window("Bedroom east window", 6874, 1251, 1019, 1251),
            ],
        },
        Gable("Upper east gable", new(Long, 0), Heading.North),
        Butting("Upper north", new(Long, Short), Heading.West, 2520, Long) with
        {
            Openings =
            [
                Opening.Window("Landing window", 2499, 1251, 1019, 1251),
                Opening.Window("Upper bath window", 7124, 751, 1519, 751),
            ],
        },
        Gable("Upper west gable", new(0, Short), Heading.South),
        Inner("Upper spine", _spine, new(Inside, 5100), Heading.East, Long - (2 * Inside), 2520) with
        {
            IsLoadBearing = true,
            Openings = [Opening.Door("Bedroom west door", 1500, 885, 2020), Opening.Door("Bedroom east door", 6625, 885, 2020)],
        },
    ];

    private static Wall Through(string name, Point start, Heading heading, double height) =>
        OuterWall(name, start, heading, new Body.Box(Outside, Long - Outside, height), Outside, Long - Outside);

    private static Wall Butting(string name, Point start, Heading heading, double height, double length = Short) =>
        OuterWall(name, start, heading, new Body.Box(Inside, length - Inside, height), Inside, length - Inside);

    // Eaves at 2520 mm over the masonry's outer face, a slope of 7 in 10 to the ridge in the middle.
    private static Wall Gable(string name, Point start, Heading heading)
    {
        const double Eaves = 2520;
        const double Slope = 0.7;
        const double Middle = Short / 2;
        var ridge = new Point(Middle, Eaves + (Slope * Middle));
        var (left, right) = (new Point(Outside, Eaves + (Slope * Outside)), new Point(Short - Outside, Eaves + (Slope * Outside)));
        var body = new Body.Clipped(
            Outside, Short - Outside, 5500, ClipBounds.Endless, [new(left, ridge), new(ridge, right)]);
        return OuterWall(name, start, heading, body, Outside, Short - Outside) with
        {
            Openings =
            [
                Opening.Window("Gable window", 3374, 1251, 1019, 1251),
                Opening.Window("Loft window", 3749, 501, 3519, 501),
            ],
        };
    }

    private static Wall OuterWall(string name, Point start, Heading heading, Body body, double from, double to) =>
        new(name, _outer, start, heading, body)
        {
            AxisFrom = from,
            AxisTo = to,
            IsExternal = true,
            IsLoadBearing = true,
            HasQuantities = true,
        };

    private static Wall Inner(string name, BuildUp buildUp, Point start, Heading heading, double length, double height) =>
        new(name, buildUp, start, heading, new Body.Box(0, length, height))
        {
            Entity = WallEntity.WallStandardCase,
            AxisFrom = 0,
            AxisTo = length,
        };
}
