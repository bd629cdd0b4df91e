using System.Globalization;
using System.Text;
using IfcCourser.Slabs;
using IfcCourser.Units;

namespace IfcCourser.Output.Tables;

/// <summary>
/// bars-left.csv: a row for each bar as built that no bond takes (RFC 4180, UTF-8), mm or in: which bar, how far it stands off its place along the wall
/// (positive towards the end) and across it (positive towards the right face), why it is left, what is asked, and two columns to answer in.
/// </summary>
public static class BarsLeftCsv
{
    public static void Write(SlabSurvey survey, Stream stream)
    {
        var isInch = survey.Layout.Rules.Catalog.Units == UnitSystem.Inch;
        var (name, unit) = isInch ? ("in", Length.NanometresPerInch / (double)Length.NanometresPerMm) : ("mm", 1.0);
        using var writer = new StreamWriter(stream, new UTF8Encoding(false), leaveOpen: true) { NewLine = "\r\n" };
        writer.WriteLine($"point,storey,wall,name,core,bar,asked_for_by,off_along_{name},off_across_{name},why,question,engineer,building_official");
        foreach (var bar in survey.Bars.Where(bar => bar.Answer == BarAnswer.Left))
        {
            writer.WriteLine(string.Join(
                ',', CsvCell.Of(bar.Bar.Point), CsvCell.Of(bar.Wall.Identity.Storey), CsvCell.Of(bar.Wall.Identity.GlobalId), CsvCell.Of(bar.Wall.Identity.Name), CsvCell.Of(bar.Core.Id),
                CsvCell.Of(bar.Core.Bar), CsvCell.Of(string.Join(" ", bar.Core.Why)), Number(bar.Along), Number(bar.Across), CsvCell.Of(Messages.Of(bar.Where)), CsvCell.Of(Messages.AskedOf(bar.Where)), string.Empty, string.Empty));
        }

        string Number(double mm) => (Math.Round(mm / unit, isInch ? 4 : 2) + 0.0).ToString(isInch ? "0.0000" : "0.00", CultureInfo.InvariantCulture);
    }
}
