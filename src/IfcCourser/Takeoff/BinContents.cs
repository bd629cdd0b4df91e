using System.Collections.Immutable;

namespace IfcCourser.Takeoff;

/// <summary>Says which of several things of the same size go into which bin of a plan.</summary>
internal static class BinContents
{
    /// <summary>
    /// Goes through the things in their order: each takes its place in the bin that has waited longest for its size, or opens the bin whose other sizes are asked for soonest.
    /// </summary>
    /// <param name="plan">Sizes in each bin.</param>
    /// <param name="things">In the order in which they are laid.</param>
    /// <param name="size">Of a thing.</param>
    /// <returns>Bins in the order in which they are opened, things in their order.</returns>
    public static ImmutableArray<ImmutableArray<T>> Of<T>(PackingPlan plan, IReadOnlyList<T> things, Func<T, long> size)
    {
        var places = things.Select((thing, i) => (Size: size(thing), i)).GroupBy(thing => thing.Size).ToDictionary(group => group.Key, group => new Queue<int>(group.Select(thing => thing.i)));
        var unopened = plan.Bins.GroupBy(bin => string.Join(' ', bin), StringComparer.Ordinal)
            .Select(group => (Bin: group.First(), Left: group.Count())).ToList();
        var open = new List<(List<T> Things, List<long> Waiting)>();
        foreach (var thing in things)
        {
            var own = size(thing);
            places[own].Dequeue();
            var bin = open.Find(bin => bin.Waiting.Contains(own));
            if (bin.Things is null)
            {
                var kind = unopened.FindIndex(Best(unopened, own, places));
                bin = ([], [.. unopened[kind].Bin]);
                unopened[kind] = unopened[kind] with { Left = unopened[kind].Left - 1 };
                open.Add(bin);
            }

            bin.Things.Add(thing);
            bin.Waiting.Remove(own);
        }

        return [.. open.Select(bin => bin.Things.ToImmutableArray())];
    }

    private static Predicate<(ImmutableArray<long> Bin, int Left)> Best(
        List<(ImmutableArray<long> Bin, int Left)> unopened, long own, Dictionary<long, Queue<int>> places)
    {
        var best = unopened.Where(kind => kind.Left > 0 && kind.Bin.Contains(own))
            .OrderBy(kind => kind.Bin.Remove(own).Select(size => places[size].Count == 0 ? int.MaxValue : places[size].Peek()).DefaultIfEmpty(int.MaxValue).Min())
            .First();
        return kind => kind.Left > 0 && kind.Bin.AsSpan().SequenceEqual(best.Bin.AsSpan());
    }
}
