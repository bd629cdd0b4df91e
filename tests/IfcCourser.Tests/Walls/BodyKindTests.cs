using IfcCourser.Geometry;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Tests.Walls;

/// <summary>
/// The same wall, 4000 long, 240 thick and 2500 high with its right top corner sloped off from (2000, 2500) to (4000, 1500),
/// in every kind of body: always the same outline.
/// </summary>
public sealed class BodyKindTests
{
    private static readonly (double S, double Z)[] _outline = [(0, 0), (4000, 0), (4000, 1500), (2000, 2500), (0, 2500)];

    [Fact]
    public void Extruded_upwards_and_clipped_by_a_half_space()
    {
        var text = new ModelText();
        Check(text, text.Clipped(text.Box(0, 0, 0, 4000, 240, 2500), (2000, 0, 2500), _slope), "Clipping");
    }

    [Fact]
    public void Extruded_across_its_thickness()
    {
        var text = new ModelText();
        Check(text, Across(text, 0, 240), "SweptSolid");
    }

    [Fact]
    public void Clipped_by_a_bounded_half_space_after_another_clipping()
    {
        var text = new ModelText();
        var lowered = text.Clipped(text.Box(0, 0, 0, 4000, 240, 3000), (0, 0, 2500), [0, 0, 1]);
        var plane = text.Add($"IFCPLANE(#{text.Axes(2000, 0, 2500, [0, 1, 0], _slope)})");
        var half = text.Add($"IFCPOLYGONALBOUNDEDHALFSPACE(#{plane},.F.,#{text.Axes(0, 0, 0)},#{text.Polyline((1000, -100), (5000, -100), (5000, 400), (1000, 400))})");
        Check(text, text.Add($"IFCBOOLEANCLIPPINGRESULT(.DIFFERENCE.,#{lowered},#{half})"), "Clipping");
    }

