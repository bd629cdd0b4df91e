using IfcCourser.Findings;
using IfcCourser.Output.Json;
using IfcCourser.Output.Ordering;
using IfcCourser.Output.Workbooks;
using static System.FormattableString;

namespace IfcCourser.Output.Batches;

/// <summary>batch.xlsx: the order of each phase with a column for the buyer's prices, phases, plan types, findings and lots; totals are formulas.</summary>
public static class BatchWorkbook
{
    public static void Write(BatchSummary batch, Stream stream) => WorkbookWriter.Write(
        [
            Order(batch), Sums("Phases", "Phase", batch.Phases.Select(phase => (BatchWords.Phase(phase.Phase), phase.Sum))),
            Sums("Plan types", "Plan", batch.Plans.Select(plan => (BatchWords.Plan(plan.Plan, plan.IsMirrored), plan.Sum))), Findings(batch), Lots(batch),
        ],
        $"{BatchWords.Kind}: {batch.Title}", batch.Date, batch.Units, stream);

    private static WorkbookSheet Order(BatchSummary batch)
    {
        var rows = new SheetRows();
        rows.Title($"{BatchWords.Kind}: {batch.Title}", [BatchWords.OrderLead, .. BatchWords.MissingLots(batch) is { } missing ? [missing] : (string[])[], WorkbookWords.Examples, WorkbookWords.Cautions, BatchWords.Prices]);
        rows.Header(
            ("Phase", CellFormat.Text), ("Catalog", CellFormat.Text), ("Item", CellFormat.Text), ("Description", CellFormat.Text), ("Width", CellFormat.Plain), ("Width in", CellFormat.Text), ("Unit", CellFormat.Text),
            ("Net", CellFormat.Plain), ("Waste", CellFormat.Plain), ("Gross", CellFormat.Plain), ("Packs", CellFormat.Plain), ("Price", CellFormat.Plain), ("Amount", CellFormat.Plain));
        foreach (var (phase, line) in batch.Orders.SelectMany(phase => phase.Lines.Select(line => (phase.Phase, line))))
        {
            rows.Row(Line(phase, line, rows.Next));
        }

        rows.Total(
            [WorkbookCell.Of(WorkbookWords.Total, CellRole.Total), .. Enumerable.Repeat(WorkbookCell.Of(null, CellRole.Total), 11), rows.Sum(12, 0, CellFormat.Money)]);
        return rows.Sheet("Order", 14, 12, 16, 60, 8, 9, 8, 10, 9, 10, 8, 12, 14);
    }

    private static IEnumerable<WorkbookCell> Line(string phase, PlainOrderLine line, int row)
    {
        var format = line.Unit is "pcs" or "pallet" ? CellFormat.Whole : CellFormat.TwoDecimals;
        return
        [
            WorkbookCell.Of(phase), WorkbookCell.Of(line.Catalog), WorkbookCell.Of(OrderItemWords.Of(line.Item)), WorkbookCell.Of(line.What), WorkbookCell.Of(line.Width, CellFormat.Plain), WorkbookCell.Of(line.WidthUnit), WorkbookCell.Of(line.Unit),
            WorkbookCell.Of(line.Net, format), WorkbookCell.Of(line.Net is null ? null : line.Waste, format),
            line.Net is null ? WorkbookCell.Of((double?)null, format) : WorkbookCell.Reckoned(Invariant($"H{row}+I{row}"), line.Gross, format),
            WorkbookCell.Of(line.Packs, CellFormat.Whole), WorkbookCell.Of((double?)null, CellFormat.Money, CellRole.Input),
            WorkbookCell.Reckoned(Invariant($"IF(L{row}=\"\",\"\",L{row}*IF(K{row}=\"\",J{row},K{row}))"), null, CellFormat.Money),
        ];
    }

