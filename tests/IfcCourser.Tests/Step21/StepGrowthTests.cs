using System.Globalization;
using System.Text;
using IfcCourser.Step21;

namespace IfcCourser.Tests.Step21;

/// <summary>More of everything than tables are made for at first.</summary>
public sealed class StepGrowthTests
{
    /// <summary>Instances of ten bytes, where 56 are reckoned with, of more names than the first table of names holds.</summary>
    [Fact]
    public void ShortInstancesOfManyTypesAreAllFound()
    {
        const int Instances = 3000;
        const int Types = 1100;
        var data = new StringBuilder();
        for (var id = 1; id <= Instances; id++)
        {
            data.Append(CultureInfo.InvariantCulture, $"#{id}=T{id % Types}();\n");
        }

        using var file = StepSource.Data(data.ToString());

        Assert.Equal(Instances, file.Count);
        Assert.All(Enumerable.Range(1, Instances), id => Assert.Equal(FormattableString.Invariant($"T{id % Types}"), file.TypeOf(id)));
        Assert.Equal([7L, 1107L, 2207L], file.InstancesOf("T7"));
        Assert.Empty(file.InstancesOf("T1100"));
    }

    /// <summary>Names of eight letters and more that differ in the middle only.</summary>
    [Fact]
    public void LongNamesThatDifferInTheMiddleAreKeptApart()
    {
        using var file = StepSource.Data("#1=ABCDEFGH_1_ABCDEFGH();\n#2=ABCDEFGH_2_ABCDEFGH();\n#3=abcdefgh_1_abcdefgh();");
        Assert.Equal([1L, 3L], file.InstancesOf("ABCDEFGH_1_ABCDEFGH"));
        Assert.Equal([2L], file.InstancesOf("ABCDEFGH_2_ABCDEFGH"));
    }

    [Theory]
    [InlineData(0L, 4294967295L, 1L, 2L, 3L)]
    [InlineData(4294967296L, 1L, 4294967295L, 2L, 3L)]
    [InlineData(1L, 2L, 3L, 4294967296L, 9223372036854775807L, 0L, 5L, 6L, 7L)]
    public void AColumnKeepsNumbersBelowAndAboveTwoToTheThirtyTwo(params long[] values)
    {
        var column = new StepColumn(2);
        foreach (var value in values)
        {
            column.Add(value);
        }

        Assert.Equal(values, Enumerable.Range(0, column.Count).Select(place => column[place]));
    }

    [Theory]
    [InlineData(64)]
    [InlineData(65)]
    [InlineData(10_000)]
    public void AListMayBeAsLongAsItLikes(int length)
    {
        var numbers = string.Join(',', Enumerable.Range(0, length));
        using var file = StepSource.Data($"#1=THING(({numbers}),(7,({numbers})));\n#2=THING((1,2));");
        var first = file.Find(1)!;
        Assert.Equal(Enumerable.Range(0, length), first[0].AsList.Select(item => (int)item.AsInteger!));
        Assert.Equal(Enumerable.Range(0, length), first[1].AsList[1].AsList.Select(item => (int)item.AsInteger!));
        Assert.Equal([1L, 2L], file.Find(2)![0].AsList.Select(item => item.AsInteger!.Value));
    }

    /// <summary>Lines are counted a megabyte at a time: a line end may lie on both sides of the border.</summary>
    [Theory]
    [InlineData("\n", -1, 2)]
    [InlineData("\r\n", -1, 2)]
    [InlineData("\r\r", -1, 3)]
    [InlineData("\n\r", -1, 3)]
    [InlineData("\n", 0, 2)]
    [InlineData("\r\n", -2, 2)]
    public void LineEndsAtTheBorderOfAMegabyteAreCountedOnce(string lineEnd, int before, int line)
    {
        const int Megabyte = 1 << 20;
        var bytes = Enumerable.Repeat((byte)'a', Megabyte + 10).ToArray();
        Encoding.ASCII.GetBytes(lineEnd).CopyTo(bytes, Megabyte + before);
        using var source = StepBytes.Of(bytes);
        var lines = new StepLines(source);
        Assert.Equal((1, line, line), (lines.Of(Megabyte - 5), lines.Of(Megabyte + 5), lines.Of(Megabyte + 5)));
    }

    /// <summary>What stands before an appended instance is copied a megabyte at a time.</summary>
    [Fact]
    public void AFileOverAMegabyteIsCopiedWhole()
    {
        var text = StepSource.Text($"#1=WALL('{new string('x', 3 << 20)}');");
        using var file = StepSource.Read(text).Value!;
        using var output = new MemoryStream();
        new StepAppender(file, "Tool", []).Write(output, "2024-03-01T12:00:00", "preprocessor 1");
        var written = Encoding.UTF8.GetString(output.ToArray());
        Assert.StartsWith(text[..text.IndexOf("ENDSEC;\nEND-", StringComparison.Ordinal)], written, StringComparison.Ordinal);
        using var copy = StepSource.Read(written).Value!;
        Assert.NotNull(StepFrame.Find(copy, "Tool"));
    }
}
