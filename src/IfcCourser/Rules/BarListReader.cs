using System.Collections.Immutable;
using IfcCourser.Settings;
using IfcCourser.Units;

namespace IfcCourser.Rules;

/// <summary>Reads a rule set's table of bar lists, and the sizes that tables name.</summary>
internal static class BarListReader
{
    public static BarList Read(SettingsTable table) => new(
        table.Choice("form", ("units", (BarListForm?)null), ("bs-8666", BarListForm.Bs8666), ("aci-315", BarListForm.Aci315)),
        [.. table.Tables("stock").Select(Stock)]);

    /// <summary>A size of the tables; a fault where there is none of that name.</summary>
    public static BarSize Size(SettingsTable table, string key)
    {
        var name = table.Text(key);
        Check(table, key, name);
        return BarSizes.Find(name) ?? BarSizes.All[0];
    }

    private static BarStock Stock(SettingsTable table)
    {
        var sizes = table.Has("sizes") ? table.Texts("sizes") : [];
        foreach (var size in sizes)
        {
            Check(table, "sizes", size);
        }

        ImmutableArray<Length> lengths = [.. table.Lengths("lengths").Order()];
        table.Check(lengths.All(length => length > Length.Zero), "lengths", "must be more than nothing, each");
        return new BarStock(
            table.Choice("kind", ("number", BarKind.Number), ("metric", BarKind.Metric), ("plain-rod", BarKind.PlainRod), ("threaded-rod", BarKind.ThreadedRod)),
            sizes,
            table.OptionalText("steel"),
            lengths);
    }

    private static void Check(SettingsTable table, string key, string name)
    {
        var nearest = NearestName.Of(name, BarSizes.All.Select(known => known.Name)) ?? "No. 4, 12 mm or 1/2 in threaded rod";
        table.Check(BarSizes.Find(name) is not null || name.Length == 0, key, $"is \"{name}\", which is no bar or rod in the tables; write it as {nearest}");
    }
}
