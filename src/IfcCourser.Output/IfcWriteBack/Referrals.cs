using IfcCourser.Step21;

namespace IfcCourser.Output.IfcWriteBack;

/// <summary>Which instances of a file refer to which.</summary>
internal static class Referrals
{
    /// <summary>Adds everything that an instance refers to, directly or through others.</summary>
    public static void Reach(StepFile file, long from, HashSet<long> reached)
    {
        foreach (var id in Of(file, from))
        {
            if (reached.Add(id))
            {
                Reach(file, id, reached);
            }
        }
    }

    /// <summary>Drops candidates until each one left is referred to by something that stays.</summary>
    public static void DropUnreferred(StepFile file, HashSet<long> dropped, HashSet<long> candidates) =>
        DropUnreferred(dropped, To(file, candidates));

    /// <inheritdoc cref="DropUnreferred(StepFile, HashSet{long}, HashSet{long})"/>
    /// <param name="dropped">What is dropped already, added to.</param>
    /// <param name="referrers">The candidates, and what refers to each.</param>
    public static void DropUnreferred(HashSet<long> dropped, Dictionary<long, HashSet<long>> referrers)
    {
        var before = -1;
        while (before != dropped.Count)
        {
            before = dropped.Count;
            dropped.UnionWith(referrers.Where(pair => pair.Value.IsSubsetOf(dropped)).Select(pair => pair.Key));
        }
    }

    /// <summary>What refers to each of some instances.</summary>
    public static Dictionary<long, HashSet<long>> To(StepFile file, IEnumerable<long> targets)
    {
        var referrers = targets.ToDictionary(id => id, _ => new HashSet<long>());
        foreach (var id in file.Ids)
        {
            foreach (var target in Of(file, id))
            {
                if (referrers.TryGetValue(target, out var list))
                {
                    list.Add(id);
                }
            }
        }

        return referrers;
    }

    /// <summary>What an instance refers to; a reference that stands twice comes twice.</summary>
    public static List<long> Of(StepFile file, long id)
    {
        if (file.Find(id) is not { } instance)
        {
            return [];
        }

        var open = new Stack<StepValue>(instance.Arguments.Concat(instance.Parts.SelectMany(part => part.Arguments)));
        var found = new List<long>();
        while (open.TryPop(out var value))
        {
            if (value.AsReference is { } reference)
            {
                found.Add(reference);
            }

            foreach (var item in value.AsList)
            {
                open.Push(item);
            }
        }

        return found;
    }
}
