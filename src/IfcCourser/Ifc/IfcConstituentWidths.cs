namespace IfcCourser.Ifc;

/// <summary>
/// Widths of material constituents: reference views state them as complex quantities (Discrimination 'layer') with the
/// constituent's name that hold a length. Source: IFC4 Reference View, concept Material Constituent Set, from memory.
/// </summary>
internal sealed class IfcConstituentWidths
{
    private readonly IfcInstances _instances;
    private readonly double _lengthMm;
    private readonly Lazy<Dictionary<string, double>> _ofAnyElement;

    public IfcConstituentWidths(IfcInstances instances, double lengthMm)
    {
        _instances = instances;
        _lengthMm = lengthMm;
        _ofAnyElement = new Lazy<Dictionary<string, double>>(() => Unambiguous(instances.All("IFCPHYSICALCOMPLEXQUANTITY")));
    }

    /// <summary>The constituents with the widths that the element's quantities give; where it has none, those that the file gives to that name everywhere.</summary>
    /// <param name="use">What an element is made of.</param>
    /// <param name="sets">Instance numbers of the element's quantity sets.</param>
    public IfcMaterialUse Fill(IfcMaterialUse use, IEnumerable<long> sets)
    {
        var own = Unambiguous(sets.Select(id => _instances.Find(id))
            .Where(set => set is { Type: "IFCELEMENTQUANTITY" })
            .SelectMany(set => IfcRelations.References(set!.Value["Quantities"]))
            .Select(id => _instances.Find(id))
            .OfType<IfcEntity>());
        double? Width(IfcLayer layer) =>
            layer.Name is not { } name ? null
            : own.TryGetValue(name, out var width) || _ofAnyElement.Value.TryGetValue(name, out width) ? width : null;
        return use with { Layers = [.. use.Layers.Select(layer => layer with { Thickness = Width(layer) })] };
    }

    // A name that comes with different widths tells nothing.
    private Dictionary<string, double> Unambiguous(IEnumerable<IfcEntity> quantities) => quantities
        .Where(quantity => quantity.Type is "IFCPHYSICALCOMPLEXQUANTITY" && "layer".Equals(quantity.Label("Discrimination"), StringComparison.OrdinalIgnoreCase))
        .Select(quantity => (Name: quantity.Label("Name"), Width: Width(quantity)))
        .Where(layer => layer is { Name: not null, Width: > 0 })
        .GroupBy(layer => layer.Name!, StringComparer.Ordinal)
        .Where(same => same.Select(layer => Math.Round(layer.Width!.Value, 3)).Distinct().Count() == 1)
        .ToDictionary(same => same.Key, same => same.First().Width!.Value, StringComparer.Ordinal);

    private double? Width(IfcEntity layer) => IfcRelations.References(layer["HasQuantities"])
        .Select(id => _instances.Find(id))
        .OfType<IfcEntity>()
        .Where(quantity => quantity.Type is "IFCQUANTITYLENGTH")
        .Select(quantity => quantity["LengthValue"].AsReal * _lengthMm)
        .FirstOrDefault();
}
