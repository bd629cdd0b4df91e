using System.Text;
using IfcCourser.Step21;

namespace IfcCourser.Tests.Step21;

public sealed class StepFileTests
{
    [Fact]
    public void InstancesAreFoundByIdAndByTypeInFileOrder()
    {
        using var file = StepSource.Data("#7=WALL('b');\n#3=DOOR($,*);\n#5=WALL('a',#7);");
        Assert.Equal([7L, 5L], file.InstancesOf("WALL"));
        Assert.Empty(file.InstancesOf("WINDOW"));
        Assert.Equal(3, file.Count);
        Assert.Equal(7, file.LargestId);
        Assert.Equal("a", file.Find(5)![0].AsString);
        Assert.Equal(7, file.Find(5)![1].AsReference);
        Assert.Equal(StepValueKind.Derived, file.Find(3)![1].Kind);
        Assert.True(file.Find(3)![2].IsNothing);
        Assert.True(file.Find(3)![9].IsNothing);
        Assert.Null(file.Find(4));
        Assert.False(file.Contains(4));
        Assert.Equal("DOOR", file.TypeOf(3));
        Assert.Equal("#3=DOOR($,*);", Encoding.ASCII.GetString(file.TextOf(3)));
        Assert.Empty(file.Faults);
    }

    [Theory]
    [InlineData("#1 = wall ( 'x' ) ;")]
    [InlineData("/* #9=WALL('no'); */#1=/*=(*/WALL/*(*/(/*)*/'x'/*;*/)/**/;")]
    [InlineData("#1\n=\nWALL\n(\n'x'\n)\n;")]
    [InlineData("\t#1\v=\fWALL\r('x'\t)\v;")]
    [InlineData("#1=WALL(/*/'y',/*/'x');")]
    [InlineData("#1=WALL/**//**/('x'/**/ /* */)/***/;/**/")]
    [InlineData("#1=WALL('x');#2=WALL('y;#3=(');")]
    [InlineData("#1=WALL('x',7/1);#2=WALL('a\n#3 is none');")]
    public void BlanksCommentsAndLineBreaksMayStandBetweenAllTokens(string data)
    {
        using var file = StepSource.Data(data);
        Assert.Equal("x", file.Find(1)![0].AsString);
        Assert.Equal("WALL", file.Find(1)!.Type);
        Assert.False(file.Contains(9));
        Assert.False(file.Contains(3));
        Assert.Empty(file.Faults);
    }

    [Theory]
    [InlineData("\n", false)]
    [InlineData("\r\n", false)]
    [InlineData("\r", false)]
    [InlineData("\n", true)]
    public void AnyLineEndAndAByteOrderMarkAreTaken(string lineEnd, bool hasMark)
    {
        var text = (hasMark ? "\uFEFF" : string.Empty) + StepSource.Text("#1=WALL('x');\n#1=WALL('y');").ReplaceLineEndings(lineEnd);
        using var file = StepSource.Read(text).Value!;
        Assert.Equal("house.ifc", file.Header.FileName);
        Assert.Equal("y", file.Find(1)![0].AsString);
        Assert.Equal(8, Assert.Single(file.Faults).Line);
    }

    [Fact]
    public void WhatStandsInACommentOrStringIsNoInstanceWhereASemicolonIsMissing()
    {
        using var file = StepSource.Data("#1=WALL('#5=DOOR();',/* #4=DOOR(); */ = );\n#2=WALL('b'\n#3=WALL('c');");
        Assert.Equal([3L], file.Ids);
        Assert.Equal([1L, 2L], file.Faults.Select(fault => fault.StepId).OfType<long>());
    }

    [Fact]
    public void IdsMayHaveGapsAndReachSixtyThreeBits()
    {
        using var file = StepSource.Data("#9223372036854775807=A();\n#1=B();\n#4294967296=C();\n#9223372036854775808=D();\n#4294967296=E();");
        Assert.Equal(long.MaxValue, file.LargestId);
        Assert.Equal("A", file.TypeOf(long.MaxValue));
        Assert.Equal("E", file.TypeOf(4294967296));
        Assert.Empty(file.InstancesOf("C"));
        Assert.Equal([4294967296L, null], file.Faults.Select(fault => fault.StepId));
    }

    [Fact]
    public void OfAnIdDefinedTwiceTheLastDefinitionCounts()
    {
        using var file = StepSource.Data("#1=WALL('first');\n#2=WALL('other');\n#1=WALL('last');");
        Assert.Equal("last", file.Find(1)![0].AsString);
        Assert.Equal([2L, 1L], file.InstancesOf("WALL"));
        Assert.Equal(2, file.Count);
        var fault = Assert.Single(file.Faults);
        Assert.Equal((8, 1L), (fault.Line, fault.StepId));
    }

