using System.Text;
using IfcCourser.Findings;
using IfcCourser.Ifc;

namespace IfcCourser.Tests.Ifc;

/// <summary>Makes models from instances written in a test.</summary>
internal static class IfcSource
{
    /// <summary>A project with SI units: millimetres, square metres, radians.</summary>
    public const string Project =
        """
        #1=IFCPROJECT('0YvctVUKr0kugbFTf53O9L',$,'House',$,$,$,$,$,#2);
        #2=IFCUNITASSIGNMENT((#3,#4,#5));
        #3=IFCSIUNIT(*,.LENGTHUNIT.,.MILLI.,.METRE.);
        #4=IFCSIUNIT(*,.AREAUNIT.,$,.SQUARE_METRE.);
        #5=IFCSIUNIT(*,.PLANEANGLEUNIT.,$,.RADIAN.);

        """;

    public static Outcome<IfcModel> Read(string data, string schema = "IFC4") => IfcModel.Read("folder/house.ifc", Encoding.ASCII.GetBytes(Text(data, schema)));

    public static string Text(string data, string schema = "IFC4") =>
        $"""
        ISO-10303-21;
        HEADER;
        FILE_DESCRIPTION((''),'2;1');
        FILE_NAME('house.ifc','2024-03-01T12:00:00',(''),(''),'p','s','');
        FILE_SCHEMA(('{schema}'));
        ENDSEC;
        DATA;
        {data}
        ENDSEC;
        END-ISO-10303-21;
        """;

    public static IfcModel Model(string data, string schema = "IFC4")
    {
        var outcome = Read(data, schema);
        Assert.Null(outcome.Fault);
        return outcome.Value!;
    }
}
