using System.Globalization;
using System.Text;
using IfcCourser.Geometry;
using IfcCourser.Ifc;
using IfcCourser.Layouts;
using IfcCourser.Output.IfcWriteBack;
using IfcCourser.Output.IfcWriteBack.Openings;
using IfcCourser.Output.Tests.Json;
using IfcCourser.Output.Tests.Support;
using IfcCourser.Step21;

namespace IfcCourser.Output.Tests.IfcWriteBack;

public sealed class IfcWriteBackTests
{
    /// <summary>Instance numbers are those of <see cref="SampleLayout"/>; 51 fills the opening.</summary>
    private const string House =
        """
        #1=IFCPROJECT('0YvctVUKr0kugbFTf53O9L',OWNER,'House',$,$,$,$,$,#2);
        #2=IFCUNITASSIGNMENT((#3,#4));
        #3=IFCSIUNIT(*,.LENGTHUNIT.,.MILLI.,.METRE.);
        #4=IFCSIUNIT(*,.AREAUNIT.,.MILLI.,.SQUARE_METRE.);
        #5=IFCOWNERHISTORY($,$,$,.ADDED.,1,$,$,1);
        #10=IFCWALL('1UcKJVh1wiUc0jPM8BIIf8',OWNER,'A',$,$,$,$,$);
        #20=IFCWALL('2UcKJVh1wiUc0jPM8BIIf8',OWNER,'B',$,$,$,$,$);
        #30=IFCWALL('0UcKJVh1wiUc0jPM8BIIf8',OWNER,'C',$,$,$,$,$);
        #40=IFCWALL('3UcKJVh1wiUc0jPM8BIIf8',OWNER,'D',$,$,$,$,$);
        #50=IFCOPENINGELEMENT('0VcKJVh1wiUc0jPM8BIIf8',OWNER,'O',$,$,$,$,$);
        #51=IFCWINDOW('1VcKJVh1wiUc0jPM8BIIf8',OWNER,'F',$,$,$,$,$,1.,1.);
        """;

    private static readonly Layout _layout = SampleLayout.Full with
    {
        Walls = [.. SampleLayout.Full.Walls.Select(wall => wall with
        {
            Openings = [.. wall.Openings.Select(opening => opening with { Opening = opening.Opening with { FillingStepId = 51 } })],
        })],
    };

    [Theory]
    [InlineData("IFC2X3")]
    [InlineData("IFC4")]
    [InlineData("IFC4X3")]
    public void EveryWallSaysWhatBecameOfIt(string schema)
    {
        using var model = Read(Write(schema));
        Assert.Equal("coursed skipped coursed skipped", string.Join(' ', model.Walls.Select(wall => Value(model, wall.StepId, "Status").AsString)));
        Assert.Equal("no-body", Value(model, 20, "Reason").AsString);
        Assert.Equal("not-selected", Value(model, 40, "Reason").AsString);
        Assert.All(model.Walls, wall => Assert.StartsWith("IfcCourser ", Value(model, wall.StepId, "Generator").AsString, StringComparison.Ordinal));
        Assert.Equal(("us", "aac-in"), (Value(model, 10, "Rules").AsString, Value(model, 10, "Catalog").AsString));
        Assert.Empty(model.Findings);
    }

    [Fact]
    public void ValuesBearTheMeasureTypeThatIsProperToThem()
    {
        using var model = Read(Write("IFC4"));
        Assert.Equal("IFCLENGTHMEASURE", Value(model, 10, "LevelLine").TypeName);
        Assert.Equal("IFCCOUNTMEASURE", Value(model, 10, "Cuts").TypeName);
        Assert.Equal(StepValueKind.Integer, Value(model, 10, "Cuts").Inner.Kind);
        Assert.Equal("IFCBOOLEAN", Value(model, 50, "OnModule").TypeName);
        Assert.Equal("IFCIDENTIFIER", Value(model, 20, "Reason").TypeName);
    }

