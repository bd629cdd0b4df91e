using FixtureMaker.Design;

namespace IfcCourser.Tests.Models;

/// <summary>A house design moved, turned, mirrored, or drawn in other units.</summary>
internal static class HouseMaps
{
    /// <summary>Turned about the origin, then moved; mm.</summary>
    public static House Placed(this House house, PlanMap map, double up) => house.With(up, wall => wall with { Start = map.Point(wall.Start), Heading = map.Heading(wall.Heading) });

    /// <summary>Mirrored in the y axis: every wall keeps its run, what was on its left is now on its right.</summary>
    public static House Mirrored(this House house) => house.With(0, wall => Flipped(wall) with
    {
        Start = new(-wall.Start.X, wall.Start.Y),
        Heading = new(-wall.Heading.X, wall.Heading.Y),
    });

    /// <summary>Drawn in a unit that measures so many mm.</summary>
    public static House In(this House house, HouseUnits units, double mm) => house.With(0, wall => wall with
    {
        Start = Scaled(wall.Start, mm),
        AxisTo = wall.AxisTo / mm,
        BuildUp = wall.BuildUp with { Offset = wall.BuildUp.Offset / mm, Layers = [.. wall.BuildUp.Layers.Select(layer => layer with { Thickness = layer.Thickness / mm })] },
        Body = wall.Body switch
        {
            Body.Box box => new Body.Box(box.From / mm, box.To / mm, box.Height / mm),
            Body.Plan plan => new Body.Plan([.. plan.Outline.Select(p => Scaled(p, mm))], plan.Height / mm),
            Body.Upright upright => new Body.Upright([.. upright.Outline.Select(p => Scaled(p, mm))]),
            var other => other,
        },
        Openings =
        [
            .. wall.Openings.Select(o => o with { Left = o.Left / mm, Width = o.Width / mm, Sill = o.Sill / mm, Height = o.Height / mm }),
        ],
    }) with
    { Units = units };

    private static House With(this House house, double up, Func<Wall, Wall> map) => house with
    {
        Storeys = [.. house.Storeys.Select(storey => storey with { Elevation = storey.Elevation + up, Walls = [.. storey.Walls.Select(map)] })],
    };

    // Left and right of the reference line exchanged.
    private static Wall Flipped(Wall wall) => wall with
    {
        BuildUp = wall.BuildUp with
        {
            Offset = -wall.BuildUp.Offset,
            Sense = wall.BuildUp.Sense == LayerSense.Positive ? LayerSense.Negative : LayerSense.Positive,
        },
        Body = wall.Body is Body.Plan plan ? plan with { Outline = [.. plan.Outline.Reverse().Select(p => new Point(p.X, -p.Y))] } : wall.Body,
    };

    private static Point Scaled(Point point, double mm) => new(point.X / mm, point.Y / mm);
}
