using System.Collections.Immutable;
using FixtureMaker.Design;
using FixtureMaker.Ifc;
using FixtureMaker.Step;

namespace FixtureMaker.Cases.Bodies;

/// <summary>Bodies made by clipping, boolean operations and mapping.</summary>
internal static class CutBodies
{
    public static ImmutableArray<House> All =>
    [
        BodyCase.Of(
            "half-space", "a sloping top cut by a half space",
            new Body.Clipped(0, BodyCase.Length, 3500, ClipBounds.Endless, [new(new(0, 2000), new(4000, 3000))])),
        BodyCase.Of("half-space-mitre", "a mitred end cut by a half space", "Clipping", file => [Mitred(file)]),
        BodyCase.Of("bounded-half-space", "two bounded half spaces, one within the other", "Clipping", file => [Stepped(file)]),
        BodyCase.Of("csg", "blocks joined and cut, as CSG", "CSG", file => [file.Step.Add("IFCCSGSOLID", Blocks(file))]),
        BodyCase.Of("mapped", "a shape of another size, mapped and stretched", "MappedRepresentation", file => [Mapped(file)]),
    ];

    // From (3760, -120) to (4000, 120) in plan; beyond it nothing is left.
    private static Reference Mitred(ModelFile file)
    {
        var half = Math.Sqrt(0.5);
        var axes = file.Axes(file.Point(4000, 120, 0), file.Direction(half, -half, 0), file.Direction(0, 0, 1));
        var beyond = file.Step.Add("IFCHALFSPACESOLID", file.Step.Add("IFCPLANE", axes), Keyword.False);
        return Cut(file, BodyCase.Box(file, 0, 4000, 0, 2500), beyond);
    }

    // A step at the end: above 1500 beyond x = 3000. A slope at the start: from (0, 2000) up to (500, 2500).
    private static Reference Stepped(ModelFile file)
    {
        var half = Math.Sqrt(0.5);
        var step = Bounded(file, file.Axes(3500, 0, 1500), new(3000, -200), new(4100, 200));
        var slope = Bounded(
            file, file.Axes(file.Point(0, 0, 2000), file.Direction(-half, 0, half), file.Direction(half, 0, half)), new(-100, -200), new(500, 200));
        return Cut(file, Cut(file, BodyCase.Box(file, 0, 4000, 0, 2500), step), slope);
    }

    // Agreement is false: the half space holds the points on the side the plane's normal points to.
    private static Reference Bounded(ModelFile file, Reference planeAxes, Point least, Point largest)
    {
        var plane = file.Step.Add("IFCPLANE", planeAxes);
        List<Point> around = [least, new(largest.X, least.Y), largest, new(least.X, largest.Y)];
        return file.Step.Add(
            "IFCPOLYGONALBOUNDEDHALFSPACE", plane, Keyword.False, file.Axes(0, 0, 0), file.Polyline(around, closed: true));
    }

    private static Reference Cut(ModelFile file, Reference solid, Reference tool) =>
        file.Step.Add("IFCBOOLEANCLIPPINGRESULT", new Keyword("DIFFERENCE"), solid, tool);

    // A wall 2000 high with a merlon 1000 wide on top, less a bite of 500 x 1000 out of its end.
    private static Reference Blocks(ModelFile file)
    {
        var joined = file.Step.Add("IFCBOOLEANRESULT", new Keyword("UNION"), Block(file, 0, 4000, 0, 2000, 0), Block(file, 1000, 2000, 1900, 2500, 0));
        return file.Step.Add("IFCBOOLEANRESULT", new Keyword("DIFFERENCE"), joined, Block(file, 3500, 4100, 1000, 2100, 50));
    }

    // IfcBlock measures from its corner; beyond: how far it reaches past both faces.
    private static Reference Block(ModelFile file, double from, double to, double bottom, double top, double beyond) => file.Step.Add(
        "IFCBLOCK", file.Axes(from, BodyCase.Right - beyond, bottom), to - from, SmallModel.Thickness + (2 * beyond), top - bottom);

    // 1000 x 120 x 1000 from (100, -60, 50), brought to the origin by the map's own place, and stretched 4 by 2 by 2.5.
    private static Reference Mapped(ModelFile file)
    {
        var source = file.BodyRepresentation("SweptSolid", file.Box(file.Axes(0, 0, 50), new(100, -60), 1000, 120, 1000));
        var map = file.Step.Add("IFCREPRESENTATIONMAP", file.Axes(-100, 0, -50), source);
        var stretch = file.Step.Add(
            "IFCCARTESIANTRANSFORMATIONOPERATOR3DNONUNIFORM", file.Direction(1, 0, 0), file.Direction(0, 1, 0), file.Point(0, 0, 0), 4d,
            file.Direction(0, 0, 1), 2d, 2.5);
        return file.Step.Add("IFCMAPPEDITEM", map, stretch);
    }
}
