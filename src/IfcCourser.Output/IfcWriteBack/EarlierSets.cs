using IfcCourser.Ifc;

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
        var dropped = Ours(model, "IFCPROPERTYSET").Concat(Ours(model, "IFCELEMENTQUANTITY")).Select(set => set.Id).ToHashSet();
        if (dropped.Count == 0)
        {
            return dropped;
        }

        var candidates = new HashSet<long>();
        foreach (var set in dropped.Order().ToList())
        {
            Referrals.Reach(model.File, set, candidates);
        }

        foreach (var relation in instances.All("IFCRELDEFINESBYPROPERTIES"))
        {
            if (relation["RelatingPropertyDefinition"].AsReference is { } set && dropped.Contains(set))
            {
                dropped.Add(relation.Id);
                if (relation["OwnerHistory"].AsReference is { } history)
                {
                    candidates.Add(history);
                    Referrals.Reach(model.File, history, candidates);
                }
            }
        }

        Referrals.DropUnreferred(model.File, dropped, candidates);
        return dropped;
    }

    /// <summary>Whether a model is the parts file of an earlier run, whose walls are blocks without bodies of their own.</summary>
    public static bool HavePieces(IfcModel model) =>
        model.Instances.All("IFCBUILDINGELEMENTPART").Any()
        && Ours(model, "IFCPROPERTYSET").Any(set => set["Name"].AsString is SetNames.Piece);

    private static IEnumerable<IfcEntity> Ours(IfcModel model, string type) => model.File.InstancesOf(type)
        .Where(id => MayBeOurs(model.File.TextOf(id)))
        .Select(id => model.Find(id))
        .OfType<IfcEntity>()
        .Where(set => IsOurs(model, set));

    /// <summary>The names of our sets begin with the generator's; a backslash may hide letters. Few of a large model's sets are worth parsing.</summary>
    private static bool MayBeOurs(ReadOnlySpan<byte> text) => text.IndexOf("IfcCourser"u8) >= 0 || text.Contains((byte)'\\');

    private static bool IsOurs(IfcModel model, IfcEntity set)
    {
        var name = set["Name"].AsString;
        if (set.Type is "IFCELEMENTQUANTITY")
        {
            return name is SetNames.Quantities && IsGenerator(set["MethodOfMeasurement"].AsString);
        }

        return name is SetNames.Coursing or SetNames.Opening or SetNames.Piece
            && set["HasProperties"].AsList.Any(property =>
                model.Follow(property) is { Type: "IFCPROPERTYSINGLEVALUE" } value
                && value["Name"].AsString is nameof(Generator)
                && IsGenerator(value["NominalValue"].AsString));
    }

    private static bool IsGenerator(string? text) => text?.StartsWith(Generator.Name, StringComparison.Ordinal) == true;
}
