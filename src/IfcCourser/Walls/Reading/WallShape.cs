using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Ifc;
using IfcCourser.Ifc.Bodies;

namespace IfcCourser.Walls.Reading;

/// <summary>A wall's body measured: what it holds, and where its two faces are if it has them.</summary>
public sealed record WallShape
{
    public required BodyFacts Facts { get; init; }

    /// <summary>The wall's own coordinates; null where the body has no two parallel faces.</summary>
    public required WallSpace? Space { get; init; }

    /// <summary>Whether most of its faces lean, where it has no two upright ones.</summary>
    public bool Leans { get; init; }

    /// <summary>Openings put back, wall coordinates; like all that follows, empty where there is no space.</summary>
    public Solid Gross { get; init; } = Solid.Empty;

    /// <summary>The body's items, wall coordinates.</summary>
    public ImmutableArray<BodyItem> Items { get; init; } = [];

    /// <summary>Bodies of the openings, wall coordinates.</summary>
    public ImmutableArray<(IfcOpeningRecord Record, Solid Solid)> Openings { get; init; } = [];

    /// <summary>From the right to the left face, mm.</summary>
    public Slab Across { get; init; }

    /// <summary>Along the run, mm.</summary>
    public Slab Run { get; init; }

    /// <summary>In model axes, mm.</summary>
    public Slab Height { get; init; }

    /// <summary>Share of the footprint that lies outside the two faces.</summary>
    public double Beyond { get; init; }

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
        if (UprightFaces.Of(gross, hint) is not { } faces)
        {
            return new WallShape { Facts = facts, Space = null, Leans = UprightFaces.Lean(gross) };
        }

        var space = new WallSpace(origin, faces.Direction);
        var turned = space.Turned(gross);
        var box = turned.Box;
        var plan = Projection.Plan(turned);
        var outside = plan.Subtract(Region.Of(new Rect(box.Min.X - 1, faces.Across.From, box.Max.X + 1, faces.Across.To)));
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
            Beyond = outside.Area / plan.Area,
        };
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
