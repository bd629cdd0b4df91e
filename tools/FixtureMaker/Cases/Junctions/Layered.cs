using System.Collections.Immutable;
using FixtureMaker.Design;
using FixtureMaker.Ifc;
using FixtureMaker.Step;

namespace FixtureMaker.Cases.Junctions;

/// <summary>
/// A corner as reference views have it: each layer is a body item of its own, named by a shape aspect, and ends where the
/// same layer of the other wall does; the constituents have no thickness. From outside: 60 insulation, 240 block, 10 plaster.
/// </summary>
internal static class Layered
{
    private static readonly BuildUp _buildUp = new("Insulated wall 310", 0, LayerSense.Positive, []);

    private static readonly ImmutableArray<(string Material, double From, double To)> _layers =
        [("Mineral insulation", 0, 60), ("Aerated concrete block", 60, 300), ("Gypsum plaster", 300, 310)];

    // A's layers end at the outer side of B's: at x = 4000, 3940 and 3700. B's begin at the inner side of A's.
    public static House House => JunctionCase.Of(
        "corner-layered", "each layer meets its like",
        Wall("A", new(0, 0), Heading.East, [(0, 4000), (0, 3940), (0, 3700)]),
        Wall("B", new(4000, 0), Heading.North, [(60, 3000), (300, 3000), (310, 3000)]));

    private static Wall Wall(string name, Point start, Heading heading, ImmutableArray<(double From, double To)> runs)
    {
        List<Reference> items = [];
        return new(name, _buildUp, start, heading, new Body.Items("SweptSolid", file =>
        {
            items.AddRange(_layers.Zip(runs, (layer, run) => Item(file, layer, run)));
            return [.. items];
        }))
        {
            AxisFrom = 0,
            AxisTo = runs.Max(run => run.To),
            Beside = (file, wall) => WriteConstituents(file, wall, name, items),
        };
    }

    private static Reference Item(ModelFile file, (string Material, double From, double To) layer, (double From, double To) run) =>
        file.Box(null, new(run.From, layer.From), run.To - run.From, layer.To - layer.From, JunctionCase.Height);

    private static void WriteConstituents(ModelFile file, WrittenWall wall, string name, List<Reference> items)
    {
        List<Reference> constituents = [];
        foreach (var (layer, item) in _layers.Zip(items))
        {
            var shape = file.BodyRepresentation("SweptSolid", item);
            file.Step.Add("IFCSHAPEASPECT", new[] { shape }, layer.Material, null, Keyword.False, wall.Shape);
            var material = file.Step.Add("IFCMATERIAL", layer.Material, null, null);
            constituents.Add(file.Step.Add("IFCMATERIALCONSTITUENT", layer.Material, null, material, null, null));
        }

        var set = file.Step.Add("IFCMATERIALCONSTITUENTSET", "Insulated wall 310", null, constituents);
        file.AddRoot("IFCRELASSOCIATESMATERIAL", $"constituents of {name}", null, null, new[] { wall.Wall }, set);
    }
}
