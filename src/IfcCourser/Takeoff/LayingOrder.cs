using System.Collections.Immutable;
using IfcCourser.Layouts;

namespace IfcCourser.Takeoff;

/// <summary>The order in which walls go up: storey by storey from below, in each as the layout lists them.</summary>
internal static class LayingOrder
{
    public static IEnumerable<WallLayout> Of(Layout layout) => layout.Storeys.SelectMany(storey => storey);

    /// <summary>The same, delivery by delivery.</summary>
    public static IEnumerable<WallLayout> Of(Layout layout, ImmutableArray<DeliveryPhase> phases)
    {
        var places = phases.SelectMany((phase, place) => phase.Walls.Select(wall => (wall, place))).ToDictionary(wall => wall.wall, wall => wall.place, StringComparer.Ordinal);
        return Of(layout).OrderBy(wall => places.GetValueOrDefault(wall.Identity.GlobalId));
    }
}
