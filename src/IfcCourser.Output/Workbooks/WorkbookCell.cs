namespace IfcCourser.Output.Workbooks;

/// <summary>A cell: a text, a number, or a formula with the value it has now; one without any is empty.</summary>
internal sealed record WorkbookCell(CellRole Role, CellFormat Format)
{
    public string? Text { get; init; }

    public double? Value { get; init; }

    /// <summary>Without the leading equals sign; null where the cell is none. Texts are never formulas.</summary>
    public string? Formula { get; init; }

    public static WorkbookCell Of(string? text, CellRole role = CellRole.Body) => new(role, CellFormat.Text) { Text = text };

    public static WorkbookCell Of(double? value, CellFormat format, CellRole role = CellRole.Body) => new(role, format) { Value = value };

    public static WorkbookCell Reckoned(string formula, double? value, CellFormat format, CellRole role = CellRole.Body) => new(role, format) { Formula = formula, Value = value };
}
