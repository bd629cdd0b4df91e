using System.Collections.Immutable;
using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Ifc;
using IfcCourser.Ifc.Bodies;

namespace IfcCourser.Walls.Reading;

/// <summary>A wall's body measured: what it holds, and where its two faces are if it has them.</summary>
public sealed record WallShape
{
    public required BodyFacts Facts { get; init; }

    /// <summary>The wall's own coordinates, those at the start of the run where it is curved; null where the body is no wall of one thickness.</summary>
    public required WallSpace? Space { get; init; }

    /// <summary>Why there is no space, where the body does not bend around a curve.</summary>
    public FindingCode? Fault { get; init; }

    /// <summary>The tightest bend of a body that is curved in plan.</summary>
    public PlanCurve? Curve { get; init; }

    /// <summary>Openings put back, wall coordinates; axes as in the model where the wall is curved. Like all that follows, empty where there is no space.</summary>
    public Solid Gross { get; init; } = Solid.Empty;

    /// <summary>The body's items, wall coordinates; none where the wall is curved.</summary>
    public ImmutableArray<BodyItem> Items { get; init; } = [];

    /// <summary>Bodies of the openings, in the same coordinates as the body.</summary>
    public ImmutableArray<(IfcOpeningRecord Record, Solid Solid)> Openings { get; init; } = [];

    /// <summary>From the right to the left face, mm.</summary>
    public Slab Across { get; init; }

    /// <summary>Along the run, mm.</summary>
    public Slab Run { get; init; }

    /// <summary>In model axes, mm.</summary>
    public Slab Height { get; init; }

    /// <summary>Share of the body that stands out of its two faces.</summary>
    public double Beyond { get; init; }

    /// <summary>Where more than this share of a body stands out of its faces, they are not the wall's.</summary>
    private const double MostBeyond = 1.0 / 3;

    /// <summary>The widest cavity between two leaves of one wall, mm. Common practice, no source.</summary>
    private const double WidestCavity = 400;

    /// <summary>Measures a body; everything is computed near its own origin, a whole number of metres.</summary>
    public static WallShape Of(Body body, ImmutableArray<(IfcOpeningRecord Record, Solid Solid)> openings, Vector2 hint)
    {
        var corner = Box3.Around(body.Items.Select(item => item.Solid.Box.Min)).Min;
        var origin = new Vector3(Whole(corner.X), Whole(corner.Y), Whole(corner.Z));
        var near = Transform3.Identity with { Origin = -origin };
        var items = body.Items.Select(item => item with { Solid = item.Solid.Transformed(near) }).ToImmutableArray();
        var voids = openings.Select(opening => (opening.Record, Solid: opening.Solid.Transformed(near))).ToImmutableArray();
        var gross = new Body(items, []).Solid;
        var facts = Measured(gross, voids.Select(opening => opening.Solid), origin);
        if (PlanCurve.In(Projection.Plan(gross), hint) is { } curve)
        {
            return !curve.IsWhole ? new WallShape { Facts = facts, Space = null, Curve = curve } : new WallShape
            {
                Facts = facts,
                Space = new WallSpace(origin, curve.Direction(0)),
                Curve = curve,
                Gross = gross,
                Openings = voids,
                Across = curve.Across,
                Run = new Slab(0, curve.Length),
                Height = new Slab(origin.Z + gross.Box.Min.Z, origin.Z + gross.Box.Max.Z),
            };
        }

        if (UprightFaces.Of(gross, hint) is not { } faces)
        {
            return new WallShape { Facts = facts, Space = null, Fault = UprightFaces.Lean(gross) ? FindingCodes.FacesNotUpright : FindingCodes.NoParallelFaces };
        }

        var space = new WallSpace(origin, faces.Direction);
        var turned = space.Turned(gross);
        var beyond = ShareBeyond(turned, faces.Across);
        if (beyond > MostBeyond || IsHollow(Projection.Plan(turned), faces.Across))
        {
            return new WallShape { Facts = facts, Space = null, Fault = FindingCodes.TurnsInPlan };
        }

        var box = turned.Box;
        return new WallShape
        {
            Facts = facts,
            Space = space,
            Gross = turned,
            Items = [.. items.Select(item => item with { Solid = space.Turned(item.Solid) })],
            Openings = [.. voids.Select(opening => (opening.Record, space.Turned(opening.Solid)))],
            Across = faces.Across,
            Run = new Slab(box.Min.X, box.Max.X),
            Height = new Slab(origin.Z + box.Min.Z, origin.Z + box.Max.Z),
            Beyond = beyond,
        };
    }

    private static double ShareBeyond(Solid body, Slab across)
    {
        var between = body.Behind(new Plane3(new Vector3(0, 1, 0), across.To)).Behind(new Plane3(new Vector3(0, -1, 0), -across.From));
        return 1 - (between.Volume / body.Volume);
    }

    // Two leaves too far from each other are two walls, as the opposite sides of a room are.
    private static bool IsHollow(Region plan, Slab across)
    {
        const double LeastLength = 0.5;
        var run = plan.Bounds;
        ImmutableArray<double> places = [.. plan.Edges.SelectMany(edge => new[] { edge.From.Y, edge.To.Y }).Where(y => y >= across.From && y <= across.To).Distinct().Order()];
        return places.Zip(places.Skip(1)).Any(strip => strip.Second - strip.First > WidestCavity
            && plan.Intersect(Region.Of(new Rect(run.Left, strip.First, run.Right, strip.Second))).Area < LeastLength * run.Width * (strip.Second - strip.First));
    }

    private static double Whole(double mm) => Math.Floor(mm / 1000) * 1000;

    private static BodyFacts Measured(Solid gross, IEnumerable<Solid> voids, Vector3 origin)
    {
        const double CubicMetre = 1e9;
        var net = voids.Aggregate(gross, (rest, hole) => rest.Subtract(hole));
        var box = (net.IsEmpty ? gross : net).Box;
        return new BodyFacts(net.Volume / CubicMetre, gross.Volume / CubicMetre, box.Min + origin, box.Max + origin);
    }
}
