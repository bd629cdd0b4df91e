using System.Text;
using IfcCourser.Catalogs;
using IfcCourser.Findings;
using IfcCourser.Ifc;
using IfcCourser.Rules;
using IfcCourser.Tests.Ifc;
using IfcCourser.Walls;

namespace IfcCourser.Tests.Walls;

/// <summary>What real files do to their readers, on small invented models: each is survived, and named where it matters.</summary>
public sealed class OddityTests
{
    /// <summary>A wall of 4000 x 240 x 2500 units: in metres, and written in metres but marked as millimetres.</summary>
    [Theory]
    [InlineData("$", 4000, 240, 2500, "size-implausible")]
    [InlineData(".MILLI.", 4, 0.24, 2.5, "size-implausible")]
    [InlineData(".MILLI.", 4000, 240, 2500, null)]
    [InlineData("$", 4, 0.24, 2.5, null)]
    public void A_wrong_length_unit_is_told_by_the_size_of_the_walls(string prefix, double length, double thickness, double height, string? code)
    {
        var model = Walls(Wall("10", length, thickness, height), prefix);
        Assert.Equal(code, model.Skipped.SingleOrDefault()?.Reason.Code.Id);
        Assert.Equal(code is null ? 1 : 0, model.Walls.Length);
    }

    [Fact]
    public void Walls_without_placement_storey_name_or_type_are_read()
    {
        var wall = Assert.Single(Walls(Wall("10", 4000, 240, 2500)).Walls);
        Assert.Equal((null, null, null, "wall #10"), (wall.Identity.Name, wall.Identity.Storey, wall.Identity.Type, wall.Identity.Label));
    }

    [Fact]
    public void Names_in_raw_utf8_and_in_western_bytes_are_read()
    {
        var text = IfcSource.Text(IfcSource.Project + Wall("10", 4000, 240, 2500, name: "'Wände'"));
        foreach (var encoding in new[] { Encoding.UTF8, Encoding.Latin1 })
        {
            Assert.Equal("Wände", Assert.Single(Walls(encoding.GetBytes(text)).Walls).Identity.Name);
        }
    }

    [Fact]
    public void Walls_of_one_GlobalId_are_both_laid_out_and_the_later_is_renamed()
    {
        var model = UniqueIds.Of(Walls(Wall("10", 4000, 240, 2500) + Wall("30", 4000, 240, 2500, at: 5000)));
        Assert.Equal(2, model.Walls.Select(wall => wall.Identity.GlobalId).Distinct(StringComparer.Ordinal).Count());
        Assert.Equal(FindingCodes.DuplicateGlobalId, Assert.Single(model.Findings).Code);
    }

    [Fact]
    public void Walls_without_storey_and_with_ids_that_are_none_are_noted_once_for_all()
    {
        using var model = IfcSource.Model(
            IfcSource.Project + "#10=IFCWALL('0YvctVUKr0kugbFTf53O9L',$,$,$,$,$,$,$,$);\n#11=IFCWALL('4YvctVUKr0kugbFTf53O9L',$,$,$,$,$,$,$,$);\n#12=IFCWALL('{guid}',$,$,$,$,$,$,$,$);");
        Assert.Equal(
            ["Of 3 walls 2 have GlobalIds that are none, as \"4YvctVUKr0kugbFTf53O9L\" of #11.", "Of 3 walls 3 belong to no storey, as #10."],
            IdentityNotes.Of(model).Select(finding => finding.Message),
            StringComparer.Ordinal);
    }

    [Theory]
    [InlineData("#10=IFCWALL();", "no-body")]
    [InlineData("#10=IFCWALL('0YvctVUKr0kugbFTf53O9L');", "no-body")]
    [InlineData("#10=IFCWALL($,$,$,$,$,$,$,$,$,$,$,$,$,$);", "no-body")]
    [InlineData("#10=IFCWALL(5,.T.,#10,(1,2),IFCLABEL('x'),'no',#10,3.,.X.);", "no-body")]
    [InlineData("#10=IFCWALL('0YvctVUKr0kugbFTf53O9L',$,'W',$,$,$,#11,$,$);\n#11=IFCPRODUCTDEFINITIONSHAPE($,$,());", "no-body")]
    [InlineData("#10=IFCWALL('0YvctVUKr0kugbFTf53O9L',$,'W',$,$,$,#11,$,$);\n#11=IFCPRODUCTDEFINITIONSHAPE($,$,(#99,#12));\n#12=IFCSHAPEREPRESENTATION($,'Body','SweptSolid',(#98,$,5));", "no-body")]
    [InlineData("#10=IFCWALL('0YvctVUKr0kugbFTf53O9L',$,'W',$,$,$,#11,$,$);\n#11=IFCPRODUCTDEFINITIONSHAPE($,$,(#12));\n#12=IFCSHAPEREPRESENTATION($,'Body','SweptSolid',(#13));\n#13=IFCEXTRUDEDAREASOLID($,$,$,$);", "body-not-read")]
    [InlineData("#10=IFCWALL('0YvctVUKr0kugbFTf53O9L',$,'W',$,$,$,#11,$,$);\n#11=IFCPRODUCTDEFINITIONSHAPE($,$,(#12));\n#12=IFCSHAPEREPRESENTATION($,'Body','SweptSolid',(#12));", "body-not-read")]
    public void Null_and_miscounted_attributes_leave_a_wall_that_is_skipped_with_its_reason(string data, string reason) =>
        Assert.Equal(reason, Assert.Single(Walls(data).Skipped).Reason.Code.Id);

