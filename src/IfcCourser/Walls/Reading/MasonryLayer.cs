using System.Collections.Immutable;
using IfcCourser.Findings;
using IfcCourser.Ifc;
using IfcCourser.Ifc.Bodies;
using IfcCourser.Units;

namespace IfcCourser.Walls.Reading;

/// <summary>The layer of a wall that is laid in blocks.</summary>
/// <param name="Number">Of the layer or part, from 1; null for the whole body.</param>
/// <param name="Place">Where it lies.</param>
/// <param name="Others">Names and thicknesses of further masonry layers, which are not laid out.</param>
/// <param name="Doubt">What is doubtful about its place; null where nothing is.</param>
public sealed record MasonryLayer(int? Number, LayerPlace Place, ImmutableArray<string> Others, FindingCode? Doubt)
{
    public Slab Across => Place.Across;

    /// <summary>The whole body as one layer.</summary>
    public static MasonryLayer Whole(Slab body) => new(null, new LayerPlace(body, null), [], null);

    /// <summary>The masonry layer by names, or why there is none; of several the load-bearing, else the thickest one.</summary>
    /// <param name="wall">Record with materials and parts.</param>
    /// <param name="names">What its names say.</param>
    /// <param name="body">Whole body across the wall, wall coordinates.</param>
    /// <param name="axis">Offset of the wall's reference line and whether the wall's own y axis points to the left, wall coordinates.</param>
    /// <param name="items">The body's items, wall coordinates.</param>
    public static (MasonryLayer? Layer, FindingCode? Reason) Of(
        IfcWallRecord wall, WallNames names, Slab body, (double Offset, bool YIsLeft) axis, ImmutableArray<BodyItem> items)
    {
        if (names.Layers.Length <= 1 && !names.AreParts)
        {
            var says = NameWords.Verdict(names.Layers.SelectMany(layer => layer)) ?? NameWords.Verdict(names.Whole);
            return says is true ? (Whole(body), null) : (null, FindingCodes.NoMasonryLayer);
        }

        var matches = Enumerable.Range(0, names.Layers.Length).Where(i => WallNames.IsMasonry(names.Layers[i])).ToList();
        return matches.Count == 0 ? (null, FindingCodes.NoMasonryLayer)
            : (names.AreParts ? OfParts(wall, names, matches, items) : OfLayers(wall.Material!, names, matches, LayerPlaces.Of(wall.Material!, body, axis, items))) is { } layer ? (layer, null)
            : matches.Count == 1 && wall.Material is { Kind: IfcMaterialKind.List } ? (Whole(body), null)
            : (null, FindingCodes.LayerNotLocated);
    }

    /// <summary>What a part of a wall is called on the items of its body.</summary>
    public static string PartAspect(IfcPartRecord part) => FormattableString.Invariant($"#{part.StepId}");

    private static MasonryLayer? OfLayers(IfcMaterialUse use, WallNames names, List<int> matches, LayerPlaces places)
    {
        var placed = matches.Where(i => places.Layers[i] is not null)
            .OrderByDescending(i => use.Layers[i].Category is "LoadBearing")
            .ThenByDescending(i => Math.Round(places.Layers[i]!.Across.Size))
            .ThenByDescending(i => use.Layers[i].Priority ?? -1)
            .ToList();
        return placed is not [var taken, ..] ? null : new MasonryLayer(
            taken + 1,
            places.Layers[taken]!,
            [.. matches.Where(i => i != taken).Select(i => Described(names, i, places.Layers[i]))],
            places.Doubt);
    }

    // Parts side by side along the run are one leaf; those behind each other are two.
    private static MasonryLayer? OfParts(IfcWallRecord wall, WallNames names, List<int> matches, ImmutableArray<BodyItem> items)
    {
        var parts = wall.OwnParts;
        var placed = matches
            .Select(i => (Index: i, Items: items.Where(item => string.Equals(item.Aspect, PartAspect(parts[i]), StringComparison.Ordinal)).ToImmutableArray()))
            .Where(part => !part.Items.IsEmpty)
            .Select(part => (part.Index, Place: LayerPlace.Of(part.Items)))
            .OrderByDescending(part => part.Place.Body!.Volume)
            .ThenBy(part => part.Index)
            .ToList();
        if (placed is not [var largest, ..])
        {
            return null;
        }

        var leaf = placed
            .Where(part => part.Place.Across.Common(largest.Place.Across) >= Math.Min(part.Place.Across.Size, largest.Place.Across.Size) / 2)
            .ToList();
        return new MasonryLayer(
            largest.Index + 1,
            largest.Place with { Body = leaf.Select(part => part.Place.Body!).Aggregate((a, b) => a.Union(b)) },
            [.. placed.Except(leaf).Select(part => Described(names, part.Index, part.Place))],
            null);
    }

    private static string Described(WallNames names, int layer, LayerPlace? place)
    {
        var name = names.Layers[layer].First(read => read.IsMasonry is true).Name;
        return place is null
            ? FormattableString.Invariant($"\"{name}\"")
            : FormattableString.Invariant($"\"{name}\", {Length.FromModelMm(place.Across.Size)}");
    }
}
