using System.IO.Compression;
using System.Security.Cryptography;
using System.Text;
using CsCheck;
using IfcCourser.Ifc;

namespace IfcCourser.Tests.Ifc;

public sealed class IfcModelTests
{
    [Fact]
    public void TheModelKnowsItsFileAndProject()
    {
        using var model = IfcSource.Model(IfcSource.Project, "IFC4X3_ADD2");
        Assert.Equal(("house.ifc", "IFC4X3", "2024-03-01T12:00:00"), (model.FileName, model.SchemaName, model.TimeStamp));
        Assert.Equal(("0YvctVUKr0kugbFTf53O9L", "House"), (model.ProjectId, model.ProjectName));
        var bytes = Encoding.ASCII.GetBytes(IfcSource.Text(IfcSource.Project, "IFC4X3_ADD2"));
        Assert.Equal(Convert.ToHexStringLower(SHA256.HashData(bytes)), model.Sha256);
    }

    [Theory]
    [InlineData("IFC2X3", IfcSchema.Ifc2X3)]
    [InlineData("ifc4", IfcSchema.Ifc4)]
    [InlineData("IFC4_ADD2", IfcSchema.Ifc4)]
    [InlineData("IFC4X3", IfcSchema.Ifc4X3)]
    public void SchemasAreToldByTheirNames(string name, IfcSchema expected)
    {
        using var model = IfcSource.Model(IfcSource.Project, name);
        Assert.Equal(expected, model.Schema);
    }

    [Theory]
    [InlineData("IFC2X2_FINAL")]
    [InlineData("IFC4X1")]
    [InlineData("AUTOMOTIVE_DESIGN")]
    public void AnotherSchemaIsAFaultThatNamesIt(string name) =>
        Assert.Contains(name, IfcSource.Read(IfcSource.Project, name).Fault!.What, StringComparison.Ordinal);

    [Fact]
    public void AMalformedInstanceIsAFindingThatNamesItsLine()
    {
        using var model = IfcSource.Model("#9=IFCWALL('x';\n" + IfcSource.Project);
        var finding = Assert.Single(model.Findings);
        Assert.Equal("instance-skipped", finding.Code.Id);
        Assert.Contains(":8 #9:", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void DamageIsAFaultOrAFindingAndNeverAnException()
    {
        var text = IfcWallReaderTests.House.ReplaceLineEndings("\n");
        var original = Encoding.ASCII.GetBytes(IfcSource.Text(text, "IFC2X3"));
        var alphabet = Encoding.ASCII.GetBytes("'(),;#$*./=\\\n 19E\"");
        var change = Gen.Select(Gen.Int[0, original.Length - 1], Gen.Int[0, alphabet.Length - 1].Select(i => alphabet[i]));
        change.Array[1, 8].ForAll(changes =>
        {
            var bytes = original.ToArray();
            foreach (var (place, value) in changes)
            {
                bytes[place] = value;
            }

            var outcome = IfcModel.Read("house.ifc", bytes);
            if (outcome.IsOk)
            {
                using var model = outcome.Value;
                Assert.All(model.Walls, wall => Assert.False(model.PropertySets(wall.StepId).IsDefault));
            }
            else
            {
                Assert.NotEmpty(outcome.Fault.What);
            }
        });
    }

    [Fact]
    public void AZipWithOneModelIsReadAndOthersAreFaults()
    {
        var folder = Directory.CreateTempSubdirectory();
        var one = Zip("one.ifczip", "readme.txt", "sub/house.IFC");
        using (var model = IfcModel.Open(one).Value!)
        {
            Assert.Equal("House", model.ProjectName);
            Assert.Equal("one.ifczip", model.FileName);
            Assert.Equal(Convert.ToHexStringLower(SHA256.HashData(File.ReadAllBytes(one))), model.Sha256);
        }

        Assert.Contains("no .ifc", IfcModel.Open(Zip("none.ifczip", "readme.txt")).Fault!.What, StringComparison.Ordinal);
        Assert.Contains("more than one", IfcModel.Open(Zip("two.ifczip", "a.ifc", "b.ifc")).Fault!.What, StringComparison.Ordinal);
        var broken = Path.Combine(folder.FullName, "broken.ifczip");
        File.WriteAllText(broken, IfcSource.Text(IfcSource.Project));
        Assert.Contains("no zip archive", IfcModel.Open(broken).Fault!.What, StringComparison.Ordinal);
        Assert.Contains("no such file", IfcModel.Open(broken + ".ifczip").Fault!.What, StringComparison.Ordinal);
        folder.Delete(recursive: true);

        string Zip(string name, params string[] entries)
        {
            var path = Path.Combine(folder.FullName, name);
            using var archive = ZipFile.Open(path, ZipArchiveMode.Create);
            foreach (var entry in entries)
            {
                using var writer = new StreamWriter(archive.CreateEntry(entry).Open());
                writer.Write(IfcSource.Text(IfcSource.Project));
            }

            return path;
        }
    }
}
