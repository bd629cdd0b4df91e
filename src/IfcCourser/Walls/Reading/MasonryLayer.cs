using System.Collections.Immutable;
using IfcCourser.Catalogs;
using IfcCourser.Ifc;
using IfcCourser.Ifc.Bodies;

namespace IfcCourser.Walls.Reading;

/// <summary>The layer of a wall that is laid in blocks.</summary>
/// <param name="Across">From its right to its left face, in wall coordinates, mm.</param>
/// <param name="Others">Names of further masonry layers, which are not laid out.</param>
public sealed record MasonryLayer(Slab Across, ImmutableArray<string> Others)
{
    /// <summary>Layers whose sum differs from the body by more than this, mm, don't tell where in the body they lie.</summary>
    private const double SumTolerance = 2;

    /// <summary>The masonry layer by names; null where none matches.</summary>
    /// <param name="wall">Record with materials and names.</param>
    /// <param name="catalog">Its words decide.</param>
    /// <param name="body">Whole body across the wall, wall coordinates.</param>
    /// <param name="axis">Offset of the wall's reference line and whether the wall's own y axis points to the left, wall coordinates.</param>
    /// <param name="items">The body's items, wall coordinates: where layers have no thickness, the item with the layer's name is the layer.</param>
    public static MasonryLayer? Of(IfcWallRecord wall, Catalog catalog, Slab body, (double Offset, bool YIsLeft) axis, ImmutableArray<BodyItem> items)
    {
        var layers = wall.Material?.Layers ?? [];
        if (layers.Length <= 1)
        {
            var layer = layers.FirstOrDefault();
            var says = NameWords.SayMasonry(catalog, layer?.Name, layer?.Material, layer?.Category) ?? NameWords.SayMasonry(catalog, wall.TypeName, wall.Name);
            return says is true ? new MasonryLayer(body, []) : null;
        }

        var matches = Enumerable.Range(0, layers.Length)
            .Where(i => NameWords.SayMasonry(catalog, layers[i].Name, layers[i].Material, layers[i].Category) is true)
            .Select(i => (Layer: layers[i], Across: Place(wall.Material!, i, body, axis) ?? Named(layers[i], items)))
            .OrderByDescending(match => match.Layer.Category is "LoadBearing")
            .ThenByDescending(match => match.Across?.Size ?? 0)
            .ToList();
        return matches switch
        {
            [] => null,
            [(_, { } across), ..] => new MasonryLayer(across, [.. matches.Skip(1).Select(match => match.Layer.Material ?? match.Layer.Name ?? string.Empty)]),
            [_] when layers.All(layer => layer.Thickness is null) && wall.Material!.Kind == IfcMaterialKind.List => new MasonryLayer(body, []),
            _ => null,
        };
    }

    // Layers follow each other from the offset along the wall's y or against it; where the stack is as thick as the body, the body tells where it lies.
    private static Slab? Place(IfcMaterialUse use, int index, Slab body, (double Offset, bool YIsLeft) axis)
    {
        if (use.Layers.Any(layer => layer.Thickness is null))
        {
            return null;
        }

        var before = use.Layers.Take(index).Sum(layer => layer.Thickness!.Value);
        var total = use.Layers.Sum(layer => layer.Thickness!.Value);
        var thickness = use.Layers[index].Thickness!.Value;
        var leftwards = use.Kind != IfcMaterialKind.LayerSetUsage || use.IsPositive == axis.YIsLeft;
        var start = axis.Offset + (axis.YIsLeft ? use.Offset : -use.Offset);
        if (Math.Abs(total - body.Size) <= SumTolerance || use.Kind != IfcMaterialKind.LayerSetUsage)
        {
            start = leftwards ? body.From : body.To;
        }

        var layer = leftwards ? new Slab(start + before, start + before + thickness) : new Slab(start - before - thickness, start - before);
        var inBody = layer.Intersect(body);
        return inBody.Size > thickness / 2 ? inBody : null;
    }

    private static Slab? Named(IfcLayer layer, ImmutableArray<BodyItem> items)
    {
        var boxes = items.Where(item => item.Aspect is { } aspect && (aspect.Equals(layer.Name, StringComparison.Ordinal) || aspect.Equals(layer.Material, StringComparison.Ordinal))).Select(item => item.Solid.Box).ToList();
        return boxes.Count == 0 ? null : new Slab(boxes.Min(box => box.Min.Y), boxes.Max(box => box.Max.Y));
    }
}
