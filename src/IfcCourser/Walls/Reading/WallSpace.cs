using IfcCourser.Geometry;

namespace IfcCourser.Walls.Reading;

/// <summary>
/// A wall's own coordinates: x along its run, y to the left, z up, from an origin near the wall, so that models far
/// from zero lose nothing.
/// </summary>
/// <param name="Origin">In model axes, mm.</param>
/// <param name="Direction">Of the run, a unit vector in plan.</param>
public sealed record WallSpace(Vector3 Origin, Vector2 Direction)
{
    /// <summary>Takes model axes to wall coordinates.</summary>
    public Transform3 FromModel
    {
        get
        {
            var turn = new Transform3(default, new Vector3(Direction.X, -Direction.Y, 0), new Vector3(Direction.Y, Direction.X, 0), new Vector3(0, 0, 1));
            return turn with { Origin = turn.Direction(-Origin) };
        }
    }

    /// <summary>A point of the wall in model axes, mm.</summary>
    public Vector3 ToModel(double along, double left, double up)
    {
        var plan = (Direction * along) + (Direction.Left * left);
        return Origin + new Vector3(plan.X, plan.Y, up);
    }

    /// <summary>A solid given relative to <see cref="Origin"/>, axes as in the model, in wall coordinates.</summary>
    public Solid Turned(Solid relative) => relative.Transformed(FromModel with { Origin = default });

    /// <summary>A plan point of the model in wall coordinates: along and to the left.</summary>
    public Vector2 Plan(Vector2 model)
    {
        var relative = model - Origin.Plan;
        return new Vector2(Vector2.Dot(relative, Direction), Vector2.Dot(relative, Direction.Left));
    }

    /// <summary>A plan direction of the model in wall coordinates.</summary>
    public Vector2 PlanDirection(Vector2 model) => new(Vector2.Dot(model, Direction), Vector2.Dot(model, Direction.Left));
}
