using IfcCourser.Output.Dxf;
using IfcCourser.Output.Svg;
using IfcCourser.Output.Tests.Support;

namespace IfcCourser.Output.Tests.Sheets;

public static class PicturesTests
{
    [Fact]
    public static void Scratch()
    {
        if (Environment.GetEnvironmentVariable("SHEETS_OUT") is { } target)
        {
            foreach (var group in Samples.Sheets.Values.GroupBy(s => s.Layout))
            {
                using var dxf = File.Create(Path.Combine(target, group.Key.Rules.Catalog.Name + ".dxf"));
                DxfWriter.Write([.. group.Select(s => s.Sheet)], dxf);
                foreach (var entry in group)
                {
                    using var svg = File.Create(Path.Combine(target, group.Key.Rules.Catalog.Name + " " + entry.Sheet.Name + ".svg"));
                    SvgWriter.Write(entry.Sheet, svg);
                }
            }
        }
    }
}
