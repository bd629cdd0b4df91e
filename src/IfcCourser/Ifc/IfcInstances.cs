using IfcCourser.Step21;

namespace IfcCourser.Ifc;

/// <summary>The instances of a file read with the attribute names of its schema.</summary>
public sealed class IfcInstances
{
    internal IfcInstances(StepFile file, IfcSchema schema)
    {
        File = file;
        Schema = schema;
    }

    public StepFile File { get; }

    public IfcSchema Schema { get; }

    /// <summary>The instance with a number; null where there is none or it is malformed.</summary>
    public IfcEntity? Find(long? id) =>
        id is { } number && File.Find(number) is { } instance ? new IfcEntity(instance, IfcAttributes.Of(Schema, instance.Type)) : null;

    /// <summary>The instance that a value refers to; null where it is no reference or leads nowhere.</summary>
    public IfcEntity? Follow(StepValue reference) => Find(reference.AsReference);

    /// <summary>All instances of these types (upper-case), in the order of the file.</summary>
    public IEnumerable<IfcEntity> All(params ReadOnlySpan<string> types)
    {
        var ids = new List<long>();
        foreach (var type in types)
        {
            ids.AddRange(File.InstancesOf(type));
        }

        if (types.Length > 1)
        {
            ids.Sort((a, b) => File.StartOf(a).CompareTo(File.StartOf(b)));
        }

        return ids.Select(id => Find(id)).OfType<IfcEntity>();
    }
}