    [Theory]
    [InlineData("#1=WALL('x';\n#2=WALL('y');", "parenthesis")]
    [InlineData("#1=WALL('x')\n#2=WALL('y');", "semicolon")]
    [InlineData("#1=WALL('x);\n#2=WALL('y');", "quote")]
    [InlineData("#1 WALL('x');\n#2=WALL('y');", "=")]
    [InlineData("#1=;\n#2=WALL('y');", "entity name")]
    [InlineData("#1=('x');\n#2=WALL('y');", "name")]
    [InlineData("#1=WALL('x',#);\n#2=WALL('y');", "number")]
    [InlineData("#1=WALL 'x');\n#2=WALL('y');", "entity name")]
    [InlineData("#1=1A('x');\n#2=WALL('y');", "entity name")]
    [InlineData("#1=A!B('x');\n#2=WALL('y');", "entity name")]
    [InlineData("#1=WALL('x')('z');\n#2=WALL('y');", "between the parameters and the semicolon")]
    [InlineData("#1=WALL('x' 'z');\n#2=WALL('y');", "',' is missing")]
    [InlineData("#1=WALL(.T);\n#2=WALL('y');", "no closing .")]
    [InlineData("#1=WALL(\"0);\n#2=WALL('y');", "no closing \"")]
    [InlineData("#1=WALL(.x',.,/*',1);\n#2=WALL('y');", "value is missing")]
    [InlineData("#1=(A()'x');\n#2=WALL('y');", "part of the complex instance has no name")]
    [InlineData("#1=(A(#));\n#2=WALL('y');", "number")]
    [InlineData("#1=(A'x');\n#2=WALL('y');", "'(' is missing")]
    [InlineData("#2=WALL('y');\n#1=WALL('x'", "parenthesis")]
    public void AMalformedInstanceIsSkippedWithARecordAndTheNextIsRead(string data, string what)
    {
        using var file = StepSource.Data(data);
        Assert.Null(file.Find(1));
        Assert.Equal("y", file.Find(2)![0].AsString);
        var fault = Assert.Single(file.Faults);
        Assert.Equal(1, fault.StepId);
        Assert.Equal(data.StartsWith("#1", StringComparison.Ordinal) ? 8 : 9, fault.Line);
        Assert.Contains(what, fault.What, StringComparison.Ordinal);
    }

    /// <summary>Leading zeros count for nothing; names that begin with ! are a user's own (ISO 10303-21:2016, 6.4 and 7.3).</summary>
    [Fact]
    public void NumbersMayHaveLeadingZerosAndNamesOfUsersAMark()
    {
        using var file = StepSource.Data("#007=A();\n#0000000000000000000000008=!USERS('x');\n#0=B();");
        Assert.Equal([7L, 8L, 0L], file.Ids);
        Assert.Equal(("!USERS", "x", "B"), (file.TypeOf(8), file.Find(8)![0].AsString, file.TypeOf(0)));
        Assert.Empty(file.Faults);
    }

    [Theory]
    [InlineData("#=A();", "has no number")]
    [InlineData("#9223372036854775808=A();", "larger than 2^63")]
    [InlineData("#99999999999999999999999999=A();", "larger than 2^63")]
    [InlineData("FOO(1);", "no instance")]
    [InlineData("FOO('x", "no instance")]
    [InlineData("'x;' FOO;", "no instance")]
    public void WhatIsNoInstanceIsRecordedAndTheNextIsRead(string data, string what)
    {
        using var file = StepSource.Data($"#1=WALL('x');\n{data}\n#2=WALL('y');;\n#3=WALL('z');");
        Assert.Equal([1L, 2L, 3L], file.Ids);
        var fault = Assert.Single(file.Faults);
        Assert.Equal((9, null), (fault.Line, fault.StepId));
        Assert.Contains(what, fault.What, StringComparison.Ordinal);
        Assert.NotEmpty(fault.Remedy);
    }

    /// <summary>An equals sign stands in no value: nobody knows where the instance ends, and what follows the sign is no instance.</summary>
    [Fact]
    public void AnInstanceWithAnEqualsSignAmongItsValuesIsSkipped()
    {
        using var file = StepSource.Data("#1=WALL('x',a=1);\n#2=WALL('y');");
        Assert.Equal([2L], file.Ids);
        Assert.Equal([1L, null], file.Faults.Select(fault => fault.StepId));
    }

