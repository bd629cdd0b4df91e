using System.Globalization;
using System.Text;
using IfcCourser.Slabs;
using IfcCourser.Units;

namespace IfcCourser.Output.Tables;

/// <summary>
/// bars-as-built.csv: a row for each bar measured (RFC 4180, UTF-8), mm or in: how far it stands off its place along the wall (positive towards the
/// end) and across it (positive towards the right face), what its core allows, whether it stands inside, and what is done about it.
/// </summary>
public static class BarsAsBuiltCsv
{
    public static void Write(SlabSurvey survey, Stream stream)
    {
        var isInch = survey.Layout.Rules.Catalog.Units == UnitSystem.Inch;
        var (name, unit) = isInch ? ("in", Length.NanometresPerInch / (double)Length.NanometresPerMm) : ("mm", 1.0);
        using var writer = new StreamWriter(stream, new UTF8Encoding(false), leaveOpen: true) { NewLine = "\r\n" };
        writer.WriteLine($"point,wall,name,core,bar,off_along_{name},off_across_{name},play_to_start_{name},play_to_end_{name},status,answer");
        foreach (var bar in survey.Bars)
        {
            writer.WriteLine(string.Join(
                ',', CsvCell.Of(bar.Bar.Point), CsvCell.Of(bar.Wall.Identity.GlobalId), CsvCell.Of(bar.Wall.Identity.Name), CsvCell.Of(bar.Core.Id), CsvCell.Of(bar.Core.Bar),
                Number(bar.Along), Number(bar.Across), Number(bar.Core.PlayMinus.Mm), Number(bar.Core.PlayPlus.Mm), Messages.Of(bar.Where),
                Messages.Of(bar.Answer)));
        }

        string Number(double mm) => (Math.Round(mm / unit, isInch ? 4 : 2) + 0.0).ToString(isInch ? "0.0000" : "0.00", CultureInfo.InvariantCulture);
    }
}
