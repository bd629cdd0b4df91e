using System.Collections.Immutable;
using FixtureMaker.Cases.Bodies;
using FixtureMaker.Design;
using FixtureMaker.Ifc;
using FixtureMaker.Step;

namespace FixtureMaker.Cases.Oddities;

/// <summary>Openings that are no plain hole in a plain wall; each wall is the plain one.</summary>
internal static class OpeningOddities
{
    public static ImmutableArray<House> All =>
    [
        Of("opening-misses", "an opening beyond the wall's end", Opening.Void("Elsewhere", 5000, 1000, 900, 1200)),
        Of("opening-arched", "a window with a round head", Opening.Window("Arched window", 1000, 1000, 900, 1500) with { Profile = Arched }),
        Of("opening-round", "a round window", Opening.Window("Round window", 1500, 1000, 800, 1000) with { Profile = Round }),
        Of("opening-takes-wall", "an opening that leaves nothing of the wall", Opening.Void("All", -10, 4020, -10, 2540) with { Past = 10 }),
        Of(
            "opening-past-edges", "openings that reach past the floor, the end and the top",
            Opening.Door("Door", 500, 1000, 2210) with { Sill = -200 },
            Opening.Window("Corner window", 3500, 800, 900, 1200),
            Opening.Void("Notch", 2000, 500, 2000, 800)),
        SmallModel.Of("recess", "a recess of half the thickness", 0, OddityCases.Plain("Wall") with { Beside = Recessed }),
        SmallModel.Of("door-without-opening", "a door that stands in a wall and fills no opening", 0, OddityCases.Plain("Wall") with { Beside = Hung }),
        SmallModel.Of(
            "opening-twice", "two parts, each voided by its own copy of the window", 0,
            OddityCases.Plain("Wall") with { Body = new Body.None(), Beside = Leaves }),
    ];

    private static House Of(string key, string title, params ImmutableArray<Opening> openings) =>
        SmallModel.Of(key, title, 0, OddityCases.Plain("Wall") with { Openings = openings });

    // 1000 wide, straight up to 1000, then half a circle of radius 500.
    private static Reference Arched(ModelFile file) =>
        BodyCase.Figure(file, BodyCase.ArchedCurve(file, [[0, 0], [1000, 0], [1000, 1000], [500, 1500], [0, 1000]]));

    private static Reference Round(ModelFile file) =>
        file.Step.Add("IFCCIRCLEPROFILEDEF", new Keyword("AREA"), null, file.Axes2D(500, 500), 500d);

    // From the right face 120 deep, and 10 out of it: 1000 to 2000 along, 300 to 1300 up.
    private static void Recessed(ModelFile file, WrittenWall wall) =>
        Void(file, wall.Wall, wall.Placement, "Recess", file.Box(file.Axes(0, 0, 300), new(1000, -130), 1000, 130, 1000), "RECESS");

    private static void Hung(ModelFile file, WrittenWall wall)
    {
        var leaf = file.Box(null, new(1000, -20), 1000, 40, 2010);
        var shape = file.Shape(file.BodyRepresentation("SweptSolid", leaf));
        file.AddRoot(
            "IFCDOOR", "door", "Door", null, null, file.Placement(wall.Placement, file.Axes(0, 0, 0)), shape, null, 2010d, 1000d,
            new Keyword("DOOR"), new Keyword("NOTDEFINED"), null);
    }

    // Leaves of 120 mm from face to middle; the window is exported with each, through both.
    private static void Leaves(ModelFile file, WrittenWall wall)
    {
        List<Reference> parts = [];
        foreach (var (name, right) in new[] { ("Right leaf", -120d), ("Left leaf", 0d) })
        {
            var shape = file.Shape(file.BodyRepresentation("SweptSolid", file.Box(null, new(0, right), 4000, 120, 2519)));
            var part = file.AddRoot(
                "IFCBUILDINGELEMENTPART", name, name, null, null, file.Placement(wall.Placement, file.Axes(0, 0, 0)), shape, null, new Keyword("NOTDEFINED"));
            parts.Add(part);
            Void(file, part, wall.Placement, $"Window in {name}", file.Box(file.Axes(0, 0, 900), new(1000, -130), 1000, 260, 1200), "OPENING");
        }

        file.AddRoot("IFCRELAGGREGATES", "parts of wall", null, null, wall.Wall, parts);
    }

    private static void Void(ModelFile file, Reference host, Reference hostPlacement, string name, Reference solid, string kind)
    {
        var shape = file.Shape(file.BodyRepresentation("SweptSolid", solid));
        var opening = file.AddRoot(
            "IFCOPENINGELEMENT", name, name, null, null, file.Placement(hostPlacement, file.Axes(0, 0, 0)), shape, null, new Keyword(kind));
        file.AddRoot("IFCRELVOIDSELEMENT", $"void {name}", null, null, host, opening);
    }
}
