using System.Collections.Immutable;

namespace IfcCourser.Ifc;

/// <summary>Reads openings and the doors and windows in them.</summary>
internal sealed class IfcOpeningReader
{
    private static readonly string[] _doorsAndWindows = ["IFCDOOR", "IFCDOORSTANDARDCASE", "IFCWINDOW", "IFCWINDOWSTANDARDCASE"];

    private readonly IfcInstances _instances;
    private readonly IfcRelations _relations;
    private readonly IfcProducts _products;
    private readonly IfcPropertyReader _properties;
    private readonly double _lengthMm;

    public IfcOpeningReader(IfcInstances instances, IfcRelations relations, IfcProducts products, IfcPropertyReader properties, double lengthMm)
    {
        _instances = instances;
        _relations = relations;
        _products = products;
        _properties = properties;
        _lengthMm = lengthMm;
    }

    /// <summary>Doors and windows that fill no opening, in the order of the file.</summary>
    public ImmutableArray<IfcFillingRecord> Loose()
    {
        var filling = _relations.Fillings.Values.SelectMany(ids => ids).ToHashSet();
        return [.. _instances.All(_doorsAndWindows).Where(element => !filling.Contains(element.Id)).Select(Filling)];
    }

    /// <summary>Openings that void an element itself.</summary>
    public ImmutableArray<IfcOpeningRecord> Of(long element) =>
        [.. IfcRelations.At(_relations.Openings, element).Select(id => _instances.Find(id)).OfType<IfcEntity>().Select(Opening)];

    /// <summary>Openings of the walls and assemblies that an element is a part of: their voids go through the parts.</summary>
    public IEnumerable<IfcOpeningRecord> Inherited(long element)
    {
        var seen = new HashSet<long> { element };
        var open = new Queue<long>(IfcRelations.At(_relations.Wholes, element));
        while (open.TryDequeue(out var whole))
        {
            if (seen.Add(whole))
            {
                foreach (var opening in Of(whole))
                {
                    yield return opening with { IsInherited = true };
                }

                IfcRelations.At(_relations.Wholes, whole).ForEach(open.Enqueue);
            }
        }
    }

    private IfcOpeningRecord Opening(IfcEntity opening) => new(
        opening.Id,
        IfcProducts.GlobalId(opening),
        opening.Label("Name"),
        opening["PredefinedType"].AsEnumeration,
        opening.Label("ObjectType"),
        _products.Placement(opening),
        _products.Representation(opening),
        [.. IfcRelations.At(_relations.Fillings, opening.Id).Select(id => _instances.Find(id)).OfType<IfcEntity>().Select(Filling)]);

    private IfcFillingRecord Filling(IfcEntity filling) => new(
        filling.Id,
        filling.Type,
        IfcProducts.GlobalId(filling),
        filling.Label("Name"),
        _products.Placement(filling),
        _products.Representation(filling),
        filling["OverallWidth"].AsReal * _lengthMm ?? Given(filling.Id, "OverallWidth", "Width"),
        filling["OverallHeight"].AsReal * _lengthMm ?? Given(filling.Id, "OverallHeight", "Height"));

    // Quantities come before properties: a property named Width may be that of a frame.
    private double? Given(long element, params string[] names)
    {
        const double MillimetresInMetre = 1000;
        var sets = _relations.SetIds(_instances, element).Select(_properties.Read).OfType<IfcPropertyGroup>().ToList();
        return names
            .SelectMany(name => sets.OrderByDescending(set => set.IsQuantities)
                .SelectMany(set => set.Values)
                .Where(value => string.Equals(value.Name, name, StringComparison.OrdinalIgnoreCase)))
            .Select(value => value.Si * MillimetresInMetre)
            .FirstOrDefault(mm => mm > 0);
    }
}