    private static WorkbookSheet Sums(string name, string first, IEnumerable<(string Name, LotSum Sum)> sums)
    {
        string[] heads = ["Lots", "Failed", "Repeats", "Walls", "Laid out", "Blocks", "Whole", "Cut", "Saw cuts", "Lintels", "Bars", "Errors", "Warnings", "Notes"];
        var rows = new SheetRows();
        rows.Title(name);
        rows.Header([(first, CellFormat.Text), .. heads.Select(head => (head, CellFormat.Whole))]);
        var totals = new double[heads.Length];
        foreach (var (of, sum) in sums)
        {
            int[] figures = [sum.Lots, sum.Failed, sum.Reused, .. Figures(sum.Counts)];
            rows.Row([WorkbookCell.Of(of), .. figures.Select(figure => WorkbookCell.Of(figure, CellFormat.Whole))]);
            totals = [.. totals.Zip(figures, (total, figure) => total + figure)];
        }

        rows.Total([WorkbookCell.Of(WorkbookWords.Total, CellRole.Total), .. totals.Select((total, i) => rows.Sum(i + 1, total, CellFormat.Whole))]);
        return rows.Sheet(name, [36, .. heads.Select(_ => 10.0)]);
    }

    private static WorkbookSheet Findings(BatchSummary batch)
    {
        var codes = FindingCodes.All.ToDictionary(code => code.Id, StringComparer.Ordinal);
        var rows = new SheetRows();
        rows.Title("Findings", BatchWords.FindingsLead);
        rows.Header(("Code", CellFormat.Text), ("Severity", CellFormat.Text), ("How many", CellFormat.Whole), ("Lots", CellFormat.Whole), ("What it means", CellFormat.Text), ("What to do", CellFormat.Text));
        foreach (var (found, lots) in batch.Findings)
        {
            var code = codes.GetValueOrDefault(found.Code);
            rows.Row(
                WorkbookCell.Of(found.Code), WorkbookCell.Of(JsonNames.Of(found.Severity)), WorkbookCell.Of(found.Count, CellFormat.Whole), WorkbookCell.Of(lots, CellFormat.Whole),
                WorkbookCell.Of(code?.Meaning), WorkbookCell.Of(code?.Remedy));
        }

        return rows.Sheet("Findings", 28, 10, 10, 8, 60, 60);
    }

    private static WorkbookSheet Lots(BatchSummary batch)
    {
        string[] heads = ["Walls", "Laid out", "Blocks", "Whole", "Cut", "Saw cuts", "Lintels", "Bars", "Errors", "Warnings", "Notes"];
        var rows = new SheetRows();
        rows.Title("Lots");
        rows.Header(
            [("Lot", CellFormat.Text), ("Model", CellFormat.Text), ("Stands", CellFormat.Text), ("Phase", CellFormat.Text), ("State", CellFormat.Text), ("Why it failed", CellFormat.Text), .. heads.Select(head => (head, CellFormat.Whole))]);
        foreach (var lot in batch.Lots)
        {
            rows.Row(
            [
                WorkbookCell.Of(lot.Name), WorkbookCell.Of(lot.Plan), WorkbookCell.Of(BatchWords.Stands(lot.Siting)), WorkbookCell.Of(lot.Phase), WorkbookCell.Of(lot.IsDone ? "done" : "failed"), WorkbookCell.Of(lot.Reason),
                .. Figures(lot.Counts).Select(figure => WorkbookCell.Of(figure, CellFormat.Whole)),
            ]);
        }

        var sums = Figures(batch.All.Counts);
        rows.Total([WorkbookCell.Of(WorkbookWords.Total, CellRole.Total), .. Enumerable.Repeat(WorkbookCell.Of(null, CellRole.Total), 5), .. sums.Select((sum, i) => rows.Sum(i + 6, sum, CellFormat.Whole))]);
        return rows.Sheet("Lots", [14, 36, 22, 10, 8, 40, .. heads.Select(_ => 10.0)]);
    }

    private static int[] Figures(LotCounts counts) =>
        [counts.Walls, counts.Coursed, counts.Pieces, counts.FullUnits, counts.PartUnits, counts.Cuts, counts.Lintels, counts.Cores, counts.Errors, counts.Warnings, counts.Notes];
}
