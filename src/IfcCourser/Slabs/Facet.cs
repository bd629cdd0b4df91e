using System.Collections.Immutable;
using IfcCourser.Geometry;

namespace IfcCourser.Slabs;

/// <summary>A convex piece of a block's underside over one triangle of the slab, with a value that changes evenly over it; integrals are exact.</summary>
/// <param name="Corners">Counter-clockwise, mm.</param>
public readonly record struct Facet(ImmutableArray<SlabVertex> Corners)
{
    /// <summary>mm2.</summary>
    public double Area => Over((_, _, _) => 1);

    /// <summary>Integral of the value over the area, mm3.</summary>
    public double Volume => Over((a, b, c) => (a.Value + b.Value + c.Value) / 3);

    /// <summary>The centre of its area.</summary>
    public Vector2 Middle
    {
        get
        {
            var (x, y, area) = (Over((a, b, c) => (a.Plan.X + b.Plan.X + c.Plan.X) / 3), Over((a, b, c) => (a.Plan.Y + b.Plan.Y + c.Plan.Y) / 3), Area);
            return new Vector2(x / area, y / area);
        }
    }

    public bool IsEmpty => Corners.Length < 3 || Area <= 0;

    /// <summary>The part on the left of a line; values on its new corners in proportion.</summary>
    public Facet LeftOf(Vector2 from, Vector2 to) => Where(corner => Vector2.Cross(to - from, corner.Plan - from));

    /// <summary>The part whose value is larger than a limit.</summary>
    public Facet Above(double limit) => Where(corner => corner.Value - limit);

    /// <summary>The part whose value is less than a limit.</summary>
    public Facet Below(double limit) => Where(corner => limit - corner.Value);

    /// <summary>The same place with other values.</summary>
    public Facet With(Func<SlabVertex, double> value) => new([.. Corners.Select(corner => corner with { Value = value(corner) })]);

    // Sutherland and Hodgman's clipping by one line.
    private Facet Where(Func<SlabVertex, double> side)
    {
        var kept = ImmutableArray.CreateBuilder<SlabVertex>();
        for (var i = 0; i < Corners.Length; i++)
        {
            var (here, next) = (Corners[i], Corners[(i + 1) % Corners.Length]);
            var (s, t) = (side(here), side(next));
            if (s >= 0)
            {
                kept.Add(here);
            }

            if ((s > 0 && t < 0) || (s < 0 && t > 0))
            {
                var share = s / (s - t);
                kept.Add(new SlabVertex(here.Plan + ((next.Plan - here.Plan) * share), here.Value + ((next.Value - here.Value) * share)));
            }
        }

        return new Facet(kept.ToImmutable());
    }

    private double Over(Func<SlabVertex, SlabVertex, SlabVertex, double> mean)
    {
        var sum = 0.0;
        for (var i = 1; i + 1 < Corners.Length; i++)
        {
            sum += Vector2.Cross(Corners[i].Plan - Corners[0].Plan, Corners[i + 1].Plan - Corners[0].Plan) / 2 * mean(Corners[0], Corners[i], Corners[i + 1]);
        }

        return sum;
    }
}