    /// <summary>The wall's placement is relative to nothing that exists, its materials and openings are half there.</summary>
    [Fact]
    public void Dangling_references_cost_no_wall()
    {
        var model = Walls(Wall("10", 4000, 240, 2500)
            + "#50=IFCRELVOIDSELEMENT('1YvctVUKr0kugbFTf53O9L',$,$,$,#10,#51);\n#51=IFCOPENINGELEMENT('2YvctVUKr0kugbFTf53O9L',$,$,$,$,#97,#96,$,$);\n"
            + "#52=IFCRELFILLSELEMENT('3YvctVUKr0kugbFTf53O9L',$,$,$,#51,#95);\n#53=IFCRELAGGREGATES('0ZvctVUKr0kugbFTf53O9L',$,$,$,#94,(#10));\n"
            + "#54=IFCRELASSIGNSTOGROUP('1ZvctVUKr0kugbFTf53O9L',$,$,$,(#10),$,#93);\n#55=IFCRELCONNECTSPATHELEMENTS('2ZvctVUKr0kugbFTf53O9L',$,$,$,$,#10,#92,(),(),.ATEND.,.ATSTART.);\n");
        Assert.Equal(FindingCodes.OpeningNotRead, Assert.Single(Assert.Single(model.Walls).Findings).Code);
    }

    private static string Wall(string id, double length, double thickness, double height, string name = "$", double at = 0)
    {
        var n = int.Parse(id, System.Globalization.CultureInfo.InvariantCulture);
        string Real(double value) => value.ToString("0.0###", System.Globalization.CultureInfo.InvariantCulture);
        return FormattableString.Invariant($"""
            #{n}=IFCWALL('0YvctVUKr0kugbFTf53O9L',$,{name},$,$,$,#{n + 1},$,$);
            #{n + 1}=IFCPRODUCTDEFINITIONSHAPE($,$,(#{n + 2}));
            #{n + 2}=IFCSHAPEREPRESENTATION($,'Body','SweptSolid',(#{n + 3}));
            #{n + 3}=IFCEXTRUDEDAREASOLID(#{n + 4},#{n + 7},#{n + 9},{Real(height)});
            #{n + 4}=IFCRECTANGLEPROFILEDEF(.AREA.,$,#{n + 5},{Real(length)},{Real(thickness)});
            #{n + 5}=IFCAXIS2PLACEMENT2D(#{n + 6},$);
            #{n + 6}=IFCCARTESIANPOINT(({Real(at)},0.));
            #{n + 7}=IFCAXIS2PLACEMENT3D(#{n + 8},$,$);
            #{n + 8}=IFCCARTESIANPOINT((0.,{Real(at)},0.));
            #{n + 9}=IFCDIRECTION((0.,0.,1.));

            """);
    }

    private static WallModel Walls(string data, string prefix = ".MILLI.") => Walls(Encoding.UTF8.GetBytes(IfcSource.Text(
        IfcSource.Project.Replace("IFCSIUNIT(*,.LENGTHUNIT.,.MILLI.,", $"IFCSIUNIT(*,.LENGTHUNIT.,{prefix},", StringComparison.Ordinal) + data)));

    private static WallModel Walls(byte[] file)
    {
        var outcome = IfcModel.Read("test.ifc", file);
        Assert.True(outcome.IsOk, outcome.Fault?.ToString());
        using var model = outcome.Value;
        return WallReader.Read(
            model, new WallSelection { Walls = WallChoice.All, Width = WidthMatch.Any }, BuiltInCatalogs.Get("aac-mm"), BuiltInRuleSets.Get("eu"));
    }
}
