using FixtureMaker.Houses;
using FixtureMaker.Ifc;

// usage: FixtureMaker [FOLDER]    writes ifc/ under FOLDER, which is "fixtures" when left out
var fixtures = args is [var folder] ? folder : "fixtures";
foreach (var house in HouseTypes.All)
{
    var path = Directory.CreateDirectory(Path.Combine(fixtures, "ifc", house.Key)).FullName;
    File.WriteAllText(Path.Combine(path, $"{house.Key}.ifc"), HouseFile.Write(house));
}
