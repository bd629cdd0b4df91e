using IfcCourser.Rules;

namespace IfcCourser.Tests.Rules;

public sealed class RuleSetReaderTests
{
    [Theory]
    [InlineData("spacing = \"48 in\"", "spacing = \"0 in\"", "bars.spacing must be more than nothing")]
    [InlineData("spacing = \"48 in\"", "", "the key \"bars.spacing\" is missing")]
    [InlineData("spacing = \"48 in\"", "spacing = \"121 in\"", "bars.spacing must not be more than spacing-ceiling")]
    [InlineData("bar = \"No. 4\"\n", "bar = \"No 4\"\n", "bars.bar is \"No 4\", which is no bar or rod in the tables; write it as No. 4")]
    [InlineData("lap = { diameters = 48, least = \"12 in\" }", "lap = { diameters = 48, length = \"12 in\" }", "bars.lap must have one of diameters, table and length")]
    [InlineData("splice = \"lap\"", "splice = \"coupler\"", "the key \"bars.coupler-length\" is missing")]
    [InlineData("preferred-lap-percent = 50", "preferred-lap-percent = 60", "bond.preferred-lap-percent must be a whole number from 1 to 50")]
    [InlineData("datum = \"best\"", "datum = \"middle\"", "openings.datum is \"middle\", which is none of best, start, end, grid")]
    [InlineData("stack = false", "stack = \"no\"", "openings.stack must be true or false")]
    [InlineData("lintel-load-class = 1", "lintel-load-class = 10", "openings.lintel-load-class must be a whole number from 1 to 9")]
    [InlineData("datum = \"best\"", "datum = \"grid\"\ngrid-origin = { x = \"0 in\" }", "the key \"openings.grid-origin.y\" is missing")]
    [InlineData("least = \"4 in\", largest = \"8 in\"", "least = \"9 in\", largest = \"8 in\"", "bars.from-end.least must not be negative nor more than largest")]
    [InlineData("drilled-under = \"8 in\"", "drilled-under = \"-8 in\"", "openings.drilled-under must not be negative")]
    [InlineData("tie-every-nth-bed = 2", "tie-every-bed = 2", "there is no key \"junctions.tie-every-bed\"")]
    [InlineData("void = \"masonry\"\nframe = { side = \"2 in\"", "void = \"wood\"\nframe = { side = \"2 in\"", "openings.door.void is \"wood\", which is none of masonry, rough, frame, leaf")]
    [InlineData("shim = { side = \"1/4 in\"", "shim = { side = \"-1/4 in\"", "openings.window.shim.side must not be negative")]
    [InlineData("\"cut-courses\", \"corners\"", "\"corners\"", "heights.aims must name each of cut-courses, corners, heads, lift, mortar, sills, first-course, other-heights, bed once")]
    [InlineData("\"cut-courses\", \"corners\"", "\"corners\", \"corners\"", "heights.aims must name each of")]
    [InlineData("storey-start = \"slab\"", "storey-start = \"floor\"", "heights.storey-start is \"floor\", which is none of slab, continuous")]
    [InlineData("tops = \"level\"", "tops = \"all\"", "bond-beams.tops is \"all\", which is none of none, level, raked")]
    [InlineData("heights = []", "heights = [\"0 ft\"]", "bond-beams.heights must be more than nothing")]
    [InlineData("largest-spacing = \"120 in\"", "largest-spacing = \"0 in\"", "bond-beams.largest-spacing must be more than nothing")]
    [InlineData("extension = \"24 in\"", "extension = \"-24 in\"", "bond-beams.openings.extension must not be negative")]
    [InlineData("bars = 1", "bars = 0", "bond-beams.bars must be a whole number from 1 to 8")]
    [InlineData("stock = \"20 ft\"", "stock = \"9 ft\"", "bond-beams.stock must be at least five laps, so that laps can be staggered")]
    public void A_wrong_rule_is_named_with_its_key(string replace, string with, string what)
    {
        var text = SettingsReader.BuiltInText("us")!;
        Assert.Contains(replace, text, StringComparison.Ordinal);

        var fault = RuleSetReader.Read(text.Replace(replace, with, StringComparison.Ordinal), "mine.toml").Fault!;

        Assert.StartsWith(what, fault.What, StringComparison.Ordinal);
        Assert.Equal("mine.toml", fault.File);
        Assert.NotNull(fault.Line);
    }

    [Fact]
    public void The_order_of_the_aims_is_the_files()
    {
        var text = SettingsReader.BuiltInText("eu")!.Replace("[\"cut-courses\", \"corners\", ", "[\"corners\", \"cut-courses\", ", StringComparison.Ordinal);
        Assert.Equal([HeightAim.Corners, HeightAim.CutCourses, HeightAim.Heads], RuleSetReader.Read(text, "mine.toml").Value!.HeightAims.Take(3));
    }
}
