using System.Collections.Immutable;
using IfcCourser.Layouts;

namespace IfcCourser.Takeoff;

/// <summary>Divides what walls take into the packs of the order, and sets each down beside the wall that takes most of it.</summary>
internal static class StagedPacks
{
    /// <summary>The packs by number; none where the catalog does not say how they are set down or how many units they hold.</summary>
    /// <param name="deliveries">One, of no name, where all comes at once.</param>
    /// <param name="walls">What each wall takes, by GlobalId.</param>
    public static ImmutableArray<StagedPack> Of(Layout layout, ImmutableArray<Delivery> deliveries, IReadOnlyDictionary<string, OrderGroup> walls)
    {
        if (layout.Rules.Catalog.Ordering.Staging is not { } data)
        {
            return [];
        }

        var storeys = layout.Storeys.ToList();
        ImmutableArray<WallLayout> sequence = [.. storeys.SelectMany(storey => WallSequence.Of(storey))];
        var packs = deliveries.SelectMany(delivery => Packs(delivery, sequence, walls)).ToImmutableArray();
        var places = new Dictionary<int, StagedPlace?>();
        foreach (var (storey, i) in storeys.Select((storey, i) => (storey, i)))
        {
            var ground = new StagingGround([.. storey], i == 0 ? null : [.. storeys[i - 1]], data);
            var here = packs.Select((pack, number) => (pack, number)).Where(pack => string.Equals(pack.pack.Storey, storey.Key, StringComparison.Ordinal));
            var beside = here.GroupBy(pack => Main(pack.pack, storey)).ToDictionary(group => group.Key, group => group.Select(pack => pack.number).ToList());
            foreach (var wall in sequence.Where(beside.ContainsKey))
            {
                foreach (var (number, k) in beside[wall].Select((number, k) => (number, k)))
                {
                    places[number] = Placed(ground, wall, (k + 0.5) / beside[wall].Count, [.. storey]);
                }
            }
        }

        return [.. packs.Select((pack, number) => pack with { Number = number + 1, Place = places[number] })];
    }

    /// <summary>Beside the wall; where there is no room, beside the nearest that has some.</summary>
    private static StagedPlace? Placed(StagingGround ground, WallLayout wall, double share, ImmutableArray<WallLayout> storey) =>
        ground.Place(wall, share) ?? WallSequence.Nearest(wall, storey).Select(other => ground.Place(other, 0.5)).FirstOrDefault(place => place is not null);

    private static WallLayout Main(StagedPack pack, IEnumerable<WallLayout> storey)
    {
        var units = pack.Uses.ToDictionary(use => use.Wall, use => use.Units, StringComparer.Ordinal);
        return storey.MaxBy(wall => units.GetValueOrDefault(wall.Identity.GlobalId, -1))!;
    }

    private static IEnumerable<StagedPack> Packs(Delivery delivery, ImmutableArray<WallLayout> sequence, IReadOnlyDictionary<string, OrderGroup> walls)
    {
        var own = delivery.Phase.Walls.ToHashSet(StringComparer.Ordinal);
        ImmutableArray<WallLayout> going = [.. sequence.Where(wall => own.Contains(wall.Identity.GlobalId))];
        var places = going.Select((wall, i) => (wall.Identity.GlobalId, i)).ToDictionary(wall => wall.GlobalId, wall => wall.i, StringComparer.Ordinal);
        return delivery.Lines.Where(line => line.Key.Item == OrderItem.Pallet && line.Packs is not null)
            .SelectMany(line => Filled(line, delivery.Phase.Name, going, walls))
            .OrderBy(pack => places[pack.Uses[0].Wall]);
    }

    /// <summary>Packs of one product, emptied by wall after wall; one that is for breakage alone stands where the last wall takes from.</summary>
    private static IEnumerable<StagedPack> Filled(OrderLine line, string delivery, ImmutableArray<WallLayout> going, IReadOnlyDictionary<string, OrderGroup> walls)
    {
        var left = new Queue<(WallLayout Wall, int Units)>(going
            .Select(wall => (wall, (int)walls[wall.Identity.GlobalId].Lines.Where(own => own.Key.IsUnit && own.Key.Pallet == line.Key).Sum(own => own.Net!.Value)))
            .Where(wall => wall.Item2 > 0));
        var (at, units) = left.Dequeue();
        for (var pack = 0; pack < line.Packs!.Value.Count; pack++)
        {
            var uses = ImmutableArray.CreateBuilder<StagedUse>();
            var room = (int)line.Packs.Value.Content;
            do
            {
                if (units == 0 && left.TryDequeue(out var next))
                {
                    (at, units) = next;
                }

                var taken = Math.Min(units, room);
                uses.Add(new StagedUse(at.Identity.GlobalId, taken));
                (units, room) = (units - taken, room - taken);
            }
            while (room > 0 && left.Count > 0);
            var first = going.First(wall => wall.Identity.GlobalId == uses[0].Wall);
            yield return new StagedPack(0, delivery, line.Key, (int)line.Packs.Value.Content, first.Identity.Storey, uses.ToImmutable(), Place: null);
        }
    }
}
