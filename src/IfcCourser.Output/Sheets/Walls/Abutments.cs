using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Output.Sheets.Walls;

/// <summary>Where other walls abut this one, projected on its run; in the elevation a bar at its upper and its lower edge.</summary>
internal static class Abutments
{
    public static IEnumerable<Abutment> Of(WallFacts facts) => facts.Layout.Junctions
        .Where(junction => IsHost(facts, junction))
        .Select(junction => Of(facts, junction))
        .OfType<Abutment>()
        .Where(abutment => facts.Stretch?.Shows((abutment.From.Mm + abutment.To.Mm) / 2) ?? true);

    /// <summary>The wall abutting at a tee whose host this wall is, or null.</summary>
    public static Abutment? Of(WallFacts facts, JunctionLayout junction) =>
        IsHost(facts, junction) && facts.Layout.Walls.FirstOrDefault(wall => wall.Identity.GlobalId == junction.Walls[1]) is { } other
            ? Projected(facts.Wall.Frame, other)
            : null;

    public static void Draw(Canvas canvas, WallFacts facts)
    {
        var mm = canvas.PerPaper;
        foreach (var abutment in Of(facts))
        {
            foreach (var y in new[] { facts.Top + (0.5 * mm), facts.Bottom - (2 * mm) })
            {
                canvas.Add(Bar(new Box(abutment.From.Mm, y, abutment.To.Mm, y + (1.5 * mm))));
            }
        }
    }

    public static HatchItem Bar(Box box) => new(Pen.Neighbour, [box.Corners()], HatchKind.Solid);

    /// <summary>Whether this wall ends there at its start; at a tee whose abutting wall it is.</summary>
    public static bool IsAtStart(WallFacts facts, WallLayout host)
    {
        var (own, axis) = (facts.Wall.Frame, host.Frame);
        return Math.Abs(Across(axis, Middle(own, Length.Zero))) < Math.Abs(Across(axis, Middle(own, own.Length)));
    }

    private static bool IsHost(WallFacts facts, JunctionLayout junction) =>
        junction.Kind == JunctionKind.Tee && junction.Walls[0] == facts.Wall.Identity.GlobalId;

    private static Abutment Projected(WallFrame own, WallLayout other)
    {
        var ends = new[] { Length.Zero, other.Frame.Length }.OrderBy(s => Math.Abs(Across(own, Middle(other.Frame, s)))).ToArray();
        var along = new[] { Length.Zero, other.Frame.Thickness }
            .Select(t => Vector2.Dot(other.Frame.PointAt(ends[0], t, Length.Zero).Plan - own.Origin.Plan, own.Direction)).Order().ToArray();
        return new Abutment(
            other, Length.FromModelMm(along[0]), Length.FromModelMm(along[1]), Across(own, Middle(other.Frame, ends[1])) < 0);
    }

    private static Vector2 Middle(WallFrame frame, Length s) => frame.PointAt(s, frame.Thickness / 2, Length.Zero).Plan;

    /// <summary>From the middle of a wall's thickness, positive to the left of its run, mm.</summary>
    private static double Across(WallFrame frame, Vector2 point) =>
        Vector2.Dot(point - frame.Origin.Plan, frame.Normal) + (frame.Thickness.Mm / 2);
}
