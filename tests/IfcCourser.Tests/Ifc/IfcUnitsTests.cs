namespace IfcCourser.Tests.Ifc;

public sealed class IfcUnitsTests
{
    private const string Assignment = "#1=IFCPROJECT('0YvctVUKr0kugbFTf53O9L',$,$,$,$,$,$,$,#2);#2=IFCUNITASSIGNMENT((#3));";

    // Factors: ISO 80000-1:2022, table 4 (prefixes); the inch is 25.4 mm and the foot 304.8 mm exactly (ISO 80000-3:2019, annex).
    [Theory]
    [InlineData("#3=IFCSIUNIT(*,.LENGTHUNIT.,$,.METRE.);", 1000)]
    [InlineData("#3=IFCSIUNIT(*,.LENGTHUNIT.,.MILLI.,.METRE.);", 1)]
    [InlineData("#3=IFCSIUNIT(*,.LENGTHUNIT.,.CENTI.,.METRE.);", 10)]
    [InlineData("#3=IFCCONVERSIONBASEDUNIT(#9,.LENGTHUNIT.,'FOOT',#4);#4=IFCMEASUREWITHUNIT(IFCLENGTHMEASURE(0.3048),#5);#5=IFCSIUNIT(*,.LENGTHUNIT.,$,.METRE.);", 304.8)]
    [InlineData("#3=IFCCONVERSIONBASEDUNIT(#9,.LENGTHUNIT.,'INCH',#4);#4=IFCMEASUREWITHUNIT(IFCLENGTHMEASURE(25.4),#5);#5=IFCSIUNIT(*,.LENGTHUNIT.,.MILLI.,.METRE.);", 25.4)]
    [InlineData("#3=IFCCONVERSIONBASEDUNIT(#9,.LENGTHUNIT.,'INCH',#4);#4=IFCRATIOMEASURE(0.);", 1000)]
    public void LengthUnitsAreReadInMillimetres(string unit, double expected)
    {
        using var model = IfcSource.Model(Assignment + unit);
        Assert.Equal(expected, model.Units.LengthMm);
    }

    [Theory]
    [InlineData("#3=IFCSIUNIT(*,.AREAUNIT.,$,.SQUARE_METRE.);", 1, true)]
    [InlineData("#3=IFCSIUNIT(*,.AREAUNIT.,.MILLI.,.SQUARE_METRE.);", 1e-6, true)]
    [InlineData("#3=IFCCONVERSIONBASEDUNIT($,.AREAUNIT.,'SQUARE FOOT',#4);#4=IFCMEASUREWITHUNIT(IFCAREAMEASURE(0.09290304),#5);#5=IFCSIUNIT(*,.AREAUNIT.,$,.SQUARE_METRE.);", 0.09290304, true)]
    [InlineData("", 1, false)]
    public void AreaUnitsAreTheirOwnAndNotTheLengthUnitSquared(string unit, double expected, bool isNamed)
    {
        using var model = IfcSource.Model(Assignment + unit);
        Assert.Equal(expected, model.Units.AreaM2, 15);
        Assert.Equal(isNamed, model.Units.HasArea);
    }

    [Fact]
    public void DegreesAreReadInRadians()
    {
        using var model = IfcSource.Model(Assignment +
            "#3=IFCCONVERSIONBASEDUNIT($,.PLANEANGLEUNIT.,'DEGREE',#4);#4=IFCMEASUREWITHUNIT(IFCPLANEANGLEMEASURE(0.0174532925199433),#5);#5=IFCSIUNIT(*,.PLANEANGLEUNIT.,$,.RADIAN.);");
        Assert.Equal(Math.PI / 180, model.Units.AngleRadians, 12);
    }

    [Fact]
    public void WithoutALengthUnitMetresAreAssumedWithAFinding()
    {
        using var model = IfcSource.Model("#1=IFCPROJECT('0YvctVUKr0kugbFTf53O9L',$,$,$,$,$,$,$,$);");
        Assert.Equal(1000, model.Units.LengthMm);
        Assert.False(model.Units.HasLength);
        Assert.Equal("no-length-unit", Assert.Single(model.Findings).Code.Id);
    }
}
