using System.Collections.Immutable;

namespace IfcCourser.Geometry;

/// <summary>
/// A B-spline curve, rational where the weights differ; a point of it by de Boor's algorithm on homogeneous coordinates
/// (Piegl and Tiller, The NURBS Book, section 4.1, from memory).
/// </summary>
/// <param name="Degree">At least 1.</param>
/// <param name="Points">Control points, mm.</param>
/// <param name="Weights">One per point.</param>
/// <param name="Knots">Not decreasing, one per point and degree + 1 more.</param>
public sealed record SplineCurve(int Degree, ImmutableArray<Vector3> Points, ImmutableArray<double> Weights, ImmutableArray<double> Knots)
{
    /// <summary>Chords in a span between two knots; straight spans need one.</summary>
    private const int ChordsPerSpan = 8;

    public bool IsValid => Degree >= 1 && Points.Length > Degree && Weights.Length == Points.Length && Knots.Length == Points.Length + Degree + 1;

    /// <summary>The curve as a chain of chords between points on it.</summary>
    public ImmutableArray<Vector3> Chain()
    {
        var chain = ImmutableArray.CreateBuilder<Vector3>();
        var chords = Degree == 1 ? 1 : ChordsPerSpan;
        for (var span = Degree; span < Points.Length; span++)
        {
            var (from, to) = (Knots[span], Knots[span + 1]);
            for (var i = chain.Count == 0 ? 0 : 1; to > from && i <= chords; i++)
            {
                chain.Add(Point(span, from + ((to - from) * i / chords)));
            }
        }

        return chain.ToImmutable();
    }

    private Vector3 Point(int span, double at)
    {
        var points = new Vector3[Degree + 1];
        var weights = new double[Degree + 1];
        for (var i = 0; i <= Degree; i++)
        {
            weights[i] = Weights[span - Degree + i];
            points[i] = Points[span - Degree + i] * weights[i];
        }

        for (var level = 1; level <= Degree; level++)
        {
            for (var i = Degree; i >= level; i--)
            {
                var (low, high) = (Knots[span - Degree + i], Knots[span + 1 + i - level]);
                var share = (at - low) / (high - low);
                points[i] = (points[i - 1] * (1 - share)) + (points[i] * share);
                weights[i] = (weights[i - 1] * (1 - share)) + (weights[i] * share);
            }
        }

        return points[Degree] * (1 / weights[Degree]);
    }
}
