using IfcCourser.Geometry;
using IfcCourser.Ifc.Bodies;
using IfcCourser.Tests.Walls;

namespace IfcCourser.Tests.Ifc.Bodies;

/// <summary>Each kind of profile once, extruded by 1000 mm; areas (cm2) and boxes worked out by hand.</summary>
public sealed class ProfileTests
{
    [Theory]
    // Web 10 x 180, flanges 100 x 10 each: 1800 + 2000 mm2.
    [InlineData("IFCISHAPEPROFILEDEF(.AREA.,$,$,100.,200.,10.,10.,$,$,$)", 38, 100, 200)]
    // Foot 200 x 20, head 100 x 10, web 10 x 170: 4000 + 1000 + 1700 mm2.
    [InlineData("IFCASYMMETRICISHAPEPROFILEDEF(.AREA.,$,$,200.,200.,10.,20.,$,100.,10.,$,$,$,$,$)", 67, 200, 200)]
    // Legs 300 x 20 upright and 180 x 20 beside it: 6000 + 3600 mm2.
    [InlineData("IFCLSHAPEPROFILEDEF(.AREA.,$,$,300.,200.,20.,$,$,$)", 96, 200, 300)]
    // Without a width both legs have the depth: 6000 + 5600 mm2.
    [InlineData("IFCLSHAPEPROFILEDEF(.AREA.,$,$,300.,$,20.,$,$,$)", 116, 300, 300)]
    // Flange 200 x 20, web 10 x 280: 4000 + 2800 mm2.
    [InlineData("IFCTSHAPEPROFILEDEF(.AREA.,$,$,300.,200.,10.,20.,$,$,$,$,$)", 68, 200, 300)]
    // Web 10 x 300, flanges 90 x 20 each: 3000 + 3600 mm2.
    [InlineData("IFCUSHAPEPROFILEDEF(.AREA.,$,$,300.,100.,10.,20.,$,$,$)", 66, 100, 300)]
    // The flanges overlap in the web's 10 mm only: 190 mm wide.
    [InlineData("IFCZSHAPEPROFILEDEF(.AREA.,$,$,300.,100.,10.,20.,$,$)", 66, 190, 300)]
    // Web 300, two flanges 90, two lips 40 - 10, each 10 thick: 3000 + 1800 + 600 mm2.
    [InlineData("IFCCSHAPEPROFILEDEF(.AREA.,$,$,300.,100.,10.,40.,$)", 54, 100, 300)]
    [InlineData("IFCTRAPEZIUMPROFILEDEF(.AREA.,$,$,300.,100.,200.,50.)", 400, 300, 200)]
    [InlineData("IFCRECTANGLEHOLLOWPROFILEDEF(.AREA.,$,$,300.,200.,10.,$,$)", 96, 300, 200)]
    public void Profiles_of_dimensions(string profile, double squareCentimetres, double width, double height)
    {
        var solid = Extruded(profile);
        Assert.Equal(squareCentimetres * 100 * 1000, solid.Volume, 1e-3);
        Assert.Equal((width, height), (Math.Round(solid.Box.Size.X, 6), Math.Round(solid.Box.Size.Y, 6)));
    }

    /// <summary>A rounded corner lacks its square less a quarter disc.</summary>
    [Fact]
    public void Corners_are_rounded()
    {
        double Lacking(double radius) => (radius * radius) - Chords.Sector(radius, 90);
        Assert.Equal((300 * 200) - (4 * Lacking(20)), Extruded("IFCROUNDEDRECTANGLEPROFILEDEF(.AREA.,$,$,300.,200.,20.)").Volume / 1000, 1e-6);
        Assert.Equal(3800 + (4 * Lacking(12)), Extruded("IFCISHAPEPROFILEDEF(.AREA.,$,$,100.,200.,10.,10.,12.,$,$)").Volume / 1000, 1e-6);
    }

    [Fact]
    public void Round_profiles_are_chords()
    {
        Assert.Equal(Chords.Disc(100), Extruded("IFCCIRCLEPROFILEDEF(.AREA.,$,$,100.)").Volume / 1000, 1e-6);
        Assert.Equal(Chords.Disc(100) - Chords.Disc(90), Extruded("IFCCIRCLEHOLLOWPROFILEDEF(.AREA.,$,$,100.,10.)").Volume / 1000, 1e-6);
        Assert.Equal(Chords.Disc(100) / 2, Extruded("IFCELLIPSEPROFILEDEF(.AREA.,$,$,100.,50.)").Volume / 1000, 1e-6);
    }

    [Fact]
    public void A_band_along_a_line_with_a_corner()
    {
        var text = new ModelText();
        var line = text.Add($"IFCPOLYLINE((#{text.Point(0, 0)},#{text.Point(4000, 0)},#{text.Point(4000, 3000)}))");
        // Both legs to the outer corner less the square counted twice: 4120 x 240 + 2880 x 240.
        var solid = Read(text, text.Add($"IFCCENTERLINEPROFILEDEF(.AREA.,$,#{line},240.)"));
        Assert.Equal(((4120 * 240) + (2880 * 240)) * 1000.0, solid.Volume, 1e-3);
    }

    [Fact]
    public void Composite_derived_and_mirrored_profiles_are_made_of_others()
    {
        var text = new ModelText();
        var square = text.Add($"IFCRECTANGLEPROFILEDEF(.AREA.,$,#{text.Add($"IFCAXIS2PLACEMENT2D(#{text.Point(150, 0)},$)")},100.,100.)");
        var stretch = text.Add($"IFCCARTESIANTRANSFORMATIONOPERATOR2DNONUNIFORM($,$,#{text.Point(1000, 0)},2.,3.)");
        var derived = text.Add($"IFCDERIVEDPROFILEDEF(.AREA.,$,#{square},#{stretch},$)");
        var mirrored = text.Add($"IFCMIRROREDPROFILEDEF(.AREA.,$,#{square},*,$)");
        var solid = Read(text, text.Add($"IFCCOMPOSITEPROFILEDEF(.AREA.,$,(#{square},#{derived},#{mirrored}),$)"));
        Assert.Equal((10000 + 60000 + 10000) * 1000.0, solid.Volume, 1e-3);
        // Mirrored to -200..-100; stretched from 100..200 to 1200..1400.
        Assert.Equal((-200, 1400), (Math.Round(solid.Box.Min.X, 6), Math.Round(solid.Box.Max.X, 6)));
    }

    private static Solid Extruded(string profile)
    {
        var text = new ModelText();
        return Read(text, text.Add(profile));
    }

    private static Solid Read(ModelText text, int profile)
    {
        var shape = text.Shape(text.Add($"IFCEXTRUDEDAREASOLID(#{profile},#{text.Axes(0, 0, 0)},#{text.Direction(0, 0, 1)},1000.)"), "SweptSolid");
        using var model = text.Read();
        var body = new BodyReader(model.File, model.Units).Read(shape, Transform3.Identity);
        Assert.Empty(body.Unread);
        return body.Solid;
    }
}
