using System.Collections.Immutable;
using IfcCourser.Step21;

namespace IfcCourser.Ifc;

/// <summary>The relations of a model, each read once and found by either end's instance number.</summary>
internal sealed class IfcRelations
{
    private static readonly List<long> _none = [];

    private static readonly (string Relation, string From, string To)[] _read =
    [
        // The one of which models have most comes first: they are read side by side.
        ("IFCRELDEFINESBYPROPERTIES", "RelatedObjects", "RelatingPropertyDefinition"),
        ("IFCRELVOIDSELEMENT", "RelatingBuildingElement", "RelatedOpeningElement"),
        ("IFCRELFILLSELEMENT", "RelatingOpeningElement", "RelatedBuildingElement"),
        ("IFCRELAGGREGATES", "RelatingObject", "RelatedObjects"),
        ("IFCRELAGGREGATES", "RelatedObjects", "RelatingObject"),
        ("IFCRELCONTAINEDINSPATIALSTRUCTURE", "RelatedElements", "RelatingStructure"),
        ("IFCRELDEFINESBYTYPE", "RelatedObjects", "RelatingType"),
        ("IFCRELASSOCIATESMATERIAL", "RelatedObjects", "RelatingMaterial"),
    ];

    public IfcRelations(IfcInstances instances)
    {
        var maps = new Dictionary<long, List<long>>[_read.Length];
        Parallel.For(0, maps.Length, i => maps[i] = Map(instances, _read[i].Relation, _read[i].From, _read[i].To));
        (PropertySets, Openings, Fillings, Parts) = (maps[0], maps[1], maps[2], maps[3]);
        (Wholes, Structures, Types, Materials) = (maps[4], maps[5], maps[6], maps[7]);
        Connections = PathConnections(instances);
    }

    /// <summary>Openings by the element they void.</summary>
    public Dictionary<long, List<long>> Openings { get; }

    /// <summary>Doors, windows and others by the opening they fill.</summary>
    public Dictionary<long, List<long>> Fillings { get; }

    /// <summary>Parts by the whole they make up.</summary>
    public Dictionary<long, List<long>> Parts { get; }

    /// <summary>Wholes by their parts.</summary>
    public Dictionary<long, List<long>> Wholes { get; }

    /// <summary>Spatial structures by the elements they contain.</summary>
    public Dictionary<long, List<long>> Structures { get; }

    /// <summary>Property and quantity sets by object.</summary>
    public Dictionary<long, List<long>> PropertySets { get; }

    /// <summary>Types by object.</summary>
    public Dictionary<long, List<long>> Types { get; }

    /// <summary>Material definitions by object.</summary>
    public Dictionary<long, List<long>> Materials { get; }

    /// <summary>Path connections by wall.</summary>
    public Dictionary<long, List<IfcPathConnection>> Connections { get; }

    public static List<long> At(Dictionary<long, List<long>> map, long id) => map.GetValueOrDefault(id, _none);

    /// <summary>Property and quantity sets of an element, then those of its type.</summary>
    public IEnumerable<long> SetIds(IfcInstances instances, long element)
    {
        // HasPropertySets of every IfcTypeObject, in all schemas.
        const int HasPropertySets = 5;
        var ofType = At(Types, element)
            .Select(type => instances.Find(type))
            .OfType<IfcEntity>()
            .SelectMany(type => References(type[HasPropertySets]));
        return At(PropertySets, element).Concat(ofType);
    }

    /// <summary>References of a single value or of a list; others are left out.</summary>
    public static ImmutableArray<long> References(StepValue value) =>
        value.AsReference is { } single ? [single] : [.. value.AsList.Select(item => item.AsReference).OfType<long>()];

    private static Dictionary<long, List<long>> Map(IfcInstances instances, string relation, string from, string to)
    {
        var map = new Dictionary<long, List<long>>();
        foreach (var entity in instances.All(relation))
        {
            var targets = References(entity[to]);
            foreach (var source in References(entity[from]))
            {
                if (!map.TryGetValue(source, out var list))
                {
                    map.Add(source, list = []);
                }

                list.AddRange(targets.Where(target => !list.Contains(target)));
            }
        }

        return map;
    }

    private static Dictionary<long, List<IfcPathConnection>> PathConnections(IfcInstances instances)
    {
        var map = new Dictionary<long, List<IfcPathConnection>>();
        foreach (var entity in instances.All("IFCRELCONNECTSPATHELEMENTS"))
        {
            if (entity["RelatingElement"].AsReference is { } relating && entity["RelatedElement"].AsReference is { } related)
            {
                var relatingPlace = entity["RelatingConnectionType"].AsEnumeration ?? "NOTDEFINED";
                var relatedPlace = entity["RelatedConnectionType"].AsEnumeration ?? "NOTDEFINED";
                Add(relating, new IfcPathConnection(related, relatingPlace, relatedPlace));
                Add(related, new IfcPathConnection(relating, relatedPlace, relatingPlace));
            }
        }

        return map;

        void Add(long wall, IfcPathConnection connection)
        {
            if (!map.TryGetValue(wall, out var list))
            {
                map.Add(wall, list = []);
            }

            if (!list.Contains(connection))
            {
                list.Add(connection);
            }
        }
    }
}
