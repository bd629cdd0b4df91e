using IfcCourser.Geometry;
using IfcCourser.Ifc.Bodies;
using IfcCourser.Tests.Walls;

namespace IfcCourser.Tests.Ifc.Bodies;

/// <summary>Each kind of body once; volumes worked out by hand.</summary>
public sealed class BodyReaderTests
{
    private const double Wall = 4000 * 240 * 2500.0;

    private const string Corners = "IFCCARTESIANPOINTLIST3D(((0.,0.,0.),(4000.,0.,0.),(4000.,240.,0.),(0.,240.,0.),(0.,0.,2500.),(4000.,0.,2500.),(4000.,240.,2500.),(0.,240.,2500.)))";

    [Fact]
    public void A_rectangle_profile_is_centred_on_its_position()
    {
        var text = new ModelText();
        var profile = text.Add($"IFCRECTANGLEPROFILEDEF(.AREA.,$,#{text.Add($"IFCAXIS2PLACEMENT2D(#{text.Point(2000, 120)},$)")},4000.,240.)");
        var solid = Read(text, text.Add($"IFCEXTRUDEDAREASOLID(#{profile},#{text.Axes(0, 0, 0)},#{text.Direction(0, 0, 1)},2500.)"));
        Assert.Equal(Wall, solid.Volume, 1e-3);
        AssertPoint(new Vector3(0, 0, 0), solid.Box.Min);
        AssertPoint(new Vector3(4000, 240, 2500), solid.Box.Max);
    }

    /// <summary>A quarter ring of radii 1000 and 1240.</summary>
    [Fact]
    public void Arcs_of_an_indexed_curve_are_chords()
    {
        var text = new ModelText();
        var (near, far) = (1000 * Math.Sqrt(0.5), 1240 * Math.Sqrt(0.5));
        var points = text.Add(FormattableString.Invariant($"IFCCARTESIANPOINTLIST2D(((1000.,0.),(1240.,0.),({far:R},{far:R}),(0.,1240.),(0.,1000.),({near:R},{near:R})))"));
        var curve = text.Add($"IFCINDEXEDPOLYCURVE(#{points},(IFCLINEINDEX((1,2)),IFCARCINDEX((2,3,4)),IFCLINEINDEX((4,5)),IFCARCINDEX((5,6,1))),$)");
        var profile = text.Add($"IFCARBITRARYCLOSEDPROFILEDEF(.AREA.,$,#{curve})");
        var solid = Read(text, text.Add($"IFCEXTRUDEDAREASOLID(#{profile},#{text.Axes(0, 0, 0)},#{text.Direction(0, 0, 1)},2500.)"));
        Assert.Equal(1, solid.Volume / (Chords.QuarterRing * 2500), 1e-9);
    }

    /// <summary>A half disc of radius 500 on a square of 1000: trimmed by angles along and against the sense of the circle.</summary>
    [Theory]
    [InlineData("(IFCPARAMETERVALUE(0.))", "(IFCPARAMETERVALUE(3.14159265358979))", ".T.", ".T.")]
    [InlineData("(IFCPARAMETERVALUE(3.14159265358979))", "(IFCPARAMETERVALUE(0.))", ".F.", ".F.")]
    // Degrees in a file whose angles are radians: the points tell.
    [InlineData("(IFCPARAMETERVALUE(0.),#{right})", "(IFCPARAMETERVALUE(180.),#{left})", ".T.", ".T.")]
    public void Trimmed_circles_follow_their_sense(string from, string to, string agrees, string same)
    {
        var text = new ModelText();
        var circle = text.Add($"IFCCIRCLE(#{text.Add($"IFCAXIS2PLACEMENT2D(#{text.Point(500, 1000)},$)")},500.)");
        var (right, left) = (text.Point(1000, 1000), text.Point(0, 1000));
        string Trim(string trim) => trim.Replace("{right}", $"{right}", StringComparison.Ordinal).Replace("{left}", $"{left}", StringComparison.Ordinal);
        var arc = text.Add($"IFCTRIMMEDCURVE(#{circle},{Trim(from)},{Trim(to)},{agrees},.PARAMETER.)");
        var line = text.Add($"IFCPOLYLINE((#{text.Point(0, 1000)},#{text.Point(0, 0)},#{text.Point(1000, 0)},#{text.Point(1000, 1000)}))");
        var first = text.Add($"IFCCOMPOSITECURVESEGMENT(.CONTINUOUS.,.T.,#{line})");
        // The second case runs from pi down to 0 and is then reversed by its segment: the same boundary.
        var second = text.Add($"IFCCOMPOSITECURVESEGMENT(.CONTINUOUS.,{same},#{arc})");
        var profile = text.Add($"IFCARBITRARYCLOSEDPROFILEDEF(.AREA.,$,#{text.Add($"IFCCOMPOSITECURVE((#{first},#{second}),.F.)")})");
        var solid = Read(text, text.Add($"IFCEXTRUDEDAREASOLID(#{profile},#{text.Axes(0, 0, 0)},#{text.Direction(0, 0, 1)},100.)"));
        Assert.Equal(1, solid.Volume / (((1000 * 1000) + Chords.Sector(500, 180)) * 100), 1e-9);
    }

    [Theory]
    [InlineData(".F.", 0.25)]
    [InlineData(".T.", 0.75)]
    public void The_agreement_flag_tells_which_side_of_a_half_space_is_cut_off(string flag, double left)
    {
        var text = new ModelText();
        var plane = text.Add($"IFCPLANE(#{text.Axes(1000, 0, 0, [0, 1, 0], [1, 0, 0])})");
        var item = text.Add($"IFCBOOLEANCLIPPINGRESULT(.DIFFERENCE.,#{text.Box(0, 0, 0, 4000, 240, 2500)},#{text.Add($"IFCHALFSPACESOLID(#{plane},{flag})")})");
        Assert.Equal(Wall * left, Read(text, item).Volume, 1e-3);
    }

    [Fact]
    public void A_bounded_half_space_cuts_only_within_its_polygon()
    {
        var text = new ModelText();
        // Everything over z = 2000, for x from 1000 to 2000.
        var plane = text.Add($"IFCPLANE(#{text.Axes(0, 0, 2000)})");
        var bounds = text.Polyline((1000, -500), (2000, -500), (2000, 500), (1000, 500));
        var half = text.Add($"IFCPOLYGONALBOUNDEDHALFSPACE(#{plane},.F.,#{text.Axes(0, 0, 0)},#{bounds})");
        var item = text.Add($"IFCBOOLEANCLIPPINGRESULT(.DIFFERENCE.,#{text.Box(0, 0, 0, 4000, 240, 2500)},#{half})");
        Assert.Equal(Wall - (1000 * 240 * 500.0), Read(text, item).Volume, 1e-3);
    }

    [Fact]
    public void Hundreds_of_nested_clippings_are_cut_one_by_one()
    {
        var text = new ModelText();
        var item = text.Box(0, 0, 0, 4000, 240, 2500);
        for (var i = 0; i < 600; i++)
        {
            item = text.Clipped(item, (4000 - i, 0, 0), [1, 0, 0]);
        }

        Assert.Equal(Wall * (3401.0 / 4000), Read(text, item).Volume, 1e-3);
    }

    [Theory]
    [InlineData("UNION", 1.5)]
    [InlineData("INTERSECTION", 0.5)]
    [InlineData("DIFFERENCE", 0.5)]
    public void Booleans_of_solids(string operation, double share)
    {
        var text = new ModelText();
        var item = text.Add($"IFCBOOLEANRESULT(.{operation}.,#{text.Box(0, 0, 0, 4000, 240, 2500)},#{text.Box(2000, 0, 0, 6000, 240, 2500)})");
        Assert.Equal(Wall * share, Read(text, item).Volume, 1e-3);
    }

    [Fact]
    public void A_mapped_body_follows_its_operator_mirrored_and_stretched()
    {
        var text = new ModelText();
        var representation = text.Add($"IFCSHAPEREPRESENTATION($,'Body','SweptSolid',(#{text.Box(0, 0, 0, 2000, 240, 2500)}))");
        var map = text.Add($"IFCREPRESENTATIONMAP(#{text.Axes(0, 0, 0)},#{representation})");
        var target = text.Add($"IFCCARTESIANTRANSFORMATIONOPERATOR3DNONUNIFORM(#{text.Direction(-1, 0, 0)},#{text.Direction(0, 1, 0)},#{text.Point(100, 0, 0)},2.,#{text.Direction(0, 0, 1)},1.,1.)");
        var solid = Read(text, text.Add($"IFCMAPPEDITEM(#{map},#{target})"));
        Assert.Equal(Wall, solid.Volume, 1e-3);
        Assert.Equal((-3900, 100), (Math.Round(solid.Box.Min.X, 6), Math.Round(solid.Box.Max.X, 6)));
    }

    [Theory]
    [InlineData(true, 1)]
    [InlineData(false, 1)]
    [InlineData(true, 10_000)]
    public void A_brep_may_be_wound_inside_out_and_its_bounds_be_named_over_and_over(bool outwards, int times)
    {
        var text = new ModelText();
        int P(double x, double y, double z) => text.Point(x, y, z);
        int[] p = [P(0, 0, 0), P(4000, 0, 0), P(4000, 240, 0), P(0, 240, 0), P(0, 0, 2500), P(4000, 0, 2500), P(4000, 240, 2500), P(0, 240, 2500)];
        int[][] faces = [[3, 2, 1, 0], [4, 5, 6, 7], [0, 1, 5, 4], [1, 2, 6, 5], [2, 3, 7, 6], [3, 0, 4, 7]];
        var ids = faces.Select(face =>
        {
            var loop = text.Add($"IFCPOLYLOOP(({string.Join(",", face.Select(i => $"#{p[i]}"))}))");
            var bound = text.Add($"IFCFACEOUTERBOUND(#{loop},{(outwards ? ".T." : ".F.")})");
            return $"#{text.Add($"IFCFACE(({string.Join(',', Enumerable.Repeat($"#{bound}", times))}))")}";
        }).ToList();
        var solid = Read(text, text.Add($"IFCFACETEDBREP(#{text.Add($"IFCCLOSEDSHELL(({string.Join(",", ids)}))")})"));
        Assert.Equal(Wall, solid.Volume, 1e-3);
    }

    [Fact]
    public void Triangles_enclose_a_body()
    {
        var text = new ModelText();
        var set = text.Add($"IFCTRIANGULATEDFACESET(#{text.Add(Corners)},$,.T.,((1,3,2),(1,4,3),(5,6,7),(5,7,8),(1,2,6),(1,6,5),(2,3,7),(2,7,6),(3,4,8),(3,8,7),(4,1,5),(4,5,8)),$)");
        Assert.Equal(Wall, Read(text, set).Volume, 1e-3);
    }

    [Fact]
    public void A_tessellation_with_a_face_missing_is_not_read()
    {
        var text = new ModelText();
        var set = text.Add($"IFCTRIANGULATEDFACESET(#{text.Add(Corners)},$,.T.,((1,3,2),(1,4,3),(5,6,7),(5,7,8),(2,3,7),(2,7,6),(3,4,8),(3,8,7),(4,1,5),(4,5,8)),$)");
        var shape = text.Shape(set, "Tessellation");
        using var model = text.Read();
        var body = new BodyReader(model.File, model.Units).Read(shape, Transform3.Identity);
        Assert.Empty(body.Items);
        Assert.Equal(new UnreadItem(set, HasBentFaces: false), Assert.Single(body.Unread));
    }

    [Fact]
    public void Polygons_with_holes_leave_a_window_open()
    {
        var text = new ModelText();
        // A frame seen from the front (y = 0) and the back (y = 240) with a window from 1000 to 2000 and 900 to 2100.
        var points = text.Add("IFCCARTESIANPOINTLIST3D(((0.,0.,0.),(4000.,0.,0.),(4000.,0.,2500.),(0.,0.,2500.),(1000.,0.,900.),(2000.,0.,900.),(2000.,0.,2100.),(1000.,0.,2100.),(0.,240.,0.),(4000.,240.,0.),(4000.,240.,2500.),(0.,240.,2500.),(1000.,240.,900.),(2000.,240.,900.),(2000.,240.,2100.),(1000.,240.,2100.)))");
        int Face(string outer, string? hole = null) => text.Add(hole is null ? $"IFCINDEXEDPOLYGONALFACE(({outer}))" : $"IFCINDEXEDPOLYGONALFACEWITHVOIDS(({outer}),(({hole})))");
        int[] faces =
        [
            Face("1,2,3,4", "5,8,7,6"), Face("12,11,10,9", "13,14,15,16"), Face("1,9,10,2"), Face("2,10,11,3"), Face("3,11,12,4"), Face("4,12,9,1"),
            Face("5,6,14,13"), Face("6,7,15,14"), Face("7,8,16,15"), Face("8,5,13,16"),
        ];
        var set = text.Add($"IFCPOLYGONALFACESET(#{points},.T.,({string.Join(",", faces.Select(face => $"#{face}"))}),$)");
        Assert.Equal(Wall - (1000 * 1200 * 240.0), Read(text, set).Volume, 1e-3);
    }

    [Fact]
    public void Parts_of_a_shell_that_are_turned_inside_out_are_solid_too()
    {
        var text = new ModelText();
        // A wall and, on its end, a block of 200 x 240 x 300 whose triangles are wound the other way; one program writes such.
        var points = text.Add("IFCCARTESIANPOINTLIST3D(((0.,0.,0.),(4000.,0.,0.),(4000.,240.,0.),(0.,240.,0.),(0.,0.,2500.),(4000.,0.,2500.),(4000.,240.,2500.),(0.,240.,2500.),(4000.,0.,2800.),(4200.,0.,2500.),(4200.,240.,2500.),(4000.,240.,2800.),(4200.,0.,2800.),(4200.,240.,2800.)))");
        var set = text.Add($"IFCTRIANGULATEDFACESET(#{points},$,.T.,((1,3,2),(1,4,3),(5,6,7),(5,7,8),(1,2,6),(1,6,5),(2,3,7),(2,7,6),(3,4,8),(3,8,7),(4,1,5),(4,5,8),(6,10,11),(6,11,7),(9,14,13),(9,12,14),(6,13,10),(6,9,13),(10,14,11),(10,13,14),(11,12,7),(11,14,12),(7,9,6),(7,12,9)),$)");
        var solid = Read(text, set);
        Assert.Equal(Wall + (200 * 240 * 300.0), solid.Volume, 1e-3);
        Assert.Equal(2800, solid.Box.Max.Z, 1e-6);
    }

    [Fact]
    public void A_mapping_of_a_point_is_no_body()
    {
        var text = new ModelText();
        var representation = text.Add($"IFCSHAPEREPRESENTATION($,'Body','GeometricSet',(#{text.Point(0, 0, 0)}))");
        var map = text.Add($"IFCREPRESENTATIONMAP(#{text.Axes(0, 0, 0)},#{representation})");
        var shape = text.Shape(text.Add($"IFCMAPPEDITEM(#{map},#{text.Add($"IFCCARTESIANTRANSFORMATIONOPERATOR3D($,$,#{text.Point(0, 0, 0)},1.,$)")})"), "MappedRepresentation");
        using var model = text.Read();
        var body = new BodyReader(model.File, model.Units).Read(shape, Transform3.Identity);
        Assert.Equal((0, 0), (body.Items.Length, body.Unread.Length));
    }

    [Fact]
    public void The_axis_the_box_and_the_footprint_are_no_body()
    {
        var text = new ModelText();
        var item = text.Box(0, 0, 0, 4000, 240, 2500);
        var representations = new[] { "Box", "Axis", "FootPrint" }.Select(name => $"#{text.Add($"IFCSHAPEREPRESENTATION($,'{name}','SweptSolid',(#{item}))")}").ToList();
        var shape = text.Add($"IFCPRODUCTDEFINITIONSHAPE($,$,({string.Join(",", representations)}))");
        using var model = text.Read();
        Assert.Empty(new BodyReader(model.File, model.Units).Read(shape, Transform3.Identity).Items);
    }

    private static Solid Read(ModelText text, int item)
    {
        var shape = text.Shape(item, "SweptSolid");
        using var model = text.Read();
        var body = new BodyReader(model.File, model.Units).Read(shape, Transform3.Identity);
        Assert.Empty(body.Unread);
        return body.Solid;
    }

    private static void AssertPoint(Vector3 expected, Vector3 actual) => Assert.True((expected - actual).Length < 1e-6, $"{expected} against {actual}");
}
