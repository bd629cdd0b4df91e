using FixtureMaker.Design;
using FixtureMaker.Step;

namespace FixtureMaker.Ifc;

/// <summary>Materials, layer sets, wall types, and the relations that give them to the walls.</summary>
internal sealed class MaterialPart(ModelFile file)
{
    private readonly Dictionary<string, Reference> _materials = new(StringComparer.Ordinal);
    private readonly List<(BuildUp BuildUp, List<Reference> Walls)> _users = [];

    /// <summary>Nothing for a build-up without layers.</summary>
    public void Assign(Reference wall, BuildUp buildUp)
    {
        if (buildUp.Layers.IsEmpty)
        {
            return;
        }

        var user = _users.Find(u => string.Equals(u.BuildUp.Name, buildUp.Name, StringComparison.Ordinal));
        if (user.Walls is null)
        {
            _users.Add((buildUp, [wall]));
        }
        else
        {
            user.Walls.Add(wall);
        }
    }

    public void Finish()
    {
        foreach (var (buildUp, walls) in _users)
        {
            Write(buildUp, walls);
        }
    }

    private void Write(BuildUp buildUp, List<Reference> walls)
    {
        var layers = buildUp.Layers.Select(Layer).ToList();
        var set = file.Step.Add("IFCMATERIALLAYERSET", [layers, buildUp.Name, .. file.InIfc4([null])]);
        var sense = new Keyword(buildUp.Sense == LayerSense.Positive ? "POSITIVE" : "NEGATIVE");
        var usage = file.Step.Add(
            "IFCMATERIALLAYERSETUSAGE", [set, new Keyword("AXIS2"), sense, buildUp.Offset, .. file.InIfc4([null])]);
        var type = file.AddRoot(
            "IFCWALLTYPE", $"type {buildUp.Name}", buildUp.Name, null, null, null, null, null, null, new Keyword("STANDARD"));
        file.AddRoot("IFCRELASSOCIATESMATERIAL", $"layers of {buildUp.Name}", null, null, walls, usage);
        file.AddRoot("IFCRELASSOCIATESMATERIAL", $"layers of type {buildUp.Name}", null, null, new[] { type }, set);
        file.AddRoot("IFCRELDEFINESBYTYPE", $"walls of type {buildUp.Name}", null, null, walls, type);
    }

    private Reference Layer(Layer layer)
    {
        if (!_materials.TryGetValue(layer.Material, out var material))
        {
            material = file.Step.Add("IFCMATERIAL", [layer.Material, .. file.InIfc4(null, null)]);
            _materials.Add(layer.Material, material);
        }

        return file.Step.Add(
            "IFCMATERIALLAYER", [material, layer.Thickness, null, .. file.InIfc4(layer.Material, null, null, null)]);
    }
}
