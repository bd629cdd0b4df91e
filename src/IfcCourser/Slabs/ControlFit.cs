using System.Collections.Immutable;
using IfcCourser.Geometry;

namespace IfcCourser.Slabs;

/// <summary>
/// How the plan axes of a readings file lie in the model: turned and moved, never stretched, so that control points fall on their places with the
/// least sum of squared distances (closed form: the turn from the sums of dot and cross products about both centroids).
/// </summary>
/// <param name="Cosine">Of the turn.</param>
/// <param name="Sine">Of the turn.</param>
/// <param name="Residuals">What each control point lies off its place in the model, mm.</param>
/// <param name="Scale">Distances in the model over those of the file; one where units and points are right.</param>
public sealed record ControlFit(
    Vector2 FileMiddle, Vector2 ModelMiddle, double Cosine, double Sine, ImmutableArray<ControlResidual> Residuals, double Scale)
{
    /// <summary>A place of the file in model axes, mm.</summary>
    public Vector2 ToModel(Vector2 place)
    {
        var at = place - FileMiddle;
        return ModelMiddle + new Vector2((Cosine * at.X) - (Sine * at.Y), (Sine * at.X) + (Cosine * at.Y));
    }

    /// <param name="points">Two or more, not all in one place: where each is in the file and in the model.</param>
    public static ControlFit Of(IReadOnlyList<(string Point, Vector2 File, Vector2 Model)> points)
    {
        var (file, model) = (Middle(points.Select(point => point.File)), Middle(points.Select(point => point.Model)));
        var (dot, cross, spread) = (0.0, 0.0, 0.0);
        foreach (var point in points)
        {
            var (a, b) = (point.File - file, point.Model - model);
            dot += Vector2.Dot(a, b);
            cross += Vector2.Cross(a, b);
            spread += Vector2.Dot(a, a);
        }

        var size = Math.Sqrt((dot * dot) + (cross * cross));
        var fit = new ControlFit(file, model, size > 0 ? dot / size : 1, size > 0 ? cross / size : 0, [], size / spread);
        return fit with { Residuals = [.. points.Select(point => new ControlResidual(point.Point, point.Model, fit.ToModel(point.File) - point.Model))] };
    }

    private static Vector2 Middle(IEnumerable<Vector2> places)
    {
        var all = places.ToArray();
        return all.Aggregate(default(Vector2), (sum, place) => sum + place) * (1.0 / all.Length);
    }
}
