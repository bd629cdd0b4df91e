using System.Collections.Immutable;
using IfcCourser.Catalogs;
using IfcCourser.Ifc;

namespace IfcCourser.Walls.Reading;

/// <summary>What the names of a wall say about its layers and about the wall as a whole.</summary>
/// <param name="Layers">Names of each layer, in the order of the model; where the model gives none, those of the parts.</param>
/// <param name="Whole">Names of the layer set, the type and, where there is no type, of the wall.</param>
/// <param name="AreParts">Whether the layers are the elements that the wall is made of.</param>
public sealed record WallNames(ImmutableArray<ImmutableArray<NameRead>> Layers, ImmutableArray<NameRead> Whole, bool AreParts)
{
    public IEnumerable<NameRead> All => Layers.SelectMany(names => names).Concat(Whole);

    /// <summary>Reads them with the catalog's words. Parts count where the wall's own layers don't name a masonry one.</summary>
    public static WallNames Of(IfcWallRecord wall, Catalog catalog)
    {
        var own = (wall.Material?.Layers ?? []).Select((layer, i) => Names(catalog, i + 1, null, layer)).ToImmutableArray();
        var parts = wall.OwnParts
            .Select((part, i) => (part.Material?.Layers ?? [])
                .SelectMany(layer => Names(catalog, i + 1, null, layer))
                .Concat(Names(catalog, i + 1, part.Name, null))
                .ToImmutableArray())
            .ToImmutableArray();
        var areParts = parts.Length > 0 && !own.Any(IsMasonry) && (own.Length == 0 || parts.Any(IsMasonry));
        var isTyped = !string.IsNullOrWhiteSpace(wall.TypeName);
        (NameKind Kind, string? Name)[] whole =
        [
            (NameKind.LayerSet, wall.Material is { Kind: not IfcMaterialKind.Single } use ? use.Name : null),
            (NameKind.Type, wall.TypeName),
            (NameKind.Wall, isTyped ? null : wall.Name),
        ];
        return new WallNames(
            areParts ? parts : own,
            [
                .. whole.Where(name => !string.IsNullOrWhiteSpace(name.Name))
                    .DistinctBy(name => name.Name, StringComparer.Ordinal)
                    .Select(name => NameWords.Read(catalog, name.Kind, null, name.Name!)),
            ],
            areParts);
    }

    public static bool IsMasonry(ImmutableArray<NameRead> layer) => NameWords.Verdict(layer) is true;

    private static ImmutableArray<NameRead> Names(Catalog catalog, int number, string? part, IfcLayer? layer)
    {
        (NameKind Kind, string? Name)[] names =
        [
            (NameKind.Part, part), (NameKind.Layer, layer?.Name), (NameKind.Material, layer?.Material), (NameKind.Category, layer?.Category),
        ];
        return
        [
            .. names.Where(name => !string.IsNullOrWhiteSpace(name.Name))
                .Select(name => NameWords.Read(catalog, name.Kind, number, name.Name!))
                .DistinctBy(name => name.Name, StringComparer.Ordinal),
        ];
    }
}
