using IfcCourser.Geometry;

namespace IfcCourser.Walls;

/// <summary>Axes that a total station works in. Map coordinates where the model has a map conversion, else the building grid, else the model's axes.</summary>
/// <param name="Name">Coordinate reference system, or the tags of the two grid lines; null for the model's own axes.</param>
/// <param name="Eastings">Of the model's origin, mm.</param>
/// <param name="Northings">Of the model's origin, mm.</param>
/// <param name="Height">Of the model's origin, mm.</param>
/// <param name="East">Direction of growing eastings in the model's axes, a unit vector.</param>
/// <param name="Scale">Length on the map of a length of the model.</param>
public sealed record SurveyAxes(SurveyKind Kind, string? Name, double Eastings, double Northings, double Height, Vector2 East, double Scale)
{
    public static readonly SurveyAxes Model = new(SurveyKind.Model, null, 0, 0, 0, new Vector2(1, 0), 1);

    /// <summary>From the model's x axis, counter-clockwise, to the axis of eastings, in degrees.</summary>
    public double RotationDegrees => Math.Atan2(East.Y, East.X) * 180 / Math.PI;

    /// <summary>Easting, northing and height of a point of the model, mm.</summary>
    public Vector3 Of(Vector3 point) => new(
        Eastings + (Scale * Vector2.Dot(point.Plan, East)),
        Northings + (Scale * Vector2.Dot(point.Plan, East.Left)),
        Height + point.Z);
}
