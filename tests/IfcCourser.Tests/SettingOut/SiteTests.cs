using IfcCourser.Geometry;
using IfcCourser.Tests.Walls;
using IfcCourser.Walls;

namespace IfcCourser.Tests.SettingOut;

/// <summary>What models hold beside walls: slabs, grid lines, places on maps. Expected values worked by hand.</summary>
public sealed class SiteTests
{
    /// <summary>
    /// Turned 30 degrees: a point 10 m along the model's x axis lies 10 cos 30 = 8.660254 m east and 10 sin 30 = 5 m north of
    /// the model's origin (formula of IfcMapConversion, ISO 16739-1).
    /// </summary>
    [Theory]
    [InlineData(1, null, "1.", 1000.0)] // map in metres, model in mm, scale left out: taken for 1
    [InlineData(1, null, "0.001", 1000.0)] // as the standard wants it: the scale turns mm into m
    [InlineData(1, ".MILLI.", "1.", 1.0)]
    [InlineData(304.8, null, "0.3048", 1000.0)]
    public void A_map_conversion_turns_and_moves_the_model(double modelMm, string? prefix, string scale, double mapMm)
    {
        var text = new ModelText(modelMm);
        Convert(text, prefix, scale, mapMm);
        var survey = text.Walls().Site.Survey;
        Assert.Equal((SurveyKind.Map, "EPSG:0000"), (survey.Kind, survey.Name));
        AssertNear(new Vector3(200_000 + 8660.254038, 500_000 + 5000, 12_000 + 250), survey.Of(new Vector3(10_000, 0, 250)));
        AssertNear(new Vector3(200_000 - 5000, 500_000 + 8660.254038, 12_000), survey.Of(new Vector3(0, 10_000, 0)));
        Assert.Equal(-30, survey.RotationDegrees, 6);
    }

    [Fact]
    public void A_projections_own_scale_stretches_the_points()
    {
        var text = new ModelText();
        Convert(text, null, "0.0009996", 1000);
        AssertNear(new Vector3(200_000 + (8660.254038 * 0.9996), 500_000 + (5000 * 0.9996), 12_000), text.Walls().Site.Survey.Of(new Vector3(10_000, 0, 0)));
    }

    [Fact]
    public void A_scale_that_fits_nothing_is_named_and_not_used()
    {
        var text = new ModelText();
        Convert(text, null, "25.4", 1000);
        var walls = text.Walls();
        Assert.Contains(walls.Findings, finding => finding.Code.Id == "map-scale-odd");
        AssertNear(new Vector3(200_000, 500_000, 12_000), walls.Site.Survey.Of(default));
        Assert.Equal(1, walls.Site.Survey.Scale);
    }

    /// <summary>Lines 1 (upright, x = 2000) and A (y = 1000) cross at (2000, 1000).</summary>
    [Fact]
    public void Without_a_map_points_are_measured_from_the_crossing_of_the_first_grid_lines()
    {
        var text = new ModelText();
        Grid(text, [("1", 2000, -500, 2000, 9000), ("2", 7000, -500, 7000, 9000)], [("A", 0, 1000, 9000, 1000)]);
        var site = text.Walls().Site;
        Assert.Equal("1 2 A", string.Join(' ', site.Grid.Select(line => line.Tag)));
        Assert.Equal((SurveyKind.Grid, "1/A"), (site.Survey.Kind, site.Survey.Name));
        AssertNear(new Vector3(1500, 4000, 100), site.Survey.Of(new Vector3(3500, 5000, 100)));
    }

    [Fact]
    public void With_neither_the_models_axes_are_those_of_the_survey()
    {
        var site = new ModelText().Walls().Site;
        Assert.Equal(SurveyAxes.Model, site.Survey);
        AssertNear(new Vector3(1, 2, 3), site.Survey.Of(new Vector3(1, 2, 3)));
    }

    /// <summary>Slabs whose tops lie from 500 mm under to 50 mm over a wall's base; neither roofs nor blocks higher than 1500 mm.</summary>
    [Theory]
    [InlineData(0, 200, "FLOOR", true)]
    [InlineData(-500, 200, "BASESLAB", true)]
    [InlineData(50, 200, "NOTDEFINED", true)]
    [InlineData(51, 200, "FLOOR", false)]
    [InlineData(-501, 200, "FLOOR", false)]
    [InlineData(0, 200, "ROOF", false)]
    [InlineData(0, 1600, "FLOOR", false)]
    public void Slabs_near_a_walls_base_are_read(double top, double thickness, string kind, bool isRead)
    {
        var text = new ModelText();
        text.Straight("wall", 5000, 240, 2500);
        var place = text.Add($"IFCLOCALPLACEMENT($,#{text.Axes(0, 0, 0)})");
        text.Add($"IFCSLAB('slab00000000000000000A',$,'Slab',$,$,#{place},#{text.Shape(text.Box(-100, -100, top - thickness, 5100, 340, top), "SweptSolid")},$,.{kind}.)");
        var slabs = text.Walls().Site.Slabs;
        Assert.Equal(isRead ? 1 : 0, slabs.Length);
        Assert.All(slabs, slab => Assert.Equal((top, 5200.0 * 440), (slab.Top, Math.Round(slab.Plan.Area))));
    }

    private static void Convert(ModelText text, string? prefix, string scale, double mapMm)
    {
        text.Straight("wall", 5000, 240, 2500);
        string Map(double mm) => (mm / mapMm).ToString("0.0######", System.Globalization.CultureInfo.InvariantCulture);
        var unit = text.Add($"IFCSIUNIT(*,.LENGTHUNIT.,{prefix ?? "$"},.METRE.)");
        var system = text.Add($"IFCPROJECTEDCRS('EPSG:0000',$,$,$,$,$,#{unit})");
        text.Add($"IFCMAPCONVERSION($,#{system},{Map(200_000)},{Map(500_000)},{Map(12_000)},0.8660254037844387,0.5,{scale})");
    }

    private static void Grid(ModelText text, (string Tag, double X0, double Y0, double X1, double Y1)[] u, (string Tag, double X0, double Y0, double X1, double Y1)[] v)
    {
        string Axes((string Tag, double X0, double Y0, double X1, double Y1)[] lines) => string.Join(",", lines.Select(line =>
            $"#{text.Add($"IFCGRIDAXIS('{line.Tag}',#{text.Add($"IFCPOLYLINE((#{text.Point(line.X0, line.Y0)},#{text.Point(line.X1, line.Y1)}))")},.T.)")}"));
        var (first, second) = (Axes(u), Axes(v));
        var place = text.Add($"IFCLOCALPLACEMENT($,#{text.Axes(0, 0, 0)})");
        text.Add($"IFCGRID('grid00000000000000000A',$,'Grid',$,$,#{place},$,({first}),({second}),$,$)");
    }

    private static void AssertNear(Vector3 expected, Vector3 actual) => Assert.True((expected - actual).Length < 0.01, $"{actual}, not {expected}");
}
