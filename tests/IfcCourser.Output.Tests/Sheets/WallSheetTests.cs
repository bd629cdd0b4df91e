using IfcCourser.Output.Sheets;
using IfcCourser.Output.Svg;
using IfcCourser.Output.Tests.Support;

namespace IfcCourser.Output.Tests.Sheets;

public static class WallSheetTests
{
    [Fact]
    public static void Scratch()
    {
        if (Environment.GetEnvironmentVariable("SHEETS_OUT") is { } target)
        {
            foreach (var layout in new[] { Samples.Metric, Samples.Inch })
            {
                using var stream = File.Create(Path.Combine(target, layout.Rules.Catalog.Name + ".dxf"));
                IfcCourser.Output.Dxf.DxfWriter.Write([.. layout.Walls.Select(wall => WallSheet.Compose(layout, wall))], stream);
            }
        }

        foreach (var layout in new[] { Samples.Metric, Samples.Inch })
        {
            foreach (var wall in layout.Walls)
            {
                var sheet = WallSheet.Compose(layout, wall);
                Assert.NotEmpty(sheet.Views);
                if (Environment.GetEnvironmentVariable("SHEETS_OUT") is { } folder)
                {
                    using var stream = File.Create(Path.Combine(folder, layout.Rules.Catalog.Name + " " + sheet.Name + ".svg"));
                    SvgWriter.Write(sheet, stream);
                }
            }
        }
    }
}
