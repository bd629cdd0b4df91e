using IfcCourser.Geometry;
using IfcCourser.Units;

namespace IfcCourser.Layouts;

/// <summary>
/// The axes that a storey is measured in: x along most of its walls, nearest to the model's x axis; zero where two control
/// lines cross.
/// </summary>
/// <param name="Origin">Model axes, mm.</param>
/// <param name="Along">Direction of x in the model's axes, a unit vector.</param>
/// <param name="XFrom">The line that x is measured from.</param>
/// <param name="YFrom">The line that y is measured from.</param>
public sealed record SetOutAxes(Vector2 Origin, Vector2 Along, ControlLine XFrom, ControlLine YFrom)
{
    /// <summary>From the axes, unrounded, mm.</summary>
    public Vector2 Of(Vector2 point) => new(Vector2.Dot(point - Origin, Along), Vector2.Dot(point - Origin, Along.Left));

    /// <summary>A coordinate as it is measured on site.</summary>
    public (Length X, Length Y) Measured(Vector2 point) => (Length.FromModelMm(Of(point).X), Length.FromModelMm(Of(point).Y));
}