    [Fact]
    public void A_csg_block_less_a_wedge()
    {
        var text = new ModelText();
        var block = text.Add($"IFCBLOCK(#{text.Axes(0, 0, 0)},4000.,240.,2500.)");
        var wedge = text.Extruded(300, [(2000, 2500), (4000, 1500), (4100, 1450), (4100, 2600), (2000, 2600)], text.Axes(0, 270, 0, [1, 0, 0], [0, -1, 0]));
        Check(text, text.Add($"IFCCSGSOLID(#{text.Add($"IFCBOOLEANRESULT(.DIFFERENCE.,#{block},#{wedge})")})"), "CSG");
    }

    [Fact]
    public void Mapped_and_stretched_differently_along_and_up()
    {
        var text = new ModelText();
        // Drawn half as long and a fifth as high.
        var drawn = text.Extruded(240, [(0, 0), (2000, 0), (2000, 300), (1000, 500), (0, 500)], text.Axes(0, 240, 0, [1, 0, 0], [0, -1, 0]));
        var map = text.Add($"IFCREPRESENTATIONMAP(#{text.Axes(0, 0, 0)},#{text.Add($"IFCSHAPEREPRESENTATION($,'Body','SweptSolid',(#{drawn}))")})");
        var target = text.Add($"IFCCARTESIANTRANSFORMATIONOPERATOR3DNONUNIFORM($,$,#{text.Point(0, 0, 0)},2.,$,1.,5.)");
        Check(text, text.Add($"IFCMAPPEDITEM(#{map},#{target})"), "MappedRepresentation");
    }

    [Fact]
    public void Mapped_through_a_mirror()
    {
        var text = new ModelText();
        var drawn = text.Extruded(240, [(0, 0), (0, 2500), (-2000, 2500), (-4000, 1500), (-4000, 0)], text.Axes(0, 240, 0, [1, 0, 0], [0, -1, 0]));
        var map = text.Add($"IFCREPRESENTATIONMAP(#{text.Axes(0, 0, 0)},#{text.Add($"IFCSHAPEREPRESENTATION($,'Body','SweptSolid',(#{drawn}))")})");
        var target = text.Add($"IFCCARTESIANTRANSFORMATIONOPERATOR3D(#{text.Direction(-1, 0, 0)},#{text.Direction(0, 1, 0)},#{text.Point(0, 0, 0)},1.,#{text.Direction(0, 0, 1)})");
        Check(text, text.Add($"IFCMAPPEDITEM(#{map},#{target})"), "MappedRepresentation");
    }

    [Theory]
    [InlineData("IFCFACETEDBREP(#{0})", "IFCCLOSEDSHELL", "IFCFACE((#{0}))", "Brep")]
    [InlineData("IFCADVANCEDBREP(#{0})", "IFCCLOSEDSHELL", "IFCADVANCEDFACE((#{0}),#{1},.T.)", "AdvancedBrep")]
    [InlineData("IFCSHELLBASEDSURFACEMODEL((#{0}))", "IFCOPENSHELL", "IFCFACE((#{0}))", "SurfaceModel")]
    [InlineData("IFCFACEBASEDSURFACEMODEL((#{0}))", "IFCCONNECTEDFACESET", "IFCFACE((#{0}))", "SurfaceModel")]
    public void Bounded_by_faces(string solid, string shell, string face, string kind)
    {
        var text = new ModelText();
        var corners = _corners.Select(p => text.Point(p.X, p.Y, p.Z)).ToList();
        var plane = text.Add($"IFCPLANE(#{text.Axes(0, 0, 0)})");
        var faces = _polygons.Select(polygon =>
        {
            var loop = text.Add($"IFCPOLYLOOP(({string.Join(",", polygon.Select(i => $"#{corners[i]}"))}))");
            var bound = text.Add($"IFCFACEOUTERBOUND(#{loop},.T.)");
            return $"#{text.Add(Filled(face, bound, plane))}";
        }).ToList();
        Check(text, text.Add(Filled(solid, text.Add($"{shell}(({string.Join(",", faces)}))"))), kind);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Tessellated(bool triangles)
    {
        var text = new ModelText();
        var points = text.Add($"IFCCARTESIANPOINTLIST3D(({string.Join(",", _corners.Select(p => $"({text.Length(p.X)},{text.Length(p.Y)},{text.Length(p.Z)})"))}))");
        if (triangles)
        {
            var corners = _polygons.SelectMany(polygon => Enumerable.Range(1, polygon.Length - 2).Select(i => FormattableString.Invariant($"({polygon[0] + 1},{polygon[i] + 1},{polygon[i + 1] + 1})")));
            Check(text, text.Add($"IFCTRIANGULATEDFACESET(#{points},$,.T.,({string.Join(",", corners)}),$)"), "Tessellation");
            return;
        }

        var faces = _polygons.Select(polygon => $"#{text.Add($"IFCINDEXEDPOLYGONALFACE(({string.Join(",", polygon.Select(i => i + 1))}))")}").ToList();
        Check(text, text.Add($"IFCPOLYGONALFACESET(#{points},.T.,({string.Join(",", faces)}),$)"), "Tessellation");
    }

    [Fact]
    public void Several_items_make_one_wall()
    {
        var text = new ModelText();
        var (right, left) = (Across(text, 0, 115), Across(text, 115, 125));
        var shape = text.Add($"IFCPRODUCTDEFINITIONSHAPE($,$,(#{text.Add($"IFCSHAPEREPRESENTATION($,'Body','SweptSolid',(#{right},#{left}))")}))");
        text.Add($"IFCWALL('several000000000000000',$,'A',$,$,#{text.Add($"IFCLOCALPLACEMENT($,#{text.Axes(0, 0, 0)})")},#{shape},$,$)");
        Check(text);
    }

    [Theory]
    [InlineData("IFCWALL", "IFC4")]
    [InlineData("IFCWALLELEMENTEDCASE", "IFC4")]
    [InlineData("IFCWALL", "IFC4X3_ADD2")]
    public void Parts_give_the_body_of_a_wall_that_has_none(string entity, string schema)
    {
        var text = new ModelText { Schema = schema };
        text.Aggregated("A", entity, ("right", Across(text, 0, 115)), ("left", Across(text, 115, 125)));
        Check(text);
    }

    [Fact]
    public void Thirty_thousand_kilometres_away_nothing_changes()
    {
        var text = new ModelText(1000, east: 3e10, north: -2e10);
        var item = text.Clipped(text.Box(0, 0, 0, 4000, 240, 2500), (2000, 0, 2500), _slope);
        text.Wall("A", item, along: [0.6, 0.8, 0], kind: "Clipping");
        Check(text);
    }

    private static readonly double[] _slope = [1, 0, 2];

    private static readonly Vector3[] _corners =
    [
        new(0, 0, 0), new(4000, 0, 0), new(4000, 0, 1500), new(2000, 0, 2500), new(0, 0, 2500),
        new(0, 240, 0), new(4000, 240, 0), new(4000, 240, 1500), new(2000, 240, 2500), new(0, 240, 2500),
    ];

    private static readonly int[][] _polygons =
        [[0, 1, 2, 3, 4], [9, 8, 7, 6, 5], [0, 5, 6, 1], [1, 6, 7, 2], [2, 7, 8, 3], [3, 8, 9, 4], [4, 9, 5, 0]];

    // Drawn in elevation on the far side and extruded towards the viewer.
    private static int Across(ModelText text, double from, double thickness) =>
        text.Extruded(thickness, [.. _outline], text.Axes(0, from + thickness, 0, [1, 0, 0], [0, -1, 0]));

    private static string Filled(string instance, params int[] ids)
    {
        for (var i = 0; i < ids.Length; i++)
        {
            instance = instance.Replace(FormattableString.Invariant($"{{{i}}}"), FormattableString.Invariant($"{ids[i]}"), StringComparison.Ordinal);
        }

        return instance;
    }

    private static void Check(ModelText text, int item, string kind)
    {
        text.Wall("A", item, kind: kind);
        Check(text);
    }

    private static void Check(ModelText text)
    {
        var model = text.Walls(new WallSelection { Walls = WallChoice.All, Width = WidthMatch.Any });
        Assert.Empty(model.Skipped);
        var wall = Assert.Single(model.Walls);
        Assert.Equal(_outline, WallReaderTests.Points(wall, round: 3));
        Assert.Equal(Length.FromMm(240), wall.Frame.Thickness);
        Assert.Equal(((4.0 * 2.5) - (2.0 * 1.0 / 2)) * 0.24, wall.Body.NetVolume, 1e-9);
    }
}
