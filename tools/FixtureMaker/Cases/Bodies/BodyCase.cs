using System.Collections.Immutable;
using FixtureMaker.Design;
using FixtureMaker.Ifc;
using FixtureMaker.Step;

namespace FixtureMaker.Cases.Bodies;

/// <summary>
/// A wall 4000 mm long on a storey 300 mm up, aslant in plan so that a mistaken axis shows: it starts at (1000, 2000) and
/// runs 4 east for 3 north. Its own axes: x along it, y = -120 to 120 to its left, z up.
/// </summary>
internal static class BodyCase
{
    public const double Length = 4000;

    public const double Right = -120;

    public const double Left = 120;

    public static House Of(string key, string title, string kind, Func<ModelFile, ImmutableArray<Reference>> write) =>
        Of(key, title, new Body.Items(kind, write));

    public static House Of(string key, string title, Body body, Func<Wall, Wall>? change = null)
    {
        var wall = new Wall("Wall", SmallModel.Centred, new(1000, 2000), new(0.8, 0.6), body) { AxisFrom = 0, AxisTo = Length };
        return SmallModel.Of(key, title, 300, change is null ? wall : change(wall));
    }

    public static Reference Box(ModelFile file, double from, double to, double bottom, double top, double right = Right, double left = Left) =>
        file.Box(file.Axes(0, 0, bottom), new(from, right), to - from, left - right, top - bottom);

    /// <summary>A figure of the wall's elevation, extruded over its whole thickness.</summary>
    public static Reference Across(ModelFile file, Reference profile) =>
        file.Extrude(profile, BodyPart.UprightAxes(file, 0, Left, 0), Left - Right);

    /// <summary>An indexed poly-curve of five points: straight to the third, an arc through the fourth to the fifth, straight back.</summary>
    public static Reference ArchedCurve(ModelFile file, double[][] points)
    {
        var list = file.Step.Add("IFCCARTESIANPOINTLIST2D", [points]);
        Typed[] segments = [Segment("IFCLINEINDEX", 1, 2, 3), Segment("IFCARCINDEX", 3, 4, 5), Segment("IFCLINEINDEX", 5, 1)];
        return file.Step.Add("IFCINDEXEDPOLYCURVE", list, segments, Keyword.False);
    }

    public static Reference Figure(ModelFile file, Reference curve) =>
        file.Step.Add("IFCARBITRARYCLOSEDPROFILEDEF", new Keyword("AREA"), null, curve);

    private static Typed Segment(string type, params int[] points) => new(type, points);
}