    /// <summary>So far apart that they are found by search, and defined so often that no order of sorting puts the last one last by chance.</summary>
    [Fact]
    public void OfFarApartIdsDefinedOftenTheLastDefinitionCounts()
    {
        var data = string.Concat(Enumerable.Range(0, 200).Select(i => $"#{(i % 2 == 0 ? 1 : 1_000_000)}=WALL({i});\n"));
        using var file = StepSource.Data(data);
        Assert.Equal((198L, 199L, 2), (file.Find(1)![0].AsInteger, file.Find(1_000_000)![0].AsInteger, file.Count));
        Assert.Equal(Enumerable.Range(8, 198), file.Faults.Select(fault => fault.Line!.Value));
    }

    [Fact]
    public void ComplexInstancesHaveParts()
    {
        using var file = StepSource.Data("#1=(LENGTH_UNIT()NAMED_UNIT(*)SI_UNIT(.MILLI.,.METRE.));");
        var instance = file.Find(1)!;
        Assert.Equal("LENGTH_UNIT NAMED_UNIT SI_UNIT", string.Join(' ', instance.Parts.Select(part => part.Type)));
        Assert.Equal("METRE", instance.Parts[2].Arguments[1].AsEnumeration);
        Assert.Equal(string.Empty, file.TypeOf(1));
    }

    [Fact]
    public void TheHeadOfAnInstanceReachesBeyondItToTheEndOfTheFile()
    {
        const string Tail = ");\n" + StepSource.Footer;
        using var file = StepSource.Data("#1=WALL('x');\n#2=B();");
        Assert.Equal("#1=WA", Encoding.ASCII.GetString(file.HeadOf(1, 5)));
        Assert.Equal("#2=B(" + Tail, Encoding.ASCII.GetString(file.HeadOf(2, 1000)));
        Assert.True(file.HeadOf(3, 5).IsEmpty);
        Assert.True(file.TextOf(3).IsEmpty);
        Assert.Null(file.TypeOf(3));
    }

    [Fact]
    public void ASignatureIsTold()
    {
        using var signed = StepSource.Read(StepSource.Text("#1=A();") + "SIGNATURE;\nabc\nENDSEC;\n").Value!;
        using var plain = StepSource.Data("#1=A();");
        Assert.Equal((true, false), (signed.HasSignature, plain.HasSignature));
    }

    /// <summary>ISO 10303-21:2016, 10 and 11: a file may name what it takes from others and gives to others, before its data.</summary>
    [Fact]
    public void AnchorsAndReferencesArePassedOver()
    {
        var text = StepSource.Text("#1=A();").Replace(
            "DATA;", "ANCHOR;\n<a;b>=#1;\nENDSEC;\nREFERENCE;\n#2=<other.stp#x>;\nENDSEC;\nDATA;", StringComparison.Ordinal);
        using var file = StepSource.Read(text).Value!;
        Assert.Equal([1L], file.Ids);
        Assert.Empty(file.Faults);
    }

    /// <summary>What the standard asks for in the header may be missing, too short or of another kind; the rest is read.</summary>
    [Theory]
    [InlineData("FILE_NAME();", "", "")]
    [InlineData("FILE_NAME('n');", "n", "")]
    [InlineData("FILE_NAME('n',$,'a');", "n", "a")]
    [InlineData("FILE_NAME('n',$,('a',$,'b'));", "n", "a b")]
    [InlineData("FILE_NAME('n',$,(7));", "n", "")]
    [InlineData("FILE_NAME 'n';", "", "")]
    [InlineData("FILE_NAME('n' 't');", "n", "")]
    [InlineData("FILE_NAME(#,'n');", "", "")]
    [InlineData("OTHER('n');", "", "")]
    public void AHeaderIsReadAsFarAsItGoes(string statement, string name, string authors)
    {
        using var file = StepSource.Read($"ISO-10303-21;\nHEADER;\n{statement}\nFILE_SCHEMA('IFC4');\nENDSEC;\nDATA;\nENDSEC;\nEND-ISO-10303-21;\n").Value!;
        Assert.Equal(name, file.Header.FileName);
        Assert.Equal(authors, string.Join(' ', file.Header.Authors));
        Assert.Equal(["IFC4"], file.Header.Schemas);
    }

