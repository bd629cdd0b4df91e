using System.Globalization;
using IfcCourser.Geometry;

namespace IfcCourser.Layouts;

/// <summary>How a plan stands on its lot: mirrored first (the model's x axis turned round), then turned about the model's origin.</summary>
/// <param name="Rotation">Degrees, counter-clockwise, from 0 to less than 360.</param>
public sealed record LotSiting(bool IsMirrored, decimal Rotation)
{
    private const decimal Circle = 360;

    public static readonly LotSiting AsDrawn = new(IsMirrored: false, Rotation: 0);

    /// <summary>What sheets say of it; null for a plan as drawn.</summary>
    public string? Label => (IsMirrored, Rotation) switch
    {
        (false, 0) => null,
        (true, 0) => "plan mirrored",
        (false, _) => Turned("plan turned"),
        _ => Turned("plan mirrored and turned"),
    };

    /// <summary>Quarter turns are exact.</summary>
    private (double Sin, double Cos) Turn => Rotation switch
    {
        0 => (0, 1),
        90 => (1, 0),
        180 => (0, -1),
        270 => (-1, 0),
        _ => Math.SinCos((double)Rotation * Math.PI / 180),
    };

    /// <param name="isMirrored">Whether the plan is mirrored.</param>
    /// <param name="degrees">Any angle, counter-clockwise.</param>
    public static LotSiting Of(bool isMirrored, decimal degrees) => new(isMirrored, ((degrees % Circle) + Circle) % Circle);

    /// <summary>A point or direction in plan, model axes.</summary>
    public Vector2 Of(Vector2 plan)
    {
        var (sin, cos) = Turn;
        var x = IsMirrored ? -plan.X : plan.X;
        return new Vector2((x * cos) - (plan.Y * sin), (x * sin) + (plan.Y * cos));
    }

    /// <summary>A point in space, model axes: heights stay.</summary>
    public Vector3 Of(Vector3 point)
    {
        var plan = Of(point.Plan);
        return new Vector3(plan.X, plan.Y, point.Z);
    }

    private string Turned(string what) => string.Create(CultureInfo.InvariantCulture, $"{what} {Rotation:0.####}°");
}
