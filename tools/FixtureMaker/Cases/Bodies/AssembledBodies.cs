using System.Collections.Immutable;
using FixtureMaker.Design;
using FixtureMaker.Ifc;
using FixtureMaker.Step;

namespace FixtureMaker.Cases.Bodies;

/// <summary>Bodies of several items, and walls whose parts have the bodies.</summary>
internal static class AssembledBodies
{
    private const double Plate = 20;

    private static readonly BuildUp _framed = BuildUp.Centred("Framed wall 240", new Layer("Timber frame 240", SmallModel.Thickness));

    public static ImmutableArray<House> All =>
    [
        BodyCase.Of(
            "several-items", "a stepped wall as two items", "SweptSolid",
            file => [BodyCase.Box(file, 0, 2500, 0, 2500), BodyCase.Box(file, 2500, 4000, 0, 2000)]),
        BodyCase.Of("parts", "a wall of two building element parts", new Body.None(), wall => wall with { Beside = Parts }),
        BodyCase.Of(
            "elemented-case", "a wall of plates and studs", new Body.None(),
            wall => wall with { Entity = WallEntity.WallElementedCase, BuildUp = _framed, Beside = Frame }),
    ];

    // The second half has a window of its own.
    private static void Parts(ModelFile file, WrittenWall wall)
    {
        var first = Part(file, wall.Placement, "IFCBUILDINGELEMENTPART", "Part 1", BodyCase.Box(file, 0, 2000, 0, 2500));
        var second = Part(file, wall.Placement, "IFCBUILDINGELEMENTPART", "Part 2", BodyCase.Box(file, 2000, 4000, 0, 2500));
        file.AddRoot("IFCRELAGGREGATES", "parts of wall", null, null, wall.Wall, new[] { first, second });
        var host = SmallModel.Straight("Part 2", SmallModel.Centred, new(0, 0), Heading.East, 0, 0);
        OpeningPart.Write(file, second, wall.Placement, host, Opening.Window("Window", 2500, 1000, 900, 1200));
    }

    // Plates 20 mm thick on both faces, five studs 100 mm wide between them.
    private static void Frame(ModelFile file, WrittenWall wall)
    {
        List<Reference> parts =
        [
            Part(file, wall.Placement, "IFCPLATE", "Right plate", BodyCase.Box(file, 0, 4000, 0, 2500, BodyCase.Right, BodyCase.Right + Plate)),
            Part(file, wall.Placement, "IFCPLATE", "Left plate", BodyCase.Box(file, 0, 4000, 0, 2500, BodyCase.Left - Plate, BodyCase.Left)),
        ];
        for (var i = 0; i < 5; i++)
        {
            var from = 975d * i;
            parts.Add(Part(
                file, wall.Placement, "IFCMEMBER", $"Stud {i + 1}",
                BodyCase.Box(file, from, from + 100, 0, 2500, BodyCase.Right + Plate, BodyCase.Left - Plate)));
        }

        file.AddRoot("IFCRELAGGREGATES", "parts of wall", null, null, wall.Wall, parts);
    }

    private static Reference Part(ModelFile file, Reference placement, string entity, string name, Reference body)
    {
        var shape = file.Shape(file.BodyRepresentation("SweptSolid", body));
        return file.AddRoot(
            entity, $"part {name}", name, null, null, file.Placement(placement, file.Axes(0, 0, 0)), shape, null, new Keyword("NOTDEFINED"));
    }
}
