using System.Collections.Immutable;
using IfcCourser.Jobs;
using IfcCourser.Layouts;

namespace IfcCourser.Takeoff;

/// <summary>Which walls come in which delivery.</summary>
public static class DeliveryPhases
{
    /// <summary>Phases with at least one coursed wall; walls that none names come last, in a phase of their own. None where all comes at once.</summary>
    public static ImmutableArray<DeliveryPhase> Of(Layout layout, JobPhases phases)
    {
        if (phases.ByStorey)
        {
            return Named(layout.Storeys.Select(storey => (storey.Key ?? Messages.NoStorey, (IEnumerable<WallLayout>)storey)));
        }

        var walls = LayingOrder.Of(layout).ToLookup(wall => phases.Listed.FirstOrDefault(phase => phase.Includes(wall.Identity)));
        return phases.Listed.IsEmpty ? [] : Named(phases.Listed.Select(phase => (phase.Name, walls[phase])).Append((Messages.NoPhase, walls[null])));
    }

    private static ImmutableArray<DeliveryPhase> Named(IEnumerable<(string Name, IEnumerable<WallLayout> Walls)> phases) =>
    [
        .. phases.Select(phase => new DeliveryPhase(phase.Name, [.. phase.Walls.Select(wall => wall.Identity.GlobalId)])).Where(phase => !phase.Walls.IsEmpty),
    ];
}
