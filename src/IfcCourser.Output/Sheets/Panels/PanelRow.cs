namespace IfcCourser.Output.Sheets.Panels;

/// <summary>A row of a panel; items are relative to its upper left corner, paper millimetres, y downwards negative.</summary>
internal sealed record PanelRow(double Height, ImmutableArray<SheetItem> Items);
