using System.Collections.Immutable;

namespace IfcCourser.Ifc;

/// <summary>Reads what an element is made of.</summary>
internal sealed class IfcMaterialReader
{
    private readonly IfcInstances _instances;
    private readonly double _lengthMm;

    public IfcMaterialReader(IfcInstances instances, double lengthMm)
    {
        _instances = instances;
        _lengthMm = lengthMm;
    }

    /// <summary>What a material definition says; null where it can't be read.</summary>
    public IfcMaterialUse? Read(long id) => _instances.Find(id) is not { } definition ? null : definition.Type switch
    {
        "IFCMATERIALLAYERSETUSAGE" => Usage(definition),
        "IFCMATERIALLAYERSET" => LayerSet(definition),
        "IFCMATERIALLAYER" or "IFCMATERIALLAYERWITHOFFSETS" => Plain(IfcMaterialKind.LayerSet, null, [Layer(definition)]),
        "IFCMATERIALCONSTITUENTSET" => Plain(
            IfcMaterialKind.ConstituentSet, definition.Label("Name"), Layers(definition, "MaterialConstituents", Part)),
        "IFCMATERIALPROFILESETUSAGE" => _instances.Follow(definition["ForProfileSet"]) is { Type: "IFCMATERIALPROFILESET" } set ? Read(set.Id) : null,
        "IFCMATERIALPROFILESET" => Plain(
            IfcMaterialKind.List, definition.Label("Name"), Layers(definition, "MaterialProfiles", Part)),
        "IFCMATERIALLIST" => Plain(IfcMaterialKind.List, null, Layers(definition, "Materials", Single)),
        "IFCMATERIAL" => Plain(IfcMaterialKind.Single, definition.Label("Name"), [Single(definition)]),
        _ => null,
    };

    private static IfcMaterialUse Plain(IfcMaterialKind kind, string? name, ImmutableArray<IfcLayer> layers) =>
        new(kind, name, layers, 0, true, null);

    private static IfcLayer Single(IfcEntity material) =>
        new(null, material.Label("Name"), material.Label("Category"), null);

    private ImmutableArray<IfcLayer> Layers(IfcEntity set, string attribute, Func<IfcEntity, IfcLayer> read) =>
        [.. IfcRelations.References(set[attribute]).Select(id => _instances.Find(id)).OfType<IfcEntity>().Select(read)];

    private IfcMaterialUse? Usage(IfcEntity usage)
    {
        var set = _instances.Follow(usage["ForLayerSet"]) is { } layers ? LayerSet(layers) : null;
        return set is null ? null : set with
        {
            Kind = IfcMaterialKind.LayerSetUsage,
            Offset = (usage["OffsetFromReferenceLine"].AsReal ?? 0) * _lengthMm,
            IsPositive = usage["DirectionSense"].AsEnumeration is not "NEGATIVE",
            Axis = usage["LayerSetDirection"].AsEnumeration,
        };
    }

    private IfcMaterialUse LayerSet(IfcEntity set) =>
        Plain(IfcMaterialKind.LayerSet, set.Label("LayerSetName"), Layers(set, "MaterialLayers", Layer));

    private IfcLayer Layer(IfcEntity layer) => Part(layer) with { Thickness = layer["LayerThickness"].AsReal * _lengthMm, Priority = layer["Priority"].AsReal };

    private IfcLayer Part(IfcEntity part)
    {
        var material = _instances.Follow(part["Material"]);
        return new IfcLayer(
            part.Label("Name"), material?.Label("Name"), part.Label("Category") ?? material?.Label("Category"), null);
    }
}
