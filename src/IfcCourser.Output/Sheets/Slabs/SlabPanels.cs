using IfcCourser.Output.Sheets.Panels;
using IfcCourser.Units;

namespace IfcCourser.Output.Sheets.Slabs;

/// <summary>What stands beside the plans of a slab.</summary>
internal static class SlabPanels
{
    private const double RowHeight = 6;
    private const double SampleWidth = 14;

    public static Panel Result(SlabFacts facts) => Table.Of(SlabText.Result, ["What", "Value"], 0, SlabText.Results(facts).Select(row => ImmutableArray.Create(row.What, row.Value)));

    public static Panel Remedies(SlabFacts facts) => Table.Of(
        SlabText.Remedies,
        ["Way", "Deep", AmountText.AreaUnit(facts.Units), AmountText.VolumeUnit(facts.Units)],
        0,
        facts.Survey.Remedies.Where(remedy => remedy.IsPossible).Select((remedy, i) => ImmutableArray.Create(
            (i == 0 ? "taken: " : string.Empty) + SlabText.Remedy(remedy.Kind), facts.Thickness(remedy.Depth), AmountText.AreaNumber(remedy.Area / 1e6, facts.Units),
            AmountText.VolumeNumber(remedy.Volume / 1e6, facts.Units))));

    public static Panel Places(SlabFacts facts) => Table.Of(
        SlabText.Places,
        ["Wall", "Block", "Bed", "Take off", "Fill"],
        1,
        facts.Survey.Beds.Where(bed => bed.High > 0 || bed.Low > 0).Select(bed => ImmutableArray.Create(
            facts.WallNumber(bed.Block.Wall), bed.Block.Piece.Id, $"{facts.Thickness(bed.Least)} - {facts.Thickness(bed.Most)}", Depth(facts, bed.High), Depth(facts, bed.Low))));

    public static Panel Bars(SlabFacts facts) => Table.Of(
        SlabText.Bars,
        ["No", "Wall, core", "Along", "Across", "Is"],
        4,
        facts.Survey.Bars.Select(bar => ImmutableArray.Create(
            bar.Bar.Point, $"{facts.WallNumber(bar.Wall)} {bar.Core.Id}", Signed(facts, bar.Along), Signed(facts, bar.Across), Messages.Of(bar.Answer))));

    public static Panel Control(SlabFacts facts) => Table.Of(
        SlabText.Control,
        ["Point", "Off its place"],
        1,
        (facts.Survey.Readings.Fit?.Residuals ?? []).Select(residual => ImmutableArray.Create(residual.Point, facts.Text.WithUnit(Length.FromMm(residual.Off.Length)))));

    public static Panel Notes(SlabFacts facts) => WordList.Of(SheetText.Notes, SlabText.Notes(facts));

    public static Panel Cautions() => Panels.Cautions.Panel;

    public static Panel Legend(params ReadOnlySpan<(string Meaning, ImmutableArray<SheetItem> Sample)> samples)
    {
        var items = ImmutableArray.CreateBuilder<SheetItem>();
        var row = 0;
        foreach (var (meaning, sample) in samples)
        {
            var text = new TextItem(Pen.Text, new Point(SampleWidth + 4, -RowHeight / 2), meaning, Table.TextHeight, TextAnchor.MiddleLeft);
            items.AddRange(sample.Append(text).Select(item => item.MovedBy(new Point(0, -row * RowHeight))));
            row++;
        }

        return new Panel([Table.Heading(SheetText.Legend)], [new PanelRow(row * RowHeight, items.ToImmutable())]);
    }

    public static ImmutableArray<SheetItem> Block => [PolylineItem.Rectangle(Pen.WholeBlock, Sample)];

    public static ImmutableArray<SheetItem> High => [new HatchItem(Pen.CutHatch, [Sample.Corners()], HatchKind.Cut), PolylineItem.Rectangle(Pen.WholeBlock, Sample)];

    public static ImmutableArray<SheetItem> Low => [new HatchItem(Pen.LintelHatch, [Sample.Corners()], HatchKind.Carries), PolylineItem.Rectangle(Pen.WholeBlock, Sample)];

    public static ImmutableArray<SheetItem> Contour => [new LineItem(Pen.Neighbour, new Point(1, -RowHeight / 2), new Point(SampleWidth, -RowHeight / 2))];

    public static ImmutableArray<SheetItem> Word(string word, Pen pen) => [new TextItem(pen, new Point(SampleWidth / 2, -RowHeight / 2), word, Table.TextHeight, TextAnchor.Middle)];

    private static Box Sample => new(1, -RowHeight + 1, SampleWidth, -1);

    private static string Depth(SlabFacts facts, double mm) => mm <= 0 ? "-" : facts.Thickness(mm) is var text && text == "0" ? "< " + facts.Thickness(facts.Least) : text;

    private static string Signed(SlabFacts facts, double mm) => facts.Text.Piece(Length.FromMm(mm));
}
