namespace IfcCourser.Output.Workbooks;

/// <summary>What a cell is there for.</summary>
internal enum CellRole
{
    Body,
    Header,
    Total,
    Title,
    Note,

    /// <summary>To be filled in by the reader.</summary>
    Input,
}
