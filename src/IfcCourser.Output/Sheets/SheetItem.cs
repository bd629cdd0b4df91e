namespace IfcCourser.Output.Sheets;

/// <summary>
/// A mark on a sheet. In a view coordinates are real millimetres, on the sheet itself paper millimetres; heights of
/// text and the spacing of hatch are paper millimetres everywhere.
/// </summary>
public abstract record SheetItem(Pen Pen)
{
    public abstract SheetItem MovedBy(Point by);
}