    [Theory]
    [InlineData("IFC2X3", 4)]
    [InlineData("IFC4", 5)]
    [InlineData("IFC4X3", 5)]
    public void QuantitiesAreInTheModelsUnitsWithTheAttributesOfTheSchema(string schema, int attributes)
    {
        using var model = Read(Write(schema));
        var set = Assert.Single(model.PropertySets(10), set => set.IsQuantities);
        var area = Assert.Single(set.Values, value => value.Name is "GrossArea");

        // 1.23456789 m2 in a project whose areas are in square millimetres.
        Assert.Equal(1_234_567.89, area.Value.AsReal!.Value, 6);
        Assert.Equal(1.23456789, area.Si!.Value, 12);

        // The project names no volume unit: the quantity names its own.
        var volume = model.Instances.All("IFCQUANTITYVOLUME").First();
        Assert.Equal("CUBIC_METRE", model.Follow(volume["Unit"])!.Value["Name"].AsEnumeration);
        Assert.Equal(attributes, volume.Arguments.Length);
        Assert.Equal(StepValueKind.Integer, model.Instances.All("IFCQUANTITYCOUNT").First()["CountValue"].Kind);
    }

    [Fact]
    public void AnOpeningAndItsFillingShareOneSetThoughTwoWallsHoldThem()
    {
        using var model = Read(Write("IFC4"));
        Assert.Single(model.PropertySets(50));
        Assert.Equal(model.PropertySets(50).Single().StepId, model.PropertySets(51).Single().StepId);
        Assert.Equal("window", Value(model, 51, "Kind").AsString);
    }

    [Theory]
    [InlineData("IFC2X3", "$", true)]
    [InlineData("IFC2X3", "#5", true)]
    [InlineData("IFC4", "#5", true)]
    [InlineData("IFC4", "$", false)]
    [InlineData("IFC4X3", "$", false)]
    public void TheOwnerHistoryIsOurOwnWhereTheSchemaOrTheModelAsksForOne(string schema, string owner, bool isExpected)
    {
        using var model = Read(Write(schema, owner));
        var set = model.Instances.All("IFCPROPERTYSET").First();
        var history = model.Follow(set["OwnerHistory"]);
        Assert.Equal(isExpected, history is not null);
        if (history is { } own)
        {
            Assert.NotEqual(5, own.Id);
            Assert.Equal("ADDED", own["ChangeAction"].AsEnumeration);

            // 2026-01-02 is 20,455 days after 1970-01-01: 56 years, 14 leap days, 1 day.
            Assert.Equal(((56 * 365) + 14 + 1) * 86_400, own["LastModifiedDate"].AsInteger);
        }
    }

    [Fact]
    public void TheHeaderBearsTheDateOfTheLayoutAndNotTheClocks()
    {
        using var model = Read(Write("IFC4"));
        Assert.Equal("2026-01-02T00:00:00", model.TimeStamp);
        Assert.Equal("s", model.File.Header.OriginatingSystem);
    }

    [Fact]
    public void WritingAgainGivesTheSameBytesUnderAnyCulture()
    {
        var once = Write("IFC2X3");
        CultureInfo.CurrentCulture = new CultureInfo("tr-TR");
        Assert.Equal(once, Write("IFC2X3"));
        Assert.Equal(once, WriteBack(once));
    }

