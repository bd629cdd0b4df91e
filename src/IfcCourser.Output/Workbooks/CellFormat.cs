namespace IfcCourser.Output.Workbooks;

/// <summary>How a cell's value is shown.</summary>
internal enum CellFormat
{
    Text,
    Whole,
    OneDecimal,
    TwoDecimals,

    /// <summary>Inches as whole numbers and fractions.</summary>
    Fraction,
    Money,
}
