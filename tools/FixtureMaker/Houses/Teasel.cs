using System.Collections.Immutable;
using FixtureMaker.Design;

namespace FixtureMaker.Houses;

/// <summary>House type "Teasel": IFC2X3 in metres, names in German, an L-shaped ground floor with five outside corners and
/// one inside corner, all mitred with arbitrary profiles; an attic over the west wing whose gables are upright profiles.
/// Reference lines lie on the outer face and run clockwise, so that the layers lie on the negative side.</summary>
internal static class Teasel
{
    private const double Block = 0.3;
    private const double Thick = 0.315; // block and plaster
    private const double Height = 2.65;

    private static readonly BuildUp _outer = new("Außenwand 315", 0, LayerSense.Negative,
        [new("Porenbeton-Planstein 300", Block), new("Innenputz 15", Thick - Block)]);

    private static readonly BuildUp _attic = new("Giebelwand 300", 0, LayerSense.Negative, [new("Porenbeton-Planstein 300", Block)]);

    private static readonly BuildUp _thin = BuildUp.Centred("Innenwand 115", new Layer("Porenbeton-Planstein 115", 0.115));

    private static readonly BuildUp _bearing = BuildUp.Centred("Innenwand 175", new Layer("Porenbeton-Planstein 175", 0.175));

    private static readonly ImmutableArray<Point> _outline =
        [new(0, 0), new(0, 8.749), new(11.249, 8.749), new(11.249, 3.75), new(6.249, 3.75), new(6.249, 0)];

    public static House Design() => new("teasel", "Haustyp Teasel", "Löwenzahnweg 7", SchemaVersion.Ifc2X3, HouseUnits.Metre)
    {
        Storeys =
        [
            new("Erdgeschoß", 0, 0.25, _outline, [.. OuterWalls(), .. InnerWalls()]),
            new("Dachgeschoß", 2.85, 0.2, _outline, AtticWalls()),
        ],
        PathJoints =
        [
            new("EG West", PathPlace.AtEnd, "EG Nord", PathPlace.AtStart),
            new("EG Nord", PathPlace.AtEnd, "EG Ost", PathPlace.AtStart),
            new("EG Ost", PathPlace.AtEnd, "EG Eingang", PathPlace.AtStart),
            new("EG Eingang", PathPlace.AtEnd, "EG Hof", PathPlace.AtStart),
            new("EG Hof", PathPlace.AtEnd, "EG Süd", PathPlace.AtStart),
            new("EG Süd", PathPlace.AtEnd, "EG West", PathPlace.AtStart),
        ],
    };

    private static ImmutableArray<Wall> OuterWalls() =>
    [
        Mitred("EG West", new(0, 0), Heading.North, 8.749, Corner.Outside, Corner.Outside) with
        {
            HasQuantities = true,
            Openings =
            [
                Opening.Window("Fenster Küche", 1.5, 1.26, 1.019, 1.251),
                Opening.Window("Fenster Bad", 5.25, 0.76, 1.519, 0.751),
            ],
        },
        Mitred("EG Nord", new(0, 8.749), Heading.East, 11.249, Corner.Outside, Corner.Outside) with
        {
            HasQuantities = true,
            Openings =
            [
                Opening.Door("Terrassentür", 5, 2.51, 2.27),
                Opening.Window("Fenster Wohnen", 8.75, 1.76, 0.9, 1.37),
            ],
        },
        Mitred("EG Ost", new(11.249, 8.749), Heading.South, 4.999, Corner.Outside, Corner.Outside) with
        {
            Openings = [Opening.Window("Fenster Ost", 1, 1.26, 1.019, 1.251)],
        },
        Mitred("EG Eingang", new(11.249, 3.75), Heading.West, 5, Corner.Outside, Corner.Inside) with
        {
            // The architect let the door reach under the floor's surface.
            Openings = [new Opening("Haustür", OpeningUse.Door, 1, 1.135, -0.02, 2.28) { Past = 0.02 }],
        },
        Mitred("EG Hof", new(6.249, 3.75), Heading.South, 3.75, Corner.Inside, Corner.Outside) with
        {
            Openings = [Opening.Void("Leitungsdurchbruch", 0.8, 0.1, 0.3, 0.1)],
        },
        Mitred("EG Süd", new(6.249, 0), Heading.West, 6.249, Corner.Outside, Corner.Outside) with
        {
            Openings = [Opening.Window("Fenster Süd", 2.5, 2.01, 1.019, 1.251)],
        },
    ];

    private static ImmutableArray<Wall> InnerWalls() =>
    [
        Inner("EG Flurwand", _thin, new(4, 8.749 - Thick), Heading.South, 8.749 - (2 * Thick)) with
        {
            Openings = [Opening.Door("Tür Flur", 4, 0.885, 2.01)],
        },
        Inner("EG Mittelwand", _bearing, new(4.0575, 5.5), Heading.East, 11.249 - Thick - 4.0575) with
        {
            IsLoadBearing = true,
            Entity = WallEntity.Wall,
            Openings = [Opening.Door("Tür Wohnen", 2.2, 1.01, 2.01)],
        },
    ];

    private static ImmutableArray<Wall> AtticWalls() =>
    [
        Gable("DG Giebel Süd", new(6.249, 0), Heading.West) with
        {
            Openings = [Opening.Window("Giebelfenster Süd", 2.5, 1.26, 0.9, 1.1)],
        },
        Gable("DG Giebel Nord", new(0, 8.749), Heading.East),
        Knee("DG Drempel West", new(0, 0), Heading.North),
        Knee("DG Drempel Ost", new(6.249, 8.749), Heading.South),
    ];

    private static Wall Mitred(string name, Point start, Heading heading, double length, Corner atStart, Corner atEnd)
    {
        var first = atStart == Corner.Outside ? Thick : -Thick;
        var last = atEnd == Corner.Outside ? length - Thick : length + Thick;
        var body = new Body.Plan([new(0, 0), new(first, -Thick), new(last, -Thick), new(length, 0)], Height);
        return new(name, _outer, start, heading, body)
        {
            Entity = WallEntity.WallStandardCase,
            AxisFrom = 0,
            AxisTo = length,
            IsExternal = true,
            IsLoadBearing = true,
        };
    }

    private static Wall Inner(string name, BuildUp buildUp, Point start, Heading heading, double length) =>
        new(name, buildUp, start, heading, new Body.Box(0, length, Height - 0.02))
        {
            Entity = WallEntity.WallStandardCase,
            AxisFrom = 0,
            AxisTo = length,
        };

    // A knee of 0.75 m, a slope of 4 in 5 to the ridge in the middle.
    private static Wall Gable(string name, Point start, Heading heading)
    {
        const double Length = 6.249;
        const double Knee = 0.75;
        const double Slope = 0.8;
        ImmutableArray<Point> outline =
            [new(0, 0), new(Length, 0), new(Length, Knee), new(Length / 2, Knee + (Slope * Length / 2)), new(0, Knee)];
        return new(name, _attic, start, heading, new Body.Upright(outline))
        {
            AxisFrom = 0,
            AxisTo = Length,
            IsExternal = true,
            IsLoadBearing = true,
            HasQuantities = true,
        };
    }

    private static Wall Knee(string name, Point start, Heading heading) =>
        new(name, _attic, start, heading, new Body.Box(Block, 8.749 - Block, 0.75))
        {
            Entity = WallEntity.WallStandardCase,
            AxisFrom = Block,
            AxisTo = 8.749 - Block,
            IsExternal = true,
            IsLoadBearing = true,
        };

    private enum Corner
    {
        Outside,
        Inside,
    }
}
