namespace IfcCourser.Slabs;

/// <summary>Which plan coordinates a readings file has, by the names of its columns.</summary>
public enum ReadingAxes
{
    /// <summary>x and y.</summary>
    Plain,

    /// <summary>easting and northing.</summary>
    Survey,

    /// <summary>wall, station along its run and offset from its left face.</summary>
    Wall,
}
