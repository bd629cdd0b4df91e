using System.Collections.Immutable;
using IfcCourser.Findings;
using IfcCourser.Ifc;
using IfcCourser.Ifc.Bodies;

namespace IfcCourser.Walls.Reading;

/// <summary>Where the layers of a wall lie across its body.</summary>
/// <param name="Layers">In the order of the model; null where the model does not tell.</param>
/// <param name="Doubt">What is doubtful about them; null where nothing is.</param>
public sealed record LayerPlaces(ImmutableArray<LayerPlace?> Layers, FindingCode? Doubt)
{
    /// <summary>Thicknesses that differ by more than this, mm, are not the same.</summary>
    private const double Tolerance = 2;

    /// <param name="use">Layers or constituents.</param>
    /// <param name="body">Whole body across the wall, wall coordinates.</param>
    /// <param name="axis">Offset of the wall's reference line and whether the wall's own y axis points to the left, wall coordinates.</param>
    /// <param name="items">The body's items, wall coordinates.</param>
    public static LayerPlaces Of(IfcMaterialUse use, Slab body, (double Offset, bool YIsLeft) axis, ImmutableArray<BodyItem> items)
    {
        var areLayers = use.Kind is IfcMaterialKind.LayerSetUsage or IfcMaterialKind.LayerSet && use.Layers.All(layer => layer.Thickness is not null);
        return !areLayers ? Drawn(use, items)
            : use.Kind == IfcMaterialKind.LayerSetUsage ? new LayerPlaces(Stacked(use, body, Start(use, body, axis), use.IsPositive == axis.YIsLeft), null)
            : Loose(use, body, items);
    }

    private static double Start(IfcMaterialUse use, Slab body, (double Offset, bool YIsLeft) axis)
    {
        // Where the stack is as thick as the body, the body tells where it lies.
        if (Math.Abs(use.Layers.Sum(layer => layer.Thickness!.Value) - body.Size) <= Tolerance)
        {
            return use.IsPositive == axis.YIsLeft ? body.From : body.To;
        }

        return axis.Offset + (axis.YIsLeft ? use.Offset : -use.Offset);
    }

    // Layers follow each other from the start along the wall's y or against it.
    private static ImmutableArray<LayerPlace?> Stacked(IfcMaterialUse use, Slab body, double start, bool leftwards)
    {
        var places = ImmutableArray.CreateBuilder<LayerPlace?>();
        foreach (var thickness in use.Layers.Select(layer => layer.Thickness!.Value))
        {
            var layer = leftwards ? new Slab(start, start + thickness) : new Slab(start - thickness, start);
            var inBody = layer.Intersect(body);
            places.Add(inBody.Size > thickness / 2 ? new LayerPlace(inBody, null) : null);
            start += leftwards ? thickness : -thickness;
        }

        return places.ToImmutable();
    }

    // A layer set alone does not say on which side it begins; items of its layers may.
    private static LayerPlaces Loose(IfcMaterialUse use, Slab body, ImmutableArray<BodyItem> items)
    {
        if (Drawn(use, items) is { Doubt: null } drawn && drawn.Layers.All(layer => layer is not null))
        {
            return drawn;
        }

        var (first, last) = (Stacked(use, body, body.From, true), Stacked(use, body, body.To, false));
        var isSame = first.Zip(last).All(pair => pair is ({ } a, { } b) && Math.Abs(a.Across.From - b.Across.From) <= Tolerance);
        return new LayerPlaces(first, isSame ? null : FindingCodes.LayerSideAssumed);
    }

    // Reference views draw each constituent as items of its own, named by a shape aspect. Some exporters mix the names up:
    // where widths contradict them, items in the order of the constituents, from one side or the other, count.
    private static LayerPlaces Drawn(IfcMaterialUse use, ImmutableArray<BodyItem> items)
    {
        var named = use.Layers.Select(layer => Named(use, layer, items)).ToImmutableArray();
        var contradicted = use.Layers.Zip(named).Any(pair => pair.Second is { } place && !Fits(pair.First, place));
        if (!contradicted)
        {
            return new LayerPlaces(named, null);
        }

        var bands = Bands(items);
        ImmutableArray<ImmutableArray<LayerPlace>> orders = [bands, [.. bands.Reverse()]];
        var stacked = orders
            .Where(order => order.Length == use.Layers.Length && order.Zip(use.Layers).All(pair => Fits(pair.Second, pair.First)))
            .OrderByDescending(order => order.Zip(named).Count(pair => pair.First.Across == pair.Second?.Across))
            .FirstOrDefault();
        return new LayerPlaces(
            stacked.IsDefault ? [.. use.Layers.Select(layer => Bands(NamedItems(use, layer, items)).FirstOrDefault(band => Fits(layer, band)))] : [.. stacked],
            FindingCodes.LayersByWidth);
    }

    private static LayerPlace? Named(IfcMaterialUse use, IfcLayer layer, ImmutableArray<BodyItem> items) =>
        NamedItems(use, layer, items) is { IsEmpty: false } own ? LayerPlace.Of(own) : null;

    // Constituents of one material bear numbered names: the material's name may be that of another one.
    private static ImmutableArray<BodyItem> NamedItems(IfcMaterialUse use, IfcLayer layer, ImmutableArray<BodyItem> items)
    {
        ImmutableArray<BodyItem> With(string? name) => name is null ? [] : [.. items.Where(item => string.Equals(item.Aspect, name, StringComparison.Ordinal))];
        var isOthersName = use.Layers.Any(other => other != layer && string.Equals(other.Name, layer.Material, StringComparison.Ordinal));
        return With(layer.Name) is { IsEmpty: false } own ? own : isOthersName ? [] : With(layer.Material);
    }

    private static bool Fits(IfcLayer layer, LayerPlace place) =>
        layer.Thickness is not { } thickness || Math.Abs(place.Across.Size - thickness) <= Tolerance;

    // Items side by side along the run are one band.
    private static ImmutableArray<LayerPlace> Bands(ImmutableArray<BodyItem> items)
    {
        var bands = new List<List<BodyItem>>();
        foreach (var item in items.OrderBy(item => item.Solid.Box.Min.Y).ThenBy(item => item.StepId))
        {
            if (bands.Count > 0 && item.Solid.Box.Min.Y < bands[^1].Max(other => other.Solid.Box.Max.Y) - Tolerance)
            {
                bands[^1].Add(item);
            }
            else
            {
                bands.Add([item]);
            }
        }

        return [.. bands.Select(band => LayerPlace.Of([.. band]))];
    }
}
