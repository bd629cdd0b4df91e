using System.Collections.Immutable;
using IfcCourser.Step21;

namespace IfcCourser.Ifc;

/// <summary>The relations of a model, each read once and found by either end's instance number.</summary>
internal sealed class IfcRelations
{
    private static readonly List<long> _none = [];

    public IfcRelations(IfcInstances instances)
    {
        Openings = Map(instances, "IFCRELVOIDSELEMENT", "RelatingBuildingElement", "RelatedOpeningElement");
        Fillings = Map(instances, "IFCRELFILLSELEMENT", "RelatingOpeningElement", "RelatedBuildingElement");
        Parts = Map(instances, "IFCRELAGGREGATES", "RelatingObject", "RelatedObjects");
        Wholes = Map(instances, "IFCRELAGGREGATES", "RelatedObjects", "RelatingObject");
        Structures = Map(instances, "IFCRELCONTAINEDINSPATIALSTRUCTURE", "RelatedElements", "RelatingStructure");
        PropertySets = Map(instances, "IFCRELDEFINESBYPROPERTIES", "RelatedObjects", "RelatingPropertyDefinition");
        Types = Map(instances, "IFCRELDEFINESBYTYPE", "RelatedObjects", "RelatingType");
        Materials = Map(instances, "IFCRELASSOCIATESMATERIAL", "RelatedObjects", "RelatingMaterial");
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
