using System.Collections.Immutable;
using IfcCourser.Findings;

namespace IfcCourser.Ifc;

/// <summary>Puts together what the model states about each wall.</summary>
internal sealed class IfcWallReader
{
    private readonly IfcInstances _instances;
    private readonly IfcRelations _relations;
    private readonly IfcPlacements _placements;
    private readonly IfcMaterialReader _materials;
    private readonly IfcConstituentWidths _widths;
    private readonly IfcPropertyReader _properties;
    private readonly IfcUnits _units;
    private readonly List<Finding> _findings;

    public IfcWallReader(
        IfcInstances instances, IfcRelations relations, IfcPlacements placements, IfcUnits units, List<Finding> findings)
    {
        _instances = instances;
        _relations = relations;
        _placements = placements;
        _materials = new IfcMaterialReader(instances, units.LengthMm);
        _widths = new IfcConstituentWidths(instances, units.LengthMm);
        _properties = new IfcPropertyReader(instances, units);
        _units = units;
        _findings = findings;
    }

    /// <summary>All walls in the order of the file.</summary>
    public ImmutableArray<IfcWallRecord> Read() =>
        [.. _instances.All("IFCWALL", "IFCWALLSTANDARDCASE", "IFCWALLELEMENTEDCASE").Select(Wall)];

    /// <summary>Sets of an element, then those of its type.</summary>
    public ImmutableArray<IfcPropertyGroup> PropertySets(long element) =>
        [.. SetIds(element).Select(_properties.Read).OfType<IfcPropertyGroup>()];

    private static string GlobalId(IfcEntity element) => element["GlobalId"].AsString ?? string.Empty;

    private IfcWallRecord Wall(IfcEntity wall) => new()
    {
        StepId = wall.Id,
        EntityType = wall.Type,
        GlobalId = GlobalId(wall),
        Name = wall["Name"].AsString,
        TypeName = TypeName(wall),
        Storey = Storey(wall.Id),
        Placement = _placements.Absolute(Resolved(wall, "ObjectPlacement")),
        Representation = Resolved(wall, "Representation"),
        Material = Material(wall.Id),
        IsLoadBearing = IsLoadBearing(wall.Id),
        Openings = [.. Openings(wall.Id), .. InheritedOpenings(wall.Id)],
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
        GlobalId(part),
        part["Name"].AsString,
        _placements.Absolute(Resolved(part, "ObjectPlacement")),
        Resolved(part, "Representation"),
        Material(part.Id),
        Openings(part.Id));

    private ImmutableArray<IfcOpeningRecord> Openings(long element) =>
        [.. IfcRelations.At(_relations.Openings, element).Select(id => _instances.Find(id)).OfType<IfcEntity>().Select(Opening)];

    /// <summary>Openings of the walls and assemblies that a wall is a part of: their voids go through the parts.</summary>
    private IEnumerable<IfcOpeningRecord> InheritedOpenings(long element)
    {
        var seen = new HashSet<long> { element };
        var open = new Queue<long>(IfcRelations.At(_relations.Wholes, element));
        while (open.TryDequeue(out var whole))
        {
            if (seen.Add(whole) && _instances.Find(whole) is not { Type: "IFCBUILDINGSTOREY" or "IFCBUILDING" or "IFCSITE" or "IFCPROJECT" or "IFCSPACE" })
            {
                foreach (var opening in Openings(whole))
                {
                    yield return opening with { IsInherited = true };
                }

                IfcRelations.At(_relations.Wholes, whole).ForEach(open.Enqueue);
            }
        }
    }

    private IfcOpeningRecord Opening(IfcEntity opening) => new(
        opening.Id,
        GlobalId(opening),
        opening["Name"].AsString,
        opening["PredefinedType"].AsEnumeration,
        opening["ObjectType"].AsString,
        _placements.Absolute(Resolved(opening, "ObjectPlacement")),
        Resolved(opening, "Representation"),
        [.. IfcRelations.At(_relations.Fillings, opening.Id).Select(id => _instances.Find(id)).OfType<IfcEntity>().Select(Filling)]);

    private IfcFillingRecord Filling(IfcEntity filling) => new(
        filling.Id,
        filling.Type,
        GlobalId(filling),
        filling["Name"].AsString,
        _placements.Absolute(Resolved(filling, "ObjectPlacement")),
        Resolved(filling, "Representation"),
        filling["OverallWidth"].AsReal * _units.LengthMm,
        filling["OverallHeight"].AsReal * _units.LengthMm);

    /// <summary>A reference that leads somewhere; null where there is none, with a finding where it leads nowhere.</summary>
    private long? Resolved(IfcEntity element, string attribute)
    {
        var id = element[attribute].AsReference;
        if (id is { } number && !_instances.File.Contains(number))
        {
            _findings.Add(new Finding(
                FindingCodes.ReferenceMissing,
                FormattableString.Invariant($"{element.Type} #{element.Id} refers to #{number}, which is not in the file.")));
            return null;
        }

        return id;
    }

    private string? TypeName(IfcEntity element) =>
        IfcRelations.At(_relations.Types, element.Id).Select(id => _instances.Find(id)?["Name"].AsString).FirstOrDefault(name => name is not null)
        ?? element["ObjectType"].AsString;

    /// <summary>The element's own material, else that of its type.</summary>
    private IfcMaterialUse? Material(long element) =>
        IfcRelations.At(_relations.Materials, element)
            .Concat(IfcRelations.At(_relations.Types, element).SelectMany(type => IfcRelations.At(_relations.Materials, type)))
            .Select(_materials.Read)
            .FirstOrDefault(use => use is { Layers.IsEmpty: false }) is not { } use ? null
            : use.Kind == IfcMaterialKind.ConstituentSet ? _widths.Fill(use, SetIds(element)) : use;

    private bool? IsLoadBearing(long element) =>
        SetIds(element)
            .Where(set => _instances.Find(set)?["Name"].AsString is "Pset_WallCommon")
            .Select(_properties.Read)
            .OfType<IfcPropertyGroup>()
            .SelectMany(set => set.Values)
            .Where(property => property.Name is "LoadBearing")
            .Select(property => property.Value.AsBoolean)
            .FirstOrDefault(value => value is not null);

    private IEnumerable<long> SetIds(long element)
    {
        var ofType = IfcRelations.At(_relations.Types, element)
            .Select(type => _instances.Find(type))
            .OfType<IfcEntity>()
            .SelectMany(type => IfcRelations.References(type["HasPropertySets"]));
        return IfcRelations.At(_relations.PropertySets, element).Concat(ofType);
    }

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
                return storey["Name"].AsString ?? storey["LongName"].AsString;
            }

            foreach (var above in IfcRelations.At(_relations.Structures, id).Concat(IfcRelations.At(_relations.Wholes, id)))
            {
                open.Enqueue(above);
            }
        }

        return null;
    }
}
