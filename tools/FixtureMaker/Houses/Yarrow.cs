using System.Collections.Immutable;
using FixtureMaker.Design;

namespace FixtureMaker.Houses;

/// <summary>House type "Yarrow": IFC4 in feet, one storey of 40 x 28 ft with a garage of 22 x 22 ft at its east side, and a
/// low attic wall under a gable. Walls of one layer centred on their axis; axes end where they meet, and every body runs on
/// to the outer face, so that bodies overlap at the corners and where the garage meets the house.</summary>
internal static class Yarrow
{
    private const double Inch = 1d / 12;
    private const double Thick = 8 * Inch;
    private const double Half = Thick / 2;
    private const double Joint = 0.125; // inches
    private const double Height = 96.375 * Inch; // twelve courses on a 1/2 in bed

    private static readonly BuildUp _outer = BuildUp.Centred("Exterior AAC 8 in", new Layer("AAC block 8 in", Thick));

    private static readonly BuildUp _bearing = BuildUp.Centred("Interior AAC 6 in", new Layer("AAC block 6 in", 6 * Inch));

    private static readonly BuildUp _thin = BuildUp.Centred("Interior AAC 4 in", new Layer("AAC block 4 in", 4 * Inch));

    private static readonly BuildUp _stud = BuildUp.Centred(
        "Interior stud 4 7/8 in",
        new("Gypsum wallboard 5/8 in", 0.625 * Inch),
        new("Wood stud 3 5/8 in", 3.625 * Inch),
        new("Gypsum wallboard 5/8 in", 0.625 * Inch));

    private static readonly ImmutableArray<Point> _slab =
        [new(0, 0), new(40, 0), new(40, 4), new(62, 4), new(62, 26), new(40, 26), new(40, 28), new(0, 28)];

    private static readonly ImmutableArray<Point> _atticFloor = [new(0, 0), new(40, 0), new(40, 28), new(0, 28)];

    public static House Design() => Of([.. HouseWalls(), .. GarageWalls(), .. InnerWalls()]);

    /// <summary>The designer's second issue, for the tutorial: the kitchen window moved onto the module, the access door of the garage widened to it.</summary>
    public static House Revised() => Of([.. Design().Storeys[0].Walls.Select(wall => wall.Name switch
    {
        "House west" => wall with { Openings = [wall.Openings[0], Window("Kitchen window", 216, 48, 32.375, 48.125)] },
        "House east" => wall with { Openings = [Door("Garage access door", 168, 40, 80.5)] },
        _ => wall,
    })]);

    private static House Of(ImmutableArray<Wall> walls) => new("yarrow", "House type Yarrow", "12 Larkmoor Lane", SchemaVersion.Ifc4, HouseUnits.Foot)
    {
        HasOwnerHistory = true,
        Storeys = [new("Level 1", 0, 0.5, _slab, walls), new("Attic", 9, 0.75, _atticFloor, [Gable()])],
    };

    private static ImmutableArray<Wall> HouseWalls() =>
    [
        Run("House south", new(Half, Half), Heading.East, 40) with
        {
            Openings =
            [
                Door("Front door", 80, 40, 80.5),
                Window("Great room window", 168, 72, 32.375, 48.125),
                Window("Bedroom 1 window", 314, 48, 32.375, 48.125),
            ],
        },
        Run("House east", new(40 - Half, Half), Heading.North, 28) with { Openings = [Door("Garage access door", 168, 36, 80.5)] },
        Run("House north", new(40 - Half, 28 - Half), Heading.West, 40) with
        {
            Openings =
            [
                Opening.Sleeve("Dryer sleeve", (60 * Inch) - Half, 4 * Inch, 16 * Inch),
                Door("Patio door", 128, 72, 80.5),
                Window("Bedroom 2 window", 296, 36, 40.375, 40.125),
            ],
        },
        Run("House west", new(Half, 28 - Half), Heading.South, 28) with
        {
            Openings = [Window("Bath window", 80, 48, 32.375, 48.125), Window("Kitchen window", 219, 48, 32.375, 48.125)],
        },
    ];

