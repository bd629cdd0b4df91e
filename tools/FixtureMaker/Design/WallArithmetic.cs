using System.Collections.Immutable;

namespace FixtureMaker.Design;

/// <summary>Lengths, areas and volumes of a wall from its design alone, in the model's length unit and its square and cube:
/// the sums that go into Qto_WallBaseQuantities (definitions of IFC4 ADD2 TC1, Qto_WallBaseQuantities).</summary>
internal static class WallArithmetic
{
    public static double Length(Wall wall) => wall.Body switch
    {
        Body.Box box => box.To - box.From,
        Body.Clipped clipped => clipped.To - clipped.From,
        Body.Plan plan => plan.Outline.Max(p => p.X) - plan.Outline.Min(p => p.X),
        Body.Upright upright => upright.Outline.Max(p => p.X) - upright.Outline.Min(p => p.X),
        _ => throw new InvalidOperationException("unknown body"),
    };

    public static double Height(Wall wall) => wall.Body switch
    {
        Body.Box box => box.Height,
        Body.Plan plan => plan.Height,
        _ => Elevation(wall.Body).Max(p => p.Y),
    };

    public static double GrossFootprintArea(Wall wall) => wall.Body is Body.Plan plan
        ? Area(plan.Outline)
        : Length(wall) * wall.BuildUp.Thickness;

    public static double GrossSideArea(Wall wall) => wall.Body is Body.Plan or Body.Box
        ? Length(wall) * Height(wall)
        : Area(Elevation(wall.Body));

    public static double NetSideArea(Wall wall) => GrossSideArea(wall) - OpeningArea(wall);

    public static double GrossVolume(Wall wall) => wall.Body is Body.Plan plan
        ? Area(plan.Outline) * plan.Height
        : GrossSideArea(wall) * wall.BuildUp.Thickness;

    public static double NetVolume(Wall wall) => GrossVolume(wall) - (OpeningArea(wall) * wall.BuildUp.Thickness);

    /// <summary>Area of a simple polygon by the shoelace formula.</summary>
    public static double Area(ImmutableArray<Point> outline)
    {
        var twice = 0d;
        for (var i = 0; i < outline.Length; i++)
        {
            var (a, b) = (outline[i], outline[(i + 1) % outline.Length]);
            twice += (a.X * b.Y) - (b.X * a.Y);
        }

        return Math.Abs(twice) / 2;
    }

    // Openings of the houses lie inside their wall, apart from sills under the base.
    private static double OpeningArea(Wall wall) => wall.Openings.Sum(opening => opening.Use == OpeningUse.Sleeve
        ? Math.PI * opening.Width * opening.Width / 4
        : opening.Width * (opening.Sill + opening.Height - Math.Max(0, opening.Sill)));

    private static ImmutableArray<Point> Elevation(Body body) => body switch
    {
        Body.Upright upright => upright.Outline,
        Body.Clipped clipped => clipped.Roof.Aggregate(Rectangle(clipped), Below),
        _ => throw new InvalidOperationException("a body with a plan outline has no elevation of its own"),
    };

    private static ImmutableArray<Point> Rectangle(Body.Clipped body) =>
    [
        new(body.From, 0), new(body.To, 0), new(body.To, body.Height), new(body.From, body.Height),
    ];

    // Sutherland and Hodgman's clipping of a convex polygon by one line.
    private static ImmutableArray<Point> Below(ImmutableArray<Point> outline, RoofLine roof)
    {
        var kept = ImmutableArray.CreateBuilder<Point>();
        for (var i = 0; i < outline.Length; i++)
        {
            var (a, b) = (outline[i], outline[(i + 1) % outline.Length]);
            var (over, overNext) = (Over(a, roof), Over(b, roof));
            if (over <= 0)
            {
                kept.Add(a);
            }

            if (over * overNext < 0)
            {
                var share = over / (over - overNext);
                kept.Add(new Point(a.X + (share * (b.X - a.X)), a.Y + (share * (b.Y - a.Y))));
            }
        }

        return kept.ToImmutable();
    }

    private static double Over(Point point, RoofLine roof) =>
        ((roof.Right.X - roof.Left.X) * (point.Y - roof.Left.Y)) - ((roof.Right.Y - roof.Left.Y) * (point.X - roof.Left.X));
}
