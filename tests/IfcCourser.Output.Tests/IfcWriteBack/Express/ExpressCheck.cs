using System.Reflection;
using IfcCourser.Ifc;

namespace IfcCourser.Output.Tests.IfcWriteBack.Express;

/// <summary>
/// Holds what was added to a model to its schema: number, types and cardinalities of attributes by the tables beside, that were taken from the EXPRESS
/// schemas IFC2X3 TC1 and IFC4; where rules by <see cref="WhereRules"/>. What IFC4X3 changed of them is from memory.
/// </summary>
internal sealed class ExpressCheck
{
    private readonly IfcModel _model;
    private readonly Dictionary<string, (string[] Supertypes, List<(string Name, string Type)> Attributes)> _entities = new(StringComparer.Ordinal);

    private ExpressCheck(IfcModel model)
    {
        _model = model;
        Read(model.Schema == IfcSchema.Ifc2X3 ? "ifc2x3.txt" : "ifc4.txt");
        if (model.Schema == IfcSchema.Ifc4X3)
        {
            Change("IFCQUANTITYCOUNT", "CountValue", "integer");
            Change("IFCSTYLEDITEM", "Styles", "set[1:?]#IFCPRESENTATIONSTYLE");
            _entities.Remove("IFCPRESENTATIONSTYLEASSIGNMENT");
        }
    }

    /// <param name="original">The model before; its instances are not judged.</param>
    public static List<string> Problems(IfcModel written, IfcModel original)
    {
        var check = new ExpressCheck(written);
        var added = written.File.Ids.ToArray()
            .Where(id => !written.File.TextOf(id).SequenceEqual(original.File.TextOf(id)))
            .Select(id => written.Find(id)!.Value)
            .ToList();
        var problems = added.ToDictionary(entity => entity.Id, entity => check.Problems(entity).ToList());
        return [.. problems.Values.SelectMany(found => found), .. WhereRules.Broken(written, added.Where(entity => problems[entity.Id].Count == 0))];
    }

    private IEnumerable<string> Problems(IfcEntity entity)
    {
        if (!_entities.TryGetValue(entity.Type, out var known) || known.Attributes.Count == 0)
        {
            yield return $"#{entity.Id} {entity.Type} is not in the table";
            yield break;
        }

        if (known.Attributes.Count != entity.Arguments.Length)
        {
            yield return $"#{entity.Id} {entity.Type} has {entity.Arguments.Length} attributes, not {known.Attributes.Count}";
            yield break;
        }

        foreach (var (value, (name, type)) in entity.Arguments.Zip(known.Attributes))
        {
            if (new ExpressType(type, IsA).Problem(value) is { } problem)
            {
                yield return $"#{entity.Id} {entity.Type}.{name}: {problem}";
            }
        }
    }

    private bool IsA(long id, string type) => _model.File.TypeOf(id) is { } name
        && (name == type || (_entities.TryGetValue(name, out var known) && known.Supertypes.Contains(type, StringComparer.Ordinal)));

    private void Change(string entity, string attribute, string type)
    {
        var attributes = _entities[entity].Attributes;
        attributes[attributes.FindIndex(row => row.Name == attribute)] = (attribute, type);
    }

    private void Read(string table)
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream($"Express/{table}")!;
        using var reader = new StreamReader(stream);
        var attributes = new List<(string Name, string Type)>();
        while (reader.ReadLine() is { } line)
        {
            if (line.StartsWith(' '))
            {
                var words = line.Split(' ', StringSplitOptions.RemoveEmptyEntries);
                attributes.Add((words[0], words[1]));
            }
            else if (!line.StartsWith('#'))
            {
                var words = line.Split(' ', StringSplitOptions.RemoveEmptyEntries);
                _entities.Add(words[0], (words[2..], attributes = []));
            }
        }
    }
}
