using System.Text;
using IfcCourser.Findings;
using IfcCourser.Step21;

namespace IfcCourser.Tests.Step21;

/// <summary>Makes STEP files from a DATA section written in a test.</summary>
internal static class StepSource
{
    public const string Header =
        """
        ISO-10303-21;
        HEADER;
        FILE_DESCRIPTION(('ViewDefinition [CoordinationView]'),'2;1');
        FILE_NAME('house.ifc','2024-03-01T12:00:00',('A. Writer'),('Office'),'preprocessor 1','system 2','nobody');
        FILE_SCHEMA(('IFC4'));
        ENDSEC;
        DATA;

        """;

    public const string Footer = "ENDSEC;\nEND-ISO-10303-21;\n";

    public static string Text(string data) => Header + data + "\n" + Footer;

    public static Outcome<StepFile> Read(string text) => StepFile.Read("test.ifc", Encoding.UTF8.GetBytes(text));

    public static StepFile Data(string data)
    {
        var outcome = Read(Text(data));
        Assert.Null(outcome.Fault);
        return outcome.Value!;
    }

    /// <summary>The first argument of instance #1 written with this parameter.</summary>
    public static StepValue Value(string parameter)
    {
        using var file = Data($"#1=THING({parameter});");
        return file.Find(1)![0];
    }
}