    /// <summary>As other programs save: comments gone, instances renumbered and in another order, GlobalIds of our sets replaced.</summary>
    [Fact]
    public void SetsOfAnEarlierRunAreReplacedInAFileThatAnotherProgramSaved()
    {
        var original = Text("IFC2X3", "#5");
        var saved = SavedByOther(Write("IFC2X3"));
        using var before = Read(saved);
        using var after = Read(WriteBack(saved, id => id + 1000));
        Assert.Equal(4, after.Instances.All("IFCPROPERTYSET").Count(set => set["Name"].AsString is "IfcCourser_Coursing"));
        Assert.Equal(2, after.Instances.All("IFCOWNERHISTORY").Count());
        Assert.Single(after.Instances.All("IFCAPPLICATION"));
        Assert.Equal(2, after.Instances.All("IFCELEMENTQUANTITY").Count());
        using var first = Read(original);
        foreach (var id in first.File.Ids)
        {
            Assert.Equal(Encoding.ASCII.GetString(before.File.TextOf(id + 1000)), Encoding.ASCII.GetString(after.File.TextOf(id + 1000)));
        }

        var known = before.File.Ids.ToArray().ToHashSet();
        Assert.All(after.Instances.All("IFCPROPERTYSET"), set => Assert.DoesNotContain(set.Id, known));
    }

    [Fact]
    public void ASetOfThatNameByOthersStays()
    {
        var text = Text("IFC4", "$").Replace(
            "\nENDSEC;\nEND-",
            "\n#90=IFCPROPERTYSET('1WcKJVh1wiUc0jPM8BIIf8',$,'IfcCourser_Coursing',$,(#91));\n#91=IFCPROPERTYSINGLEVALUE('Status',$,IFCLABEL('mine'),$);\nENDSEC;\nEND-",
            StringComparison.Ordinal);
        using var model = Read(WriteBack(text));
        Assert.True(model.File.Contains(90));
        Assert.True(model.File.Contains(91));
    }

    /// <summary>
    /// The designer accepts the model with moved openings and it is coursed again: placements that were replaced refer to points that were added, so that nothing of these may
    /// be cut. Every reference leads somewhere, openings stand where they were moved to, and each wall has one set.
    /// </summary>
    [Fact]
    public void AModelWithMovedOpeningsIsCoursedAgain()
    {
        const string Model = "yarrow/yarrow";
        var layout = FixtureLayouts.Of(Model);
        using var original = FixtureLayouts.Open(Model);
        var changes = OpeningChange.Of(original, layout).Where(change => change.IsMoved).Select(change => change.Opening.Opening.StepId!.Value).ToList();
        Assert.NotEmpty(changes);
        using var moved = Written(original, layout, IfcMovedOpenings.Write);
        using var again = Written(moved, layout, Output.IfcWriteBack.IfcWriteBack.Write);
        Assert.All(changes, opening => Assert.NotEqual(OriginOf(original, opening), OriginOf(again, opening)));
        Assert.All(changes, opening => Assert.Equal(OriginOf(moved, opening), OriginOf(again, opening)));
        Assert.Equal(original.Walls.Length, again.Instances.All("IFCPROPERTYSET").Count(set => set["Name"].AsString is "IfcCourser_Coursing"));
        Assert.DoesNotContain(again.File.Ids.ToArray().SelectMany(id => Referrals.Of(again.File, id)), id => !again.File.Contains(id));
    }

    [Fact]
    public void AProjectWithoutALengthUnitGetsLengthsInMetresThatSaySo()
    {
        using var model = Read(WriteBack(Text("IFC4", "$").Replace("(#3,#4)", "(#4)", StringComparison.Ordinal)));
        var value = model.Instances.All("IFCPROPERTYSINGLEVALUE").First(property => property["Name"].AsString is "ModelLeft");
        var unit = model.Follow(value["Unit"])!.Value;
        Assert.Equal(("LENGTHUNIT", "METRE"), (unit["UnitType"].AsEnumeration, unit["Name"].AsEnumeration));
        Assert.True(unit["Prefix"].IsNothing);
        Assert.Equal(_layout.Walls[0].Openings[0].Opening.Model.Left.Mm / 1000, value["NominalValue"].AsReal!.Value, 9);
    }

