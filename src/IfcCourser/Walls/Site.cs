using System.Collections.Immutable;
using IfcCourser.Geometry;

namespace IfcCourser.Walls;

/// <summary>What a model holds beside its walls that they are set out from.</summary>
/// <param name="Slabs">Slabs near the walls' bases, in the order of the file.</param>
/// <param name="Grid">Straight grid lines, in the order of the file.</param>
/// <param name="Survey">Axes that a total station works in.</param>
/// <param name="TrueNorth">In the model's axes, a unit vector; null where the model names none.</param>
public sealed record Site(ImmutableArray<SlabFootprint> Slabs, ImmutableArray<GridLine> Grid, SurveyAxes Survey, Vector2? TrueNorth)
{
    public static readonly Site None = new([], [], SurveyAxes.Model, null);
}
