using IfcCourser.Units;

namespace IfcCourser.Output.Sheets;

/// <summary>A sheet of a drawing set: built once, rendered by every writer.</summary>
/// <param name="Name">Unique in its set; the name of its layout and file.</param>
/// <param name="Items">On the paper itself: frame, title block, tables, notes; paper millimetres.</param>
public sealed record Sheet(
    string Name,
    PaperSize Paper,
    UnitSystem Units,
    PenTable Pens,
    TitleBlock Title,
    ImmutableArray<View> Views,
    ImmutableArray<SheetItem> Items);
