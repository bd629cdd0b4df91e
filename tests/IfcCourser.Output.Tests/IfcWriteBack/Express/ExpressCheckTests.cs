using System.Text;
using IfcCourser.Ifc;
using IfcCourser.Layouts;
using IfcCourser.Output.IfcWriteBack.Openings;
using IfcCourser.Output.IfcWriteBack.Parts;
using IfcCourser.Output.Tests.Support;

namespace IfcCourser.Output.Tests.IfcWriteBack.Express;

public sealed class ExpressCheckTests
{
    /// <summary>IFC4 in feet with bars, IFC2X3 in metres, IFC4X3 in millimetres without a unit of its own for anything else.</summary>
    [Theory]
    [InlineData("yarrow/yarrow")]
    [InlineData("teasel/teasel")]
    [InlineData("bodies/ifc4x3")]
    public void WhatIsAddedKeepsTheSchemasTypesAndRules(string model)
    {
        Action<IfcModel, Layout, Stream>[] writers = [Output.IfcWriteBack.IfcWriteBack.Write, IfcParts.Write, IfcMovedOpenings.Write];
        foreach (var write in writers)
        {
            using var original = FixtureLayouts.Open(model);
            using var written = Written(original, model, write);
            Assert.Empty(ExpressCheck.Problems(written, original));
        }
    }

    [Theory]
    [InlineData(".USERDEFINED.", ".WRONG.", "BUILDINGELEMENTPART")]
    [InlineData(",'unit',", ",$,", "CorrectPredefinedType")]
    [InlineData("IFCGRIDAXIS('0',", "IFCGRIDAXIS(5,", "IFCGRIDAXIS.AxisTag")]
    [InlineData("IFCSWEPTDISKSOLID(#", "IFCSWEPTDISKSOLID(1.,#", "attributes")]
    [InlineData("'AdvancedSweptSolid'", "'SweptSolid'", "CorrectItemsForType")]
    [InlineData(".MAIN.,.TEXTURED.", ".MAIN.,.SMOOTH.", "BarSurface")]
    [InlineData(",IFCCOUNTMEASURE(", ",IFCNOMEASURE(", "NominalValue")]
    [InlineData("IFCDIRECTION((0.,0.,1.))", "IFCDIRECTION((0.,0.,0.))", "MagnitudeGreaterZero")]
    public void ABrokenAdditionIsFound(string text, string broken, string expected)
    {
        const string Wall = "bodies/rectangle-profile";
        using var original = FixtureLayouts.Open(Wall);
        using var output = new MemoryStream();
        IfcParts.Write(original, FixtureLayouts.Of(Wall), output);
        var whole = Encoding.ASCII.GetString(output.ToArray());
        var at = whole.LastIndexOf(text, StringComparison.Ordinal);
        Assert.True(at > 0);
        using var written = Read(whole[..at] + broken + whole[(at + text.Length)..]);
        Assert.Contains(ExpressCheck.Problems(written, original), problem => problem.Contains(expected, StringComparison.Ordinal));
    }

    private static IfcModel Written(IfcModel original, string model, Action<IfcModel, Layout, Stream> write)
    {
        using var output = new MemoryStream();
        write(original, FixtureLayouts.Of(model), output);
        return Read(Encoding.ASCII.GetString(output.ToArray()));
    }

    private static IfcModel Read(string text) => IfcModel.Read("written.ifc", Encoding.ASCII.GetBytes(text)).Value!;
}
