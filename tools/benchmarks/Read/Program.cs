using System.Globalization;
using IfcCourser.Catalogs;
using IfcCourser.Ifc;
using IfcCourser.Rules;
using IfcCourser.Walls;

// Read MODEL: reads every wall of a model with its openings and junctions, lays out none, and prints how many of each.
// Read MODEL list: every wall with its openings, what fills them, connections and property sets, no shapes.
CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
var opened = IfcModel.Open(args[0]);
if (!opened.IsOk)
{
    Console.Error.WriteLine(opened.Fault);
    return 1;
}

using var model = opened.Value;
if (args is [_, "list"])
{
    var (sets, values) = (0, 0);
    Parallel.ForEach(model.Walls, wall =>
    {
        var ofWall = model.PropertySets(wall.StepId);
        Interlocked.Add(ref sets, ofWall.Length);
        Interlocked.Add(ref values, ofWall.Sum(set => set.Values.Length));
    });

    var openings = model.Walls.SelectMany(wall => wall.Openings).ToList();
    Console.WriteLine($"{model.Walls.Length} walls, {openings.Count} openings, {openings.Sum(opening => opening.Fillings.Length)} fillings, "
        + $"{model.Walls.Sum(wall => wall.Connections.Length)} ends of connections, {sets} sets with {values} values");
    return 0;
}

var selection = new WallSelection { Walls = WallChoice.All, Width = WidthMatch.Any };
var walls = WallReader.Read(model, selection, BuiltInCatalogs.Get("aac-mm"), BuiltInRuleSets.Get("eu"));
Console.WriteLine($"{walls.Walls.Length} walls, {walls.Skipped.Length} skipped, {walls.Walls.Sum(wall => wall.Openings.Length)} openings, {walls.Junctions.Length} junctions");
return 0;
