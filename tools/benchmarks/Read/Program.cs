using System.Globalization;
using IfcCourser.Catalogs;
using IfcCourser.Ifc;
using IfcCourser.Rules;
using IfcCourser.Walls;

// Read MODEL: reads every wall of a model with its openings and junctions, lays out none, and prints how many of each.
CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
var opened = IfcModel.Open(args[0]);
if (!opened.IsOk)
{
    Console.Error.WriteLine(opened.Fault);
    return 1;
}

using var model = opened.Value;
var selection = new WallSelection { Walls = WallChoice.All, Width = WidthMatch.Any };
var walls = WallReader.Read(model, selection, BuiltInCatalogs.Get("aac-mm"), BuiltInRuleSets.Get("eu"));
Console.WriteLine($"{walls.Walls.Length} walls, {walls.Skipped.Length} skipped, {walls.Walls.Sum(wall => wall.Openings.Length)} openings, {walls.Junctions.Length} junctions");
return 0;