    [Fact]
    public void SeveralDataSectionsAreOneSetOfInstances()
    {
        const string Text = StepSource.Header + "#1=A();\nENDSEC;\nDATA('two',('IFC4'));\n#2=B();\n" + StepSource.Footer;
        using var file = StepSource.Read(Text).Value!;
        Assert.Equal(2, file.Count);
    }

    [Fact]
    public void TheHeaderIsReadWithCommentsAndLineBreaks()
    {
        const string Text =
            """
            ISO-10303-21; /* comment; 'quote */
            HEADER;
            FILE_DESCRIPTION(('a','b'),'2;1');
            FILE_NAME(
            /* name */ 'it''s',
            /* time_stamp */ '2020-01-02T03:04:05' /* , */,
            /* author */ ('x','y'), (''),
            /* preprocessor_version */ 'pre', 'sys', $);
            FILE_SCHEMA(('IFC4X3_ADD2'));
            ENDSEC;
            DATA;
            ENDSEC;
            END-ISO-10303-21;
            """;
        using var file = StepSource.Read(Text).Value!;
        var header = file.Header;
        Assert.Equal(["a", "b"], header.Description);
        Assert.Equal("2;1", header.ImplementationLevel);
        Assert.Equal("it's", header.FileName);
        Assert.Equal("2020-01-02T03:04:05", header.TimeStamp);
        Assert.Equal(["x", "y"], header.Authors);
        Assert.Equal([string.Empty], header.Organizations);
        Assert.Equal(("pre", "sys", string.Empty), (header.PreprocessorVersion, header.OriginatingSystem, header.Authorization));
        Assert.Equal(["IFC4X3_ADD2"], header.Schemas);
        Assert.Equal("'2020-01-02T03:04:05'", Text[(int)header.TimeStampRange!.Value.Start..(int)header.TimeStampRange.Value.End]);
        Assert.Equal("'pre'", Text[(int)header.PreprocessorVersionRange!.Value.Start..(int)header.PreprocessorVersionRange.Value.End]);
        Assert.Equal(0, file.Count);
    }

    [Theory]
    [InlineData("", "empty")]
    [InlineData("solid cube", "STEP")]
    [InlineData("<?xml version='1.0'?>", "XML")]
    [InlineData("PK\u0003\u0004", "zip")]
    [InlineData("ISO-10303-21;\nHEADER;\nENDSEC;\nEND-ISO-10303-21;", "DATA")]
    [InlineData("ISO-10303-21;\nHEADER;\nFILE_NAME('a", "cut off")]
    [InlineData(StepSource.Header, "cut off")]
    [InlineData(StepSource.Header + "#1=WALL('x');\n#2=WALL('", "cut off")]
    [InlineData(StepSource.Header + "#1=WALL('x');\n#2=WALL(/* ", "cut off")]
    [InlineData(StepSource.Header + "#1=WALL('x');\n#2", "cut off")]
    [InlineData(StepSource.Header + "#1=WALL('x');\nENDSEC", "cut off")]
    [InlineData("ISO-10303-21;\nHEADER;\nENDSEC;\nANCHOR;\n<a>=#1;\n", "cut off")]
    [InlineData("ISO-10303-21;\nHEADER;\nENDSEC;\nREFERENCE;\n#1=<a>;\n", "cut off")]
    [InlineData("ISO-10303-21", "DATA")]
    public void AFileThatCannotBeReadIsOneClearFault(string text, string what)
    {
        var outcome = StepSource.Read(text);
        Assert.False(outcome.IsOk);
        Assert.Contains(what, outcome.Fault.What, StringComparison.Ordinal);
        Assert.Equal("test.ifc", outcome.Fault.File);
        Assert.NotEmpty(outcome.Fault.Remedy);
    }

    [Fact]
    public void OfAFileThatIsCutOffTheLastInstanceIsNamed()
    {
        var fault = StepSource.Read(StepSource.Header + "#5=WALL('x');\n#2=WALL('y');\n#3=WALL('").Fault!;
        Assert.Equal((10, 2L), (fault.Line, fault.StepId));
        Assert.Null(StepSource.Read(StepSource.Header + "#5=WALL('").Fault!.StepId);
    }

    [Theory]
    [InlineData("PK\u0003\u0004", ".ifczip")]
    [InlineData("<?xml version='1.0'?>", "STEP form")]
    public void WhoGivesAnotherKindOfFileIsToldWhatToDo(string text, string remedy) =>
        Assert.Contains(remedy, StepSource.Read(text).Fault!.Remedy, StringComparison.Ordinal);

