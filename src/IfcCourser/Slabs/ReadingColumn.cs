namespace IfcCourser.Slabs;

/// <summary>A column that readings files may have.</summary>
internal enum ReadingColumn
{
    Point,
    X,
    Y,
    Easting,
    Northing,
    Station,
    Offset,
    Height,
    Rod,
    Instrument,
    Code,
    Wall,
    Core,
}
