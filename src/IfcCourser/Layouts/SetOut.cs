using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Walls;

namespace IfcCourser.Layouts;

/// <summary>How bars are set out before slabs are poured.</summary>
/// <param name="Survey">Axes of the point list.</param>
/// <param name="TrueNorth">In the model's axes, a unit vector; null where the model names none.</param>
/// <param name="Storeys">Those with bars, the lowest first.</param>
public sealed record SetOut(SurveyAxes Survey, Vector2? TrueNorth, ImmutableArray<StoreySetOut> Storeys)
{
    public static readonly SetOut None = new(SurveyAxes.Model, null, []);
}