    [Fact]
    public void AHeaderWithoutStatementsIsEmpty()
    {
        using var file = StepSource.Read("ISO-10303-21;HEADER;ENDSEC;DATA;ENDSEC;END-ISO-10303-21;").Value!;
        var header = file.Header;
        Assert.All(
            [header.ImplementationLevel, header.FileName, header.TimeStamp, header.PreprocessorVersion, header.OriginatingSystem, header.Authorization],
            text => Assert.Equal(string.Empty, text));
        Assert.All([header.Description, header.Authors, header.Organizations, header.Schemas], texts => Assert.Empty(texts));
        Assert.Equal((null, null), (header.TimeStampRange, header.PreprocessorVersionRange));
    }

    [Fact]
    public void AFileThatWasDisposedOfIsNotReadAnyMore()
    {
        var file = StepSource.Data("#1=WALL('x');");
        file.Dispose();
        file.Dispose();
        Assert.Throws<ObjectDisposedException>(() => file.Find(1));
    }

    [Theory]
    [InlineData(true, true)]
    [InlineData(true, false)]
    [InlineData(false, true)]
    [InlineData(false, false)]
    public void TextInUtf16IsNamed(bool isBigEndian, bool hasMark)
    {
        var encoding = new UnicodeEncoding(isBigEndian, hasMark);
        byte[] bytes = [.. encoding.GetPreamble(), .. encoding.GetBytes(StepSource.Text("#1=WALL('x');"))];

        var fault = StepFile.Read("test.ifc", bytes).Fault!;

        Assert.Contains("UTF-16", fault.What, StringComparison.Ordinal);
        Assert.Contains("UTF-8", fault.Remedy, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("pipe.ifc")]
    [InlineData("link.ifc")]
    [InlineData("link.ifczip")]
    public void APipeIsAFaultAndNotWaitedFor(string name)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "there are no pipes in folders");
        var folder = Directory.CreateTempSubdirectory();
        var pipe = Path.Combine(folder.FullName, "pipe.ifc");
        using (var made = System.Diagnostics.Process.Start("mkfifo", [pipe]))
        {
            made.WaitForExit();
        }

        File.CreateSymbolicLink(Path.Combine(folder.FullName, "link.ifc"), pipe);
        File.CreateSymbolicLink(Path.Combine(folder.FullName, "link.ifczip"), "link.ifc");

        Assert.Contains("pipe", IfcCourser.Ifc.IfcModel.Open(Path.Combine(folder.FullName, name)).Fault!.What, StringComparison.Ordinal);
        folder.Delete(recursive: true);
    }

    [Theory]
    [InlineData("/dev/null")]
    [InlineData("/dev/zero")]
    public void ADeviceIsAFault(string path)
    {
        Assert.SkipUnless(File.Exists(path), "there is no such device");
        Assert.Contains("device", StepFile.Open(path).Fault!.What, StringComparison.Ordinal);
    }

    [Fact]
    public void EveryTruncationOfAFileIsAFaultOrAFileAndNeverAnException()
    {
        var text = StepSource.Text("#1=(A(1)B('x''y',(2.,$)));\n/* c */#2=WALL('\\X2\\00E4\\X0\\',.T.,\"0F\",*,IFCREAL(1.E-3));");
        for (var length = 0; length < text.Length; length++)
        {
            var outcome = StepSource.Read(text[..length]);
            if (outcome.IsOk)
            {
                Assert.NotNull(outcome.Value.Find(2));
                outcome.Value.Dispose();
            }
        }
    }

    [Fact]
    public void AMissingFileAFolderAndAnEmptyFileAreFaults()
    {
        var folder = Directory.CreateTempSubdirectory();
        var empty = Path.Combine(folder.FullName, "empty.ifc");
        File.WriteAllText(empty, string.Empty);
        Assert.Contains("no such file", StepFile.Open(Path.Combine(folder.FullName, "none.ifc")).Fault!.What, StringComparison.Ordinal);
        Assert.Contains("folder", StepFile.Open(folder.FullName).Fault!.What, StringComparison.Ordinal);
        Assert.Contains("empty", StepFile.Open(empty).Fault!.What, StringComparison.Ordinal);
        folder.Delete(recursive: true);
    }

    [Fact]
    public void AMappedFileReadsLikeBytesInMemory()
    {
        var path = Path.GetTempFileName();
        File.WriteAllText(path, StepSource.Text("#1=WALL('x');"));
        using (var file = StepFile.Open(path).Value!)
        {
            Assert.Equal("x", file.Find(1)![0].AsString);
        }

        File.Delete(path);
    }
}
