using System.Collections.Immutable;
using FixtureMaker.Design;
using FixtureMaker.Ifc;
using FixtureMaker.Step;

namespace FixtureMaker.Cases.Bodies;

/// <summary>Bodies that are one extrusion: by kind of profile and by the way it is swept.</summary>
internal static class SweptBodies
{
    // The arched top: through (4000, 2000), (2000, 2500) and (0, 2000); 2000 : 3750 : 4250 = 8 : 15 : 17.
    public const double ArchRadius = 4250;
    public static readonly Point ArchCentre = new(2000, -1750);

    private static readonly ImmutableArray<Point> _gable = [new(0, 0), new(4000, 0), new(4000, 2000), new(2000, 2500), new(0, 2000)];

    public static ImmutableArray<House> All =>
    [
        BodyCase.Of("rectangle-profile", "a rectangle extruded upwards", new Body.Box(0, BodyCase.Length, 2500)),
        BodyCase.Of(
            "closed-profile", "a plan outline with slanted ends, extruded upwards",
            new Body.Plan([new(240, -120), new(3760, -120), new(4000, 120), new(0, 120)], 2500)),
        BodyCase.Of("profile-with-voids", "an elevation with a hole, extruded across", "SweptSolid", file => [WithVoids(file)]),
        BodyCase.Of("composite-curve-arc", "an arched top as a composite curve", "SweptSolid", file => [Arched(file, Composite(file))]),
        BodyCase.Of("indexed-curve-arc", "an arched top as an indexed poly-curve", "SweptSolid", file => [Arched(file, Indexed(file))]),
        BodyCase.Of("across-the-thickness", "a gable extruded across the thickness", new Body.Upright(_gable)),
        BodyCase.Of(
            "along-the-wall", "a section extruded along the wall", "SweptSolid",
            file => [Along(file, [new(-120, 0), new(120, 0), new(120, 2500), new(-120, 2500)])]),
        BodyCase.Of(
            "bevelled-top", "a section with a bevelled top, extruded along the wall", "SweptSolid",
            file => [Along(file, [new(-120, 0), new(120, 0), new(120, 2500), new(-120, 2400)])]),
        BodyCase.Of("ifc4x3", "a rectangle extruded upwards, in IFC4X3", new Body.Box(0, BodyCase.Length, 2500)) with
        {
            Schema = SchemaVersion.Ifc4X3,
        },
    ];

    private static Reference WithVoids(ModelFile file)
    {
        var outer = file.Polyline([new(0, 0), new(4000, 0), new(4000, 2500), new(0, 2500)], closed: true);
        var hole = file.Polyline([new(1000, 900), new(2000, 900), new(2000, 2100), new(1000, 2100)], closed: true);
        return BodyCase.Across(
            file, file.Step.Add("IFCARBITRARYPROFILEDEFWITHVOIDS", new Keyword("AREA"), null, outer, new[] { hole }));
    }

    private static Reference Arched(ModelFile file, Reference curve) => BodyCase.Across(file, BodyCase.Figure(file, curve));

    private static Reference Composite(ModelFile file)
    {
        var circle = file.Step.Add("IFCCIRCLE", file.Axes2D(ArchCentre.X, ArchCentre.Y), ArchRadius);
        var arch = file.Step.Add(
            "IFCTRIMMEDCURVE", circle, new[] { file.Point(4000, 2000) }, new[] { file.Point(0, 2000) }, Keyword.True, new Keyword("CARTESIAN"));
        var sides = file.Polyline([new(0, 2000), new(0, 0), new(4000, 0), new(4000, 2000)], closed: false);
        return file.Step.Add("IFCCOMPOSITECURVE", new[] { Segment(file, sides), Segment(file, arch) }, Keyword.False);
    }

    private static Reference Segment(ModelFile file, Reference curve) =>
        file.Step.Add("IFCCOMPOSITECURVESEGMENT", new Keyword("CONTINUOUS"), Keyword.True, curve);

    private static Reference Indexed(ModelFile file) =>
        BodyCase.ArchedCurve(file, [[0, 0], [4000, 0], [4000, 2000], [2000, 2500], [0, 2000]]);

    // A section with its x to the wall's left and its y up, swept towards the wall's end.
    private static Reference Along(ModelFile file, ImmutableArray<Point> section)
    {
        var axes = file.Axes(file.Point(0, 0, 0), file.Direction(1, 0, 0), file.Direction(0, 1, 0));
        return file.Extrude(BodyCase.Figure(file, file.Polyline(section, closed: true)), axes, BodyCase.Length);
    }
}
