using FixtureMaker;

// usage: FixtureMaker [FOLDER]    writes ifc/, survey/ and bad/ under FOLDER, which is "fixtures" when left out
var fixtures = args is [var folder] ? folder : "fixtures";
foreach (var (path, bytes) in FixtureSet.All())
{
    var file = Path.Combine(fixtures, path);
    Directory.CreateDirectory(Path.GetDirectoryName(file)!);
    File.WriteAllBytes(file, bytes);
}
