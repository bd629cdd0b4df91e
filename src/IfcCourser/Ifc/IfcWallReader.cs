using System.Collections.Immutable;
using IfcCourser.Findings;

namespace IfcCourser.Ifc;

/// <summary>Puts together what the model states about each wall.</summary>
internal sealed class IfcWallReader
{
    private readonly IfcInstances _instances;
    private readonly IfcRelations _relations;
    private readonly IfcProducts _products;
    private readonly IfcOpeningReader _openings;
    private readonly IfcMaterialReader _materials;
    private readonly IfcConstituentWidths _widths;
    private readonly IfcPropertyReader _properties;

    public IfcWallReader(
        IfcInstances instances, IfcRelations relations, IfcPlacements placements, IfcUnits units, List<Finding> findings)
    {
        _instances = instances;
        _relations = relations;
        _products = new IfcProducts(instances, placements, findings);
        _materials = new IfcMaterialReader(instances, units.LengthMm);
        _widths = new IfcConstituentWidths(instances, units.LengthMm);
        _properties = new IfcPropertyReader(instances, units);
        _openings = new IfcOpeningReader(instances, relations, _products, _properties, units.LengthMm);
    }

    /// <summary>All walls in the order of the file.</summary>
    public ImmutableArray<IfcWallRecord> Read() =>
        [.. _instances.All("IFCWALL", "IFCWALLSTANDARDCASE", "IFCWALLELEMENTEDCASE").Select(Wall)];

    /// <summary>Doors and windows that fill no opening.</summary>
    public ImmutableArray<IfcFillingRecord> LooseFillings() => _openings.Loose();

    /// <summary>Sets of an element, then those of its type.</summary>
    public ImmutableArray<IfcPropertyGroup> PropertySets(long element) =>
        [.. _relations.SetIds(_instances, element).Select(_properties.Read).OfType<IfcPropertyGroup>()];

    private IfcWallRecord Wall(IfcEntity wall) => new()
    {
        StepId = wall.Id,
        EntityType = wall.Type,
        GlobalId = IfcProducts.GlobalId(wall),
        Name = wall.Label("Name"),
        TypeName = TypeName(wall),
        Storey = Storey(wall.Id),
        Placement = _products.Placement(wall),
        Representation = _products.Representation(wall),
        Material = Material(wall.Id),
        IsLoadBearing = IsLoadBearing(wall.Id),
        Openings = [.. _openings.Of(wall.Id), .. _openings.Inherited(wall.Id)],
        Parts = [.. Parts(wall.Id, [wall.Id])],
        Connections = [.. _relations.Connections.GetValueOrDefault(wall.Id, [])],
    };

    /// <summary>Parts with a shape; of those that are only sums (assemblies), their own parts.</summary>
    private IEnumerable<IfcPartRecord> Parts(long whole, HashSet<long> seen) => IfcRelations.At(_relations.Parts, whole)
        .Where(seen.Add)
        .Select(id => _instances.Find(id))
        .OfType<IfcEntity>()
        .SelectMany(part => part["Representation"].AsReference is null && IfcRelations.At(_relations.Parts, part.Id).Count > 0 && !IsWall(part)
            ? Parts(part.Id, seen)
            : [Part(part)]);

    private static bool IsWall(IfcEntity element) => element.Type.StartsWith("IFCWALL", StringComparison.Ordinal);

    private IfcPartRecord Part(IfcEntity part) => new(
        part.Id,
        part.Type,
        IfcProducts.GlobalId(part),
        part.Label("Name"),
        _products.Placement(part),
        _products.Representation(part),
        Material(part.Id),
        _openings.Of(part.Id));

    private string? TypeName(IfcEntity element) =>
        IfcRelations.At(_relations.Types, element.Id).Select(id => _instances.Find(id)?.Label("Name")).FirstOrDefault(name => name is not null)
        ?? element.Label("ObjectType");

    /// <summary>The element's own material, else that of its type.</summary>
    private IfcMaterialUse? Material(long element) =>
        IfcRelations.At(_relations.Materials, element)
            .Concat(IfcRelations.At(_relations.Types, element).SelectMany(type => IfcRelations.At(_relations.Materials, type)))
            .Select(_materials.Read)
            .FirstOrDefault(use => use is { Layers.IsEmpty: false }) is not { } use ? null
            : use.Kind == IfcMaterialKind.ConstituentSet ? _widths.Fill(use, _relations.SetIds(_instances, element)) : use;

    private bool? IsLoadBearing(long element) =>
        _relations.SetIds(_instances, element)
            .Where(set => _instances.Find(set)?.Label("Name") is "Pset_WallCommon")
            .Select(_properties.Read)
            .OfType<IfcPropertyGroup>()
            .SelectMany(set => set.Values)
            .Where(property => property.Name is "LoadBearing")
            .Select(property => property.Value.AsBoolean)
            .FirstOrDefault(value => value is not null);

    /// <summary>Up through containment and aggregation to the first storey.</summary>
    private string? Storey(long element)
    {
        var seen = new HashSet<long>();
        var open = new Queue<long>([element]);
        while (open.TryDequeue(out var id))
        {
            if (!seen.Add(id))
            {
                continue;
            }

            if (_instances.File.TypeOf(id) is "IFCBUILDINGSTOREY" && _instances.Find(id) is { } storey)
            {
                return storey.Label("Name") ?? storey.Label("LongName");
            }

            foreach (var above in IfcRelations.At(_relations.Structures, id).Concat(IfcRelations.At(_relations.Wholes, id)))
            {
                open.Enqueue(above);
            }
        }

        return null;
    }
}
