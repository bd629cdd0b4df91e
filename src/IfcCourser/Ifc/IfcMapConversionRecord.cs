using IfcCourser.Geometry;

namespace IfcCourser.Ifc;

/// <summary>Where the model lies on a map (IfcMapConversion), lengths in mm.</summary>
/// <param name="Name">Of the coordinate reference system, such as EPSG:28992.</param>
/// <param name="Eastings">Of the model's origin.</param>
/// <param name="Northings">Of the model's origin.</param>
/// <param name="Height">Of the model's origin.</param>
/// <param name="XAxis">Direction of the model's x axis on the map, a unit vector (easting, northing).</param>
/// <param name="Scale">Map length of a length of the model, both in mm: near 1.</param>
/// <param name="IsScaleRead">False where the model's scale is neither near 1 nor near the quotient of the units; 1 is taken.</param>
public sealed record IfcMapConversionRecord(
    string? Name, double Eastings, double Northings, double Height, Vector2 XAxis, double Scale, bool IsScaleRead);
