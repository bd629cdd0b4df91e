using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using IfcCourser.Findings;
using IfcCourser.Layouts;
using IfcCourser.Output.Dxf;
using IfcCourser.Output.IfcWriteBack;
using IfcCourser.Output.Json;
using IfcCourser.Output.Sheets;
using IfcCourser.Output.Svg;
using IfcCourser.Output.Tables;

namespace IfcCourser.Cli.Commands;

/// <summary>The files of the layout command.</summary>
internal static class LayoutFiles
{
    private const string Json = "json";
    private const string Dxf = "dxf";
    private const string Svg = "svg";
    private const string Pdf = "pdf";
    private const string Ifc = "ifc";
    private const string Csv = "csv";
    private const string Coursed = ".coursed";

    public static ImmutableArray<string> Formats => [Json, Dxf, Svg, Pdf, Ifc, Csv];

    /// <summary>Writes the formats asked for; the layout with what printing it found, or the first fault.</summary>
    public static Outcome<Layout> Add(OutputFolder folder, Layout layout, OpenedModel model, RunSettings settings, Terminal terminal)
    {
        // First, so that what can't be printed is in the lists of findings that the others write.
        var printed = settings.Formats.Contains(Pdf) ? PdfFiles.Add(folder, layout, ModelName(layout), terminal) : layout;
        return printed.IsOk && AddOthers(folder, printed.Value, model, settings, terminal) is { } fault ? fault : printed;
    }

    private static Fault? AddOthers(OutputFolder folder, Layout layout, OpenedModel model, RunSettings settings, Terminal terminal)
    {
        (string[] Formats, Func<Fault?> Write)[] writers =
        [
            ([Json], () => folder.Add("layout.json", stream => LayoutJson.Write(layout, stream))),
            ([Csv], () => folder.Add("coordination/findings.csv", stream => FindingsCsv.Write(layout, stream))),
            ([Csv], () => layout.BarSchedule.IsEmpty ? null : folder.Add("order/bars.csv", stream => BarsCsv.Write(layout, stream))),
            ([Csv], () => layout.SetOut.Storeys.IsEmpty ? null : folder.Add("set-out/points.csv", stream => PointsCsv.Write(layout, stream))),
            ([Csv], () => layout.ShootingList.IsEmpty ? null : folder.Add("set-out/readings.csv", stream => ReadingsCsv.Write(layout, stream))),
            ([Dxf, Svg], () => SetOutSheets(folder, layout) ?? Sheets(folder, layout, terminal)),
            ([Ifc], () => CoursedModel(folder, layout, model, terminal)),
        ];
        return writers.Where(writer => settings.Formats.Overlaps(writer.Formats))
            .Select(writer => writer.Write())
            .FirstOrDefault(fault => fault is not null);
    }

    /// <summary>The sheets of all walls.</summary>
    public static Fault? Sheets(OutputFolder folder, Layout layout, Terminal terminal)
    {
        // Numbered among all walls of the model, so that a sheet keeps its name whichever walls are laid out.
        var numbers = layout.Walls.Select(wall => wall.Identity.StepId).Concat(layout.Skipped.Select(wall => wall.Identity.StepId))
            .Order().Select((stepId, index) => (stepId, index)).ToDictionary(pair => pair.stepId, pair => pair.index + 1);
        for (var i = 0; i < layout.Walls.Length; i++)
        {
            terminal.Step(Messages.WritingSheets(i + 1, layout.Walls.Length));
            var wall = layout.Walls[i];
            var sheet = WallSheet.Compose(layout, wall);
            var name = FileName(numbers[wall.Identity.StepId], numbers.Count, wall.Identity.Name);
            var fault = folder.Add($"walls/{name}.dxf", stream => DxfWriter.Write([sheet], stream))
                ?? folder.Add($"walls/{name}.svg", stream => SvgWriter.Write(sheet, stream));
            if (fault is not null)
            {
                return fault;
            }
        }

        return null;
    }

    private static Fault? SetOutSheets(OutputFolder folder, Layout layout)
    {
        var storeys = layout.SetOut.Storeys.Where(SetOutSheet.IsNeeded).ToArray();
        return storeys.Select((storey, i) =>
        {
            var sheet = SetOutSheet.Compose(layout, storey);
            var name = FileName(i + 1, storeys.Length, storey.Storey);
            return folder.Add($"set-out/{name}.dxf", stream => DxfWriter.Write([sheet], stream))
                ?? folder.Add($"set-out/{name}.svg", stream => SvgWriter.Write(sheet, stream));
        }).FirstOrDefault(fault => fault is not null);
    }

    /// <summary>A number that makes it unique, and what file systems take of the wall's name: runs of letters, digits and _ joined by -.</summary>
    private static string FileName(int number, int count, string? name)
    {
        const int LongestName = 40;
        var digits = Math.Max(3, count.ToString(CultureInfo.InvariantCulture).Length);
        var text = new StringBuilder(number.ToString(CultureInfo.InvariantCulture).PadLeft(digits, '0'));
        var isApart = true;
        foreach (var rune in (name ?? string.Empty).EnumerateRunes().Take(LongestName))
        {
            var isKept = Rune.IsLetterOrDigit(rune) || rune.Value is '_';
            text.Append(isKept && isApart ? "-" : string.Empty).Append(isKept ? rune.ToString() : string.Empty);
            isApart = !isKept;
        }

        return text.ToString();
    }

    private static Fault? CoursedModel(OutputFolder folder, Layout layout, OpenedModel model, Terminal terminal)
    {
        terminal.Step(Messages.WritingModel);
        return folder.Add($"model/{ModelName(layout)}{Coursed}.ifc", stream => IfcWriteBack.Write(model.Model, layout, stream));
    }

    /// <summary>The model's file name without its extension, whether coursed before or not.</summary>
    public static string ModelName(Layout layout)
    {
        var name = Path.GetFileNameWithoutExtension(layout.Model.File);
        return name.EndsWith(Coursed, StringComparison.OrdinalIgnoreCase) ? name[..^Coursed.Length] : name;
    }
}
