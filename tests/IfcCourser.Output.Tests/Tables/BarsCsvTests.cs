using System.Text;
using IfcCourser.Output.Tables;
using IfcCourser.Output.Tests.Json;
using IfcCourser.Rules;

namespace IfcCourser.Output.Tests.Tables;

public sealed class BarsCsvTests
{
    /// <summary>ASTM A615: a No. 4 bar weighs 0.668 lb/ft: 2 x 38 in are 4.23 lb, 3 x 96 in 16.03 lb, 49 in 2.73 lb.</summary>
    [Fact]
    public void The_inch_form_lists_inches_and_pounds() => Assert.Equal(
        [
            "mark,wall,steel,size,number,length,total_length,shape,A,B,R,mass,unit,use,stock",
            "V1,0UcKJVh1wiUc0jPM8BIIf8,ASTM A615 Grade 60,No. 4,2,38,76,2,30,8,1.5,4.23,in lb,vertical,",
            "V2,0UcKJVh1wiUc0jPM8BIIf8,ASTM A615 Grade 60,No. 4,3,96,288,straight,96,,,16.03,in lb,vertical,",
            "HC1,0UcKJVh1wiUc0jPM8BIIf8,ASTM A615 Grade 60,No. 4,1,49,49,17,24.5,24.5,1.5,2.73,in lb,corner,",
            string.Empty,
        ],
        Written(BarListForm.Aci315));

    /// <summary>38 in are 965.2 mm; 2 x 38 in x 0.668 lb/ft are 1.92 kg.</summary>
    [Fact]
    public void The_metric_form_lists_millimetres_and_kilograms() =>
        Assert.Equal("V1,0UcKJVh1wiUc0jPM8BIIf8,ASTM A615 Grade 60,No. 4,2,965.2,1930.4,2,762,203.2,38.1,1.92,mm kg,vertical,", Written(BarListForm.Bs8666)[1]);

    private static string[] Written(BarListForm form)
    {
        var rules = SampleLayout.Full.Rules;
        using var stream = new MemoryStream();
        BarsCsv.Write(SampleLayout.Full with { Rules = rules with { Set = rules.Set with { BarList = rules.Set.BarList with { Form = form } } } }, stream);
        return Encoding.UTF8.GetString(stream.ToArray()).Split("\r\n");
    }
}
