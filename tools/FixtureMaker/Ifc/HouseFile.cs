using FixtureMaker.Design;
using FixtureMaker.Step;

namespace FixtureMaker.Ifc;

/// <summary>Writes a house as an IFC file, each instance after those it refers to.</summary>
internal static class HouseFile
{
    // Fixed: the same house gives the same bytes on any day.
    private const string TimeStamp = "2026-03-02T08:00:00";

    public static string Write(House house)
    {
        var file = new ModelFile(house);
        var building = ProjectPart.Write(file);
        var materials = new MaterialPart(file);
        var walls = new Dictionary<string, Reference>(StringComparer.Ordinal);
        var storeys = new List<Reference>();
        foreach (var storey in house.Storeys)
        {
            storeys.Add(StoreyPart.Write(file, building.Placement, storey, materials, walls));
        }

        file.AddRoot("IFCRELAGGREGATES", "building has storeys", null, null, building.Building, storeys);
        materials.Finish();
        foreach (var joint in house.PathJoints)
        {
            WriteJoint(file, joint, walls);
        }

        return file.Step.Finish(Header(file));
    }

    private static void WriteJoint(ModelFile file, PathJoint joint, Dictionary<string, Reference> walls)
    {
        // Its connection types are given in the order related, relating.
        file.AddRoot(
            "IFCRELCONNECTSPATHELEMENTS", $"joint {joint.First} {joint.FirstAt} {joint.Second} {joint.SecondAt}", null, null, null,
            walls[joint.First], walls[joint.Second], Array.Empty<object>(), Array.Empty<object>(),
            PlaceName(joint.SecondAt), PlaceName(joint.FirstAt));
    }

    private static Keyword PlaceName(PathPlace place) => new(place switch
    {
        PathPlace.AtStart => "ATSTART",
        PathPlace.AtEnd => "ATEND",
        _ => "ATPATH",
    });

    private static string SchemaName(SchemaVersion schema) => schema switch
    {
        SchemaVersion.Ifc2X3 => "IFC2X3",
        SchemaVersion.Ifc4 => "IFC4",
        _ => "IFC4X3_ADD2",
    };

    private static string Header(ModelFile file)
    {
        var view = file.IsIfc4 ? "ViewDefinition [DesignTransferView_V1.0]" : "ViewDefinition [CoordinationView]";
        string[] descriptions =
        [
            view,
            $"Comment [INVENTED for tests: {file.House.Title}; no real building, place, person or plan]",
        ];
        return $"""
            FILE_DESCRIPTION(({string.Join(",", descriptions.Select(StepFileWriter.Quote))}),'2;1');
            FILE_NAME('{file.House.Key}.ifc','{TimeStamp}',('invented'),('invented'),'fixture maker','fixture maker','');
            FILE_SCHEMA(('{SchemaName(file.House.Schema)}'));

            """.ReplaceLineEndings("\n");
    }
}