    // The garage's run starts on the axis of the house's east wall.
    private static ImmutableArray<Wall> GarageWalls() =>
    [
        GarageRun("Garage south", new(40 - Half, 4 + Half), Heading.East, -Half, 22) with
        {
            Openings = [Opening.Door("Garage door", (40 * Inch) + Half, 16, 88.5 * Inch)],
        },
        Run("Garage east", new(62 - Half, 4 + Half), Heading.North, 22) with
        {
            Openings = [Window("Garage window", 104, 36, 40.375, 40.125)],
        },
        GarageRun("Garage north", new(62 - Half, 26 - Half), Heading.West, -Half, 22) with
        {
            Openings = [Opening.Void("Garage vent", (132 * Inch) - Half, 6 * Inch, 12 * Inch, 6 * Inch)],
        },
    ];

    private static ImmutableArray<Wall> InnerWalls() =>
    [
        Inner("Bearing partition", _bearing, new(22, Thick), Heading.North, 28 - (2 * Thick)) with
        {
            IsLoadBearing = true,
            Openings = [Opening.Door("Hall door", 9, 3, 80.5 * Inch)],
        },
        Inner("Bath partition", _thin, new(22 - (3 * Inch), 16), Heading.West, 22 - (3 * Inch) - Thick) with
        {
            Openings = [Opening.Door("Bath door", 10, 32 * Inch, 80.5 * Inch)],
        },
        Inner("Closet partition", _stud, new(22 + (3 * Inch), 18), Heading.East, 40 - Thick - 22 - (3 * Inch)),
    ];

    /// <summary>A wall whose outer faces are <paramref name="outer"/> feet apart and whose axis starts half a thickness in.</summary>
    private static Wall Run(string name, Point start, Heading heading, double outer) =>
        OuterWall(name, start, heading, new Body.Box(-Half, outer - Half, Height), outer - Thick);

    // From the host's axis to the outer face of the far corner, or the other way round.
    private static Wall GarageRun(string name, Point start, Heading heading, double from, double clear) =>
        heading == Heading.East
            ? OuterWall(name, start, heading, new Body.Box(0, clear + Half, Height), clear)
            : OuterWall(name, start, heading, new Body.Box(from, clear, Height), clear);

    private static Wall OuterWall(string name, Point start, Heading heading, Body body, double axis) =>
        new(name, _outer, start, heading, body)
        {
            AxisFrom = 0,
            AxisTo = axis,
            IsExternal = true,
            IsLoadBearing = true,
            HasQuantities = true,
        };

    private static Wall Inner(string name, BuildUp buildUp, Point start, Heading heading, double length) =>
        new(name, buildUp, start, heading, new Body.Box(0, length, Height - (0.75 * Inch)))
        {
            Entity = WallEntity.WallStandardCase,
            AxisFrom = 0,
            AxisTo = length,
        };

    // One course at the eaves, a slope of 6 in 12 to the ridge in the middle.
    private static Wall Gable()
    {
        const double Eaves = 8.375 * Inch;
        var ridge = new Point(14 - Half, Eaves + 7);
        var body = new Body.Clipped(
            -Half, 28 - Half, 9, ClipBounds.Polygon,
            [new(new(-Half, Eaves), ridge), new(ridge, new(28 - Half, Eaves))]);
        return OuterWall("Attic west gable", new(Half, 28 - Half), Heading.South, body, 28 - Thick) with
        {
            Openings = [Window("Attic window", 152, 32, 24.375, 32.125)],
        };
    }

    /// <summary>A door in inches, measured from the outer face of the wall's starting corner: masonry stops a joint before
    /// the module line on its left and starts on the line on its right.</summary>
    private static Opening Door(string name, double left, double width, double height) =>
        Opening.Door(name, ((left - Joint) * Inch) - Half, (width + Joint) * Inch, height * Inch);

    /// <summary>A window in inches, like a door.</summary>
    private static Opening Window(string name, double left, double width, double sill, double height) =>
        Opening.Window(name, ((left - Joint) * Inch) - Half, (width + Joint) * Inch, sill * Inch, height * Inch);
}
