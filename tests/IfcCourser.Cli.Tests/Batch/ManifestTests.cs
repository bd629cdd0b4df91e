using IfcCourser.Cli.Batch;
using IfcCourser.Cli.Tests.Support;
using IfcCourser.Layouts;

namespace IfcCourser.Cli.Tests.Batch;

public sealed class ManifestTests
{
    [Theory]
    [InlineData("lot,model\n1,a.ifc\n1,b.ifc\n", ":3: the lot \"1\" stands in line 2 already")]
    [InlineData("lot,model\nA1,a.ifc\na1,b.ifc\n", ":3: the lot \"a1\" stands in line 2 already")]
    [InlineData("lot,model\n../1,a.ifc\n", ":2: \"../1\" can't be the name of a folder")]
    [InlineData("lot,model\n1,a.ifc\n.,a.ifc\n", ":3: \".\" can't be the name of a folder")]
    [InlineData("lot,model\nnul.x,a.ifc\n", ":2: \"nul.x\" can't be the name of a folder")]
    [InlineData("lot,model\n\"a:b\",a.ifc\n", ":2: \"a:b\" can't be the name of a folder")]
    [InlineData("lot,model\n,a.ifc\n", ":2: the lot has no name")]
    [InlineData("lot,model\n\n\n7,\n", ":4: the lot \"7\" names no model")]
    [InlineData("lot,model,mirror\n1,a.ifc,maybe\n", ":2: mirror: \"maybe\" is not understood. Write yes or no.")]
    [InlineData("lot,model,rotation\n1,a.ifc,90\n2,a.ifc,quarter\n", ":3: rotation: \"quarter\" is no angle")]
    [InlineData("lot,model,rotation\n1,a.ifc,361\n", ":2: rotation: \"361\" is no angle")]
    [InlineData("lot,model,mirorr\n1,a.ifc,yes\n", ":1: \"mirorr\" is no column of a manifest. Did you mean mirror?")]
    [InlineData("lot,catalog\n1,a.ifc\n", ":1: the column model is missing")]
    [InlineData("lot,model,lot\n1,a.ifc,1\n", ":1: the column lot stands twice")]
    [InlineData("lot,model\n1,a.ifc,yes\n", ":2: the row has 3 cells, the head 2")]
    [InlineData("lot,model\n1,\"a.ifc\n2,b.ifc\n", ":2: a quote opens here and is never closed")]
    [InlineData("lot,model\n", ": the manifest has no lots")]
    [InlineData("", ": the manifest has no lots")]
    public void A_manifest_that_is_wrong_is_told_where_and_why(string text, string expected)
    {
        using var folder = new TemporaryFolder();
        File.WriteAllText(folder.File("lots.csv"), text);

        var fault = Manifest.Read(folder.File("lots.csv")).Fault;

        Assert.StartsWith(folder.File("lots.csv") + expected, fault?.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("lot,model,mirror,rotation,catalog,rules,job,phase\n7,plans/a.ifc,yes,-90,own.toml,eu,jobs/a.toml,\"North, 2\"\n")]
    [InlineData("Phase;Job;Rotation;Mirror;Rules;Catalog;Model;Lot\r\n\"North, 2\";jobs/a.toml; 270 ;TRUE;eu;own.toml;plans/a.ifc;7\r\n")]
    public void A_row_is_a_lot_whatever_the_order_of_columns(string text)
    {
        using var folder = new TemporaryFolder();
        File.WriteAllText(folder.File("lots.csv"), text);

        var lot = Assert.Single(Manifest.Read(folder.File("lots.csv")).Value!);

        Assert.Equal(new Lot("7", "plans/a.ifc", folder.File("plans/a.ifc"), new LotSiting(IsMirrored: true, 270), folder.File("own.toml"), "eu", folder.File("jobs/a.toml"), "North, 2"), lot);
    }

    [Fact]
    public void A_folder_is_its_models_by_name()
    {
        using var folder = new TemporaryFolder();
        foreach (var name in (string[])["b.IFC", "a.ifczip", "notes.txt"])
        {
            File.WriteAllText(folder.File(name), string.Empty);
        }

        Assert.Equal(["a", "b"], Manifest.Read(folder.Path).Value!.Select(lot => lot.Name), StringComparer.Ordinal);
        File.WriteAllText(folder.File("A.ifc"), string.Empty);
        Assert.StartsWith(folder.File("a.ifczip") + ": this model and A.ifc would be one lot", Manifest.Read(folder.Path).Fault?.ToString(), StringComparison.Ordinal);
    }

    /// <summary>RFC 4180, section 2: quotes, doubled quotes, separators and line breaks within quotes.</summary>
    [Fact]
    public void Rows_know_the_line_they_begin_on()
    {
        var rows = CsvRow.Read("a,\"b \"\"c\"\",\n d\"\r\n\r\n e , \nf", ',', "x.csv").Value!;

        Assert.Equal([1, 4, 5], rows.Select(row => row.Line));
        Assert.Equal([["a", "b \"c\",\n d"], ["e", ""], ["f"]], rows.Select(row => row.Cells.ToArray()));
    }
}
