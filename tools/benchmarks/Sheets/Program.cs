using System.Diagnostics;
using System.Globalization;
using IfcCourser.Output.Dxf;
using IfcCourser.Output.Json;
using IfcCourser.Output.Pdf;
using IfcCourser.Output.Sheets;
using IfcCourser.Output.Sheets.Sets;
using IfcCourser.Output.Svg;

// Sheets LAYOUT.json [PAPER] [RUNS]: draws the set of a layout and writes it as DXF, PDF and SVG into memory, once for each run; prints seconds of each step, and how
// often the bytes of the DXF are put into memory while they are written.
CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
var loaded = LayoutReader.Load(args[0]);
if (!loaded.IsOk)
{
    Console.Error.WriteLine(loaded.Fault);
    return 1;
}

var layout = loaded.Value;
var papers = args.Length > 1 && PaperSize.Named(args[1]) is { } paper ? [paper] : PaperSize.For(layout.Rules.Catalog.Units);
for (var run = 0; run < (args.Length > 2 ? int.Parse(args[2], CultureInfo.InvariantCulture) : 1); run++)
{
    var watch = Stopwatch.StartNew();
    var sheets = DrawingSet.Of(layout, papers);
    var planned = Step(watch);
    Sheet[] drawn = [.. sheets.AsParallel().AsOrdered().Select(sheet => sheet.Compose())];
    var composed = Step(watch);
    var dxf = Size(stream => DxfWriter.Write(drawn, stream));
    var dxfTime = Step(watch);
    var bytes = new byte[(int)(dxf * 1e6)];
    watch.Restart();
    Size(stream => stream.Write(bytes));
    var bytesTime = Step(watch);
    var pdf = Size(stream => PdfWriter.Write(new PdfSet("Set", "Author", layout.Model.Date), drawn.Zip(sheets, (sheet, entry) => new PdfPage(sheet, entry.Section)), stream));
    var pdfTime = Step(watch);
    var svg = drawn.Sum(sheet => Size(stream => SvgWriter.Write(sheet, stream)));
    var svgTime = Step(watch);
    Console.WriteLine(FormattableString.Invariant(
        $"{drawn.Length} sheets: arranged {planned:0.00} s, drawn {composed:0.00} s, dxf {dxfTime:0.00} s ({dxf} MB, {dxf / dxfTime:0} MB/s, {dxfTime / bytesTime:0} times putting its bytes into memory), pdf {pdfTime:0.00} s ({pdf} MB), svg {svgTime:0.00} s ({svg:0.0} MB); in all {planned + composed + dxfTime + pdfTime + svgTime:0.00} s"));
}

return 0;

static double Step(Stopwatch watch)
{
    var seconds = watch.Elapsed.TotalSeconds;
    watch.Restart();
    return seconds;
}

static double Size(Action<Stream> write)
{
    const double Megabyte = 1e6;
    using var stream = new MemoryStream();
    write(stream);
    return Math.Round(stream.Length / Megabyte, 1);
}
