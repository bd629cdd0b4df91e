using System.Text;
using IfcCourser.Findings;
using IfcCourser.Step21;

namespace IfcCourser.Tests.Step21;

public sealed class StepAppenderTests
{
    private const string Data = "#1=WALL('a');\n#7=WALL('b'); /* last; */ ";

    [Fact]
    public void TheOriginalBytesAreKeptUpToTheLastInstance()
    {
        var text = StepSource.Text(Data);
        var written = Append(text);
        var original = text[text.IndexOf("DATA;", StringComparison.Ordinal)..text.LastIndexOf("ENDSEC;", StringComparison.Ordinal)].TrimEnd();
        Assert.Contains(original + "\n#8=LABEL('x',$,(#1,2.5));\nENDSEC;\n", written, StringComparison.Ordinal);
        using var file = StepSource.Read(written).Value!;
        Assert.Equal("x", file.Find(8)![0].AsString);
        Assert.Empty(file.Faults);
    }

    /// <summary>Every byte of the copy, the hash worked out here: SHA-256 of all that stands before the comment.</summary>
    [Fact]
    public void TheWholeCopyIsTheOriginalWithWhatWasAddedAndAFrame()
    {
        const string Before = "ISO-10303-21;\nHEADER;\nFILE_NAME('n',{0},(''),(''),{1},'o','');\nENDSEC;\nDATA;\n#1=A();";
        const string After = "\n#2=LABEL('x',$,(#1,2.5));\nENDSEC;\n";
        const string End = "\nEND-ISO-10303-21;\n/* kept */";
        var text = string.Format(null, Before, "'it''s'", "$ /* none */") + " \t\n\nENDSEC ;" + End;
        var start = string.Format(null, Before, "'2025-01-01'", "'tool' /* none */");
        var hash = Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(Encoding.UTF8.GetBytes(start + After)));
        var comment = $"/* Tool: instances added from byte {start.Length + 1} on; sha256 of all bytes before this comment: {hash} */";
        Assert.Equal(start + After + comment + End, Append(text));
    }

    [Theory]
    [InlineData("#1=A();\r#9=B();\r#3=C();", "#1=A();\r#3=C();")]
    [InlineData("#1=A();\r\n#9=B(); \t\r\n#3=C();", "#1=A();\r\n#3=C();")]
    [InlineData("#1=A(); #9=B(); #3=C();", "#1=A();  #3=C();")]
    [InlineData("#1=A();\n#9=B(); /* b */\n#3=C();", "#1=A();\n /* b */\n#3=C();")]
    [InlineData("#1=A();\n#3=C();\n#9=B(); ", "#1=A();\n#3=C();\n")]
    public void ADroppedInstanceTakesItsLineEndOnlyWhereNothingElseFollows(string data, string kept) =>
        Assert.Contains("DATA;\n" + kept + "\n#10=LABEL(", Append(StepSource.Text(data), 9), StringComparison.Ordinal);

    [Fact]
    public void WhatGoesWithAnEarlierFrameIsToldAsDropped()
    {
        using var file = StepSource.Read(Append(StepSource.Text(Data))).Value!;
        Assert.Equal([1L, 8L], new StepAppender(file, "Tool", [1]).Dropped.Order());
    }

    /// <summary>A comment that tells of a start behind itself, with the right hash: nothing can have been added there.</summary>
    [Fact]
    public void AFrameThatStartsBehindItsCommentIsNone()
    {
        var body = StepSource.Text(Data)[..^"END-ISO-10303-21;\n".Length];
        var hash = Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(Encoding.UTF8.GetBytes(body)));
        bool HasFrame(int start)
        {
            using var file = StepSource.Read($"{body}/* Tool: instances added from byte {start} on; sha256 of all bytes before this comment: {hash} */\nEND-ISO-10303-21;\n").Value!;
            return StepFrame.Find(file, "Tool") is not null;
        }

        Assert.Equal((true, false, false), (HasFrame(body.Length - 1), HasFrame(body.Length), HasFrame(body.Length + 9)));
    }

    [Fact]
    public void OfTheHeaderOnlyTimeStampAndPreprocessorChange()
    {
        var text = StepSource.Text(Data).Replace("'preprocessor 1'", "/* 'x', */ 'old; one'", StringComparison.Ordinal);
        var expected = text
            .Replace("'2024-03-01T12:00:00'", "'2025-01-01'", StringComparison.Ordinal)
            .Replace("'old; one'", "'tool'", StringComparison.Ordinal);
        var written = Append(text);
        Assert.StartsWith(expected[..expected.IndexOf("ENDSEC;\nEND-", StringComparison.Ordinal)].TrimEnd(), written, StringComparison.Ordinal);
    }

    /// <summary>A number where the time stamp should be, and a quote behind it: another text in its place would take the quote away, and the rest of the file with it.</summary>
    [Fact]
    public void AHeaderThatIsNoListOfTextsIsKept()
    {
        var text = StepSource.Text(Data).Replace("'2024-03-01T12:00:00'", "6:00',(x'", StringComparison.Ordinal);
        Assert.True(StepSource.Read(text).IsOk);
        var written = Append(text);
        Assert.Contains("6:00',(x'", written, StringComparison.Ordinal);
        Assert.True(StepSource.Read(written).IsOk);
    }

    [Fact]
    public void AppendingAgainReplacesWhatWasAppended()
    {
        var once = Append(StepSource.Text(Data));
        Assert.Equal(once, Append(once));
        Assert.Single(Append(Append(once)).Split("LABEL").Skip(1));
    }

    [Theory]
    [InlineData("WALL('a')", "WALL('c')")]
    [InlineData("LABEL('x'", "LABEL('y'")]
    [InlineData("ENDSEC;\n/*", "#9=WALL('added by hand');\nENDSEC;\n/*")]
    public void AFrameInAFileThatWasChangedIsNotCut(string old, string changed)
    {
        var edited = Append(StepSource.Text(Data)).Replace(old, changed, StringComparison.Ordinal);
        using var file = StepSource.Read(edited).Value!;
        Assert.Null(StepFrame.Find(file, "Tool"));
        Assert.Contains("LABEL('x',$,(#1,2.5));\nENDSEC;", Append(edited), StringComparison.Ordinal);
        Assert.Contains(changed.Split('\n')[0], Append(edited), StringComparison.Ordinal);
    }

    /// <summary>An original instance that was replaced may refer to added ones: they can't be cut and leave it whole.</summary>
    [Fact]
    public void WhereInstancesAreReplacedNothingIsFramed()
    {
        using var file = StepSource.Read(StepSource.Text(Data)).Value!;
        var appender = new StepAppender(file, "Tool", []);
        appender.Replace(1, "WALL", StepValue.Reference(appender.Add("LABEL", StepValue.String("x"))));
        using var output = new MemoryStream();
        appender.Write(output, "2025-01-01", "tool");
        var written = Encoding.UTF8.GetString(output.ToArray());
        using var replaced = StepSource.Read(written).Value!;
        Assert.Null(StepFrame.Find(replaced, "Tool"));
        Assert.Contains("#1=WALL(#8);", Append(written), StringComparison.Ordinal);
        Assert.Contains("\n#8=LABEL('x');", Append(written), StringComparison.Ordinal);
    }

    [Fact]
    public void AnotherOwnersFrameIsNotCut()
    {
        using var file = StepSource.Read(Append(StepSource.Text(Data))).Value!;
        Assert.NotNull(StepFrame.Find(file, "Tool"));
        Assert.Null(StepFrame.Find(file, "Other"));
    }

    [Fact]
    public void DroppedInstancesGoWithTheirLineAndTheirNumbersAreNotGivenAgain()
    {
        var written = Append(StepSource.Text("#1=WALL('a');\r\n#9=WALL('b');\r\n#3=WALL('c');"), 9);
        Assert.Contains("DATA;\n#1=WALL('a');\r\n#3=WALL('c');\n#10=LABEL", written, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(2147483647, 1)]
    [InlineData(4294967296, 1)]
    [InlineData(2000000000, 2000000001)]
    [InlineData(2137483647, 2137483648)]
    [InlineData(2137483648, 1)]
    public void NewNumbersStayBelowTwoToTheThirtyOne(long largest, long expected)
    {
        var written = Append(StepSource.Text($"#2=WALL('a');\n#{largest}=WALL('b');"));
        Assert.Contains(FormattableString.Invariant($"\n#{expected}=LABEL"), written, StringComparison.Ordinal);
    }

    [Fact]
    public void NumbersInUseAreSkippedInTheLowRun()
    {
        var outcome = StepSource.Read(StepSource.Text("#1=A();\n#2=A();\n#4=A();\n#2147483000=A();"));
        using var file = outcome.Value!;
        var appender = new StepAppender(file, "Tool", []);
        Assert.Equal([3L, 5L], [appender.Add("B"), appender.Add("B")]);
    }

    [Fact]
    public void ASignatureIsLeftOut()
    {
        var written = Append(StepSource.Text(Data) + "SIGNATURE;\nabc\nENDSEC;\n");
        Assert.DoesNotContain("SIGNATURE", written, StringComparison.Ordinal);
        Assert.EndsWith("END-ISO-10303-21;\n", written, StringComparison.Ordinal);
    }

    /// <summary>A header stands before the data (ISO 10303-21, 4.3): another behind it is not written to, or bytes would be copied out of order.</summary>
    [Fact]
    public void AHeaderBehindTheDataIsKeptAsItIs()
    {
        const string Late = "HEADER;\nFILE_NAME('n','late',(''),(''),'p','o','');\nENDSEC;\n";
        var text = StepSource.Text(Data);
        var written = Append(text + Late);
        Assert.EndsWith("END-ISO-10303-21;\n" + Late, written, StringComparison.Ordinal);
        Assert.Contains("'2025-01-01'", written, StringComparison.Ordinal);
        using var file = StepSource.Read(written).Value!;
        Assert.Equal("x", file.Find(8)![0].AsString);
    }

    /// <summary>The section's end reaches to the semicolon that ends the statement, not to one in a text of it.</summary>
    [Fact]
    public void WhatStandsBetweenTheSectionsEndAndItsSemicolonGoesWithIt()
    {
        var text = StepSource.Text(Data).Replace("ENDSEC;\nEND-", "ENDSEC),'2;1');\nEND-", StringComparison.Ordinal);
        Assert.True(StepSource.Read(text).IsOk);
        using var file = StepSource.Read(Append(text)).Value!;
        Assert.Equal("x", file.Find(8)![0].AsString);
    }

    [Fact]
    public void AnInstanceIsAddedBehindACommentThatLooksLikeTheSectionsEnd()
    {
        using var file = StepSource.Data("#1=WALL(/*\n#9 x;ENDSEC;\n*/=2);\n#2=WALL('b');");
        var appender = new StepAppender(file, "test", []);
        var id = appender.Add("DOOR", StepValue.Omitted);
        using var output = new MemoryStream();
        appender.Write(output, "2025-01-01", "tool");
        using var written = StepFile.Read("copy.ifc", output.ToArray()).Value!;
        Assert.Equal([2L, id], written.Ids);
    }

    [Fact]
    public void AMissingEndMarkIsAdded()
    {
        var text = StepSource.Text(Data).Replace("END-ISO-10303-21;\n", string.Empty, StringComparison.Ordinal);
        Assert.EndsWith("\nEND-ISO-10303-21;\n", Append(text), StringComparison.Ordinal);
    }

    private static string Append(string text, params long[] dropped)
    {
        Outcome<StepFile> outcome = StepSource.Read(text);
        using var file = outcome.Value!;
        var appender = new StepAppender(file, "Tool", dropped);
        appender.Add("LABEL", StepValue.String("x"), StepValue.Omitted, StepValue.List(StepValue.Reference(1), StepValue.Real(2.5)));
        using var output = new MemoryStream();
        appender.Write(output, "2025-01-01", "tool");
        return Encoding.UTF8.GetString(output.ToArray());
    }
}
