namespace IfcCourser.Output.Workbooks;

/// <summary>How a cell's value is shown.</summary>
internal enum CellFormat
{
    Text,

    /// <summary>A number with as many decimals as it has.</summary>
    Plain,
    Whole,
    OneDecimal,
    TwoDecimals,

    /// <summary>Inches as whole numbers and fractions.</summary>
    Fraction,
    Money,
}
