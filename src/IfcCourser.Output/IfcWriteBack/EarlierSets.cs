using IfcCourser.Ifc;
using IfcCourser.Step21;

namespace IfcCourser.Output.IfcWriteBack;

/// <summary>
/// What an earlier run added to a file that another program has saved since: known by the fixed names of our sets and
/// their generator, never by number, GlobalId or comment, which such programs change.
/// </summary>
internal static class EarlierSets
{
    /// <summary>Our sets, their relations, and what nothing else refers to.</summary>
    public static HashSet<long> Find(IfcModel model)
    {
        var instances = model.Instances;
        var dropped = instances.All("IFCPROPERTYSET", "IFCELEMENTQUANTITY").Where(set => IsOurs(model, set)).Select(set => set.Id).ToHashSet();
        if (dropped.Count == 0)
        {
            return dropped;
        }

        var candidates = new HashSet<long>();
        foreach (var set in dropped.Order().ToList())
        {
            Reach(model, set, candidates);
        }

        foreach (var relation in instances.All("IFCRELDEFINESBYPROPERTIES"))
        {
            if (relation["RelatingPropertyDefinition"].AsReference is { } set && dropped.Contains(set))
            {
                dropped.Add(relation.Id);
                if (relation["OwnerHistory"].AsReference is { } history)
                {
                    candidates.Add(history);
                    Reach(model, history, candidates);
                }
            }
        }

        DropUnreferred(model.File, dropped, candidates);
        return dropped;
    }

    private static bool IsOurs(IfcModel model, IfcEntity set)
    {
        var name = set["Name"].AsString;
        if (set.Type is "IFCELEMENTQUANTITY")
        {
            return name is SetNames.Quantities && IsGenerator(set["MethodOfMeasurement"].AsString);
        }

        return name is SetNames.Coursing or SetNames.Opening
            && set["HasProperties"].AsList.Any(property =>
                model.Follow(property) is { Type: "IFCPROPERTYSINGLEVALUE" } value
                && value["Name"].AsString is nameof(Generator)
                && IsGenerator(value["NominalValue"].AsString));
    }

    private static bool IsGenerator(string? text) => text?.StartsWith(Generator.Name, StringComparison.Ordinal) == true;

    /// <summary>Everything that an instance refers to, directly or through others.</summary>
    private static void Reach(IfcModel model, long from, HashSet<long> reached)
    {
        foreach (var id in References(model.File, from))
        {
            if (reached.Add(id))
            {
                Reach(model, id, reached);
            }
        }
    }

    /// <summary>Drops candidates until each one left is referred to by something that stays.</summary>
    private static void DropUnreferred(StepFile file, HashSet<long> dropped, HashSet<long> candidates)
    {
        var referrers = candidates.ToDictionary(id => id, _ => new HashSet<long>());
        foreach (var id in file.Ids)
        {
            foreach (var target in References(file, id))
            {
                if (referrers.TryGetValue(target, out var list))
                {
                    list.Add(id);
                }
            }
        }

        var before = -1;
        while (before != dropped.Count)
        {
            before = dropped.Count;
            dropped.UnionWith(candidates.Where(id => referrers[id].IsSubsetOf(dropped)));
        }
    }

    private static List<long> References(StepFile file, long id)
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