    /// <summary>ISO 10303-21:2016, signature section, from memory: a signature covers the bytes before it, which are others now.</summary>
    [Fact]
    public void ASignatureThatIsLeftOutIsTold()
    {
        var text = Text("IFC4", "$");
        using var model = Read(text);
        using var signed = Read(text.TrimEnd() + "\nSIGNATURE;\nabc\nENDSEC;\n");
        Assert.Empty(Output.IfcWriteBack.IfcWriteBack.Findings(model));
        Assert.Equal("signature-dropped", Assert.Single(Output.IfcWriteBack.IfcWriteBack.Findings(signed)).Code.Id);
    }

    private static Vector3 OriginOf(IfcModel model, long product) => model.Placement(model.Find(product)!.Value["ObjectPlacement"].AsReference).Origin;

    private static IfcModel Written(IfcModel model, Layout layout, Action<IfcModel, Layout, Stream> write)
    {
        using var output = new MemoryStream();
        write(model, layout, output);
        return IfcModel.Read("house.ifc", output.ToArray()).Value!;
    }

    private static StepValue Value(IfcModel model, long element, string name) =>
        model.PropertySets(element).Where(set => !set.IsQuantities).SelectMany(set => set.Values).Single(value => value.Name == name).Value;

    private static string Text(string schema, string owner) =>
        $"""
        ISO-10303-21;
        HEADER;
        FILE_DESCRIPTION((''),'2;1');
        FILE_NAME('house.ifc','2024-03-01T12:00:00',(''),(''),'p','s','');
        FILE_SCHEMA(('{schema}'));
        ENDSEC;
        DATA;
        {House.Replace(",OWNER,", $",{owner},", StringComparison.Ordinal)}
        ENDSEC;
        END-ISO-10303-21;
        """;

    private static IfcModel Read(string text) => IfcModel.Read("house.ifc", Encoding.ASCII.GetBytes(text)).Value!;

    private static string Write(string schema, string owner = "#5") => WriteBack(Text(schema, owner));

    private static string WriteBack(string text) => WriteBack(text, id => id);

    private static string WriteBack(string text, Func<long, long> number)
    {
        using var model = Read(text);
        using var output = new MemoryStream();
        Output.IfcWriteBack.IfcWriteBack.Write(model, Renumbered(number), output);
        return Encoding.ASCII.GetString(output.ToArray());
    }

    private static Layout Renumbered(Func<long, long> number) => _layout with
    {
        Walls = [.. _layout.Walls.Select(wall => wall with
        {
            Wall = wall.Wall with { Identity = wall.Identity with { StepId = number(wall.Identity.StepId) } },
            Openings = [.. wall.Openings.Select(opening => opening with
            {
                Opening = opening.Opening with { StepId = number(opening.Opening.StepId!.Value), FillingStepId = number(51) },
            })],
        })],
        Skipped = [.. _layout.Skipped.Select(wall => wall with { Identity = wall.Identity with { StepId = number(wall.Identity.StepId) } })],
    };

    private static string SavedByOther(string text)
    {
        var lines = text.ReplaceLineEndings("\n").Split('\n').Where(line => !line.StartsWith("/*", StringComparison.Ordinal)).ToList();
        var renumbered = lines.Select(line => System.Text.RegularExpressions.Regex.Replace(
            line, "'[^']*'|#(?<id>[0-9]+)", match => match.Groups["id"].Success ? $"#{1000 + long.Parse(match.Groups["id"].Value, CultureInfo.InvariantCulture)}" : match.Value,
            System.Text.RegularExpressions.RegexOptions.None, TimeSpan.FromSeconds(1))).ToList();
        var instances = renumbered.Where(line => line.StartsWith('#')).Reverse().Select((line, i) =>
            line.Contains("IfcCourser_", StringComparison.Ordinal) ? line[..(line.IndexOf('\'', StringComparison.Ordinal) + 1)] + $"{i:D22}" + line[(line.IndexOf('\'', StringComparison.Ordinal) + 23)..] : line);
        var start = renumbered.FindIndex(line => line.StartsWith('#'));
        return string.Join('\n', [.. renumbered[..start], .. instances, "ENDSEC;", "END-ISO-10303-21;", string.Empty]);
    }
}
