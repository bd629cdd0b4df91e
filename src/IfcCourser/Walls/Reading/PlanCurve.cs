using System.Collections.Immutable;
using IfcCourser.Geometry;

namespace IfcCourser.Walls.Reading;

/// <summary>A bend of a wall of one thickness around a circle in plan.</summary>
/// <param name="Radius">Of its centre line, mm.</param>
/// <param name="Thickness">mm.</param>
public sealed record PlanCurve(double Radius, double Thickness)
{
    /// <summary>Bends by less than this, radians (10 degrees), are none.</summary>
    private const double LeastTurn = Math.PI / 18;

    /// <summary>The tightest bend of a footprint: an outer and an inner arc about one centre. Null where there is none.</summary>
    public static PlanCurve? In(Region footprint)
    {
        ImmutableArray<LoopArc> arcs =
        [
            .. footprint.Parts
                .SelectMany(part => LoopArc.In(part.Outline).Concat(part.Holes.SelectMany(hole => LoopArc.In(hole.Outline)).Select(arc => arc with { Turn = -arc.Turn })))
                .Where(arc => Math.Abs(arc.Turn) >= LeastTurn),
        ];
        return arcs
            .Where(arc => arc.Turn > 0)
            .SelectMany(outer => arcs.Where(inner => inner.Turn < 0 && AreConcentric(outer, inner)).Select(inner => Between(outer, inner)))
            .MinBy(curve => curve.Radius);
    }

    private static PlanCurve Between(LoopArc outer, LoopArc inner) => new((outer.Radius + inner.Radius) / 2, outer.Radius - inner.Radius);

    private static bool AreConcentric(LoopArc outer, LoopArc inner) =>
        outer.Radius > inner.Radius && (outer.Centre - inner.Centre).Length <= (outer.Radius - inner.Radius) / 4;
}
