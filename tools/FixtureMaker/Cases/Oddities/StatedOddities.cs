using System.Collections.Immutable;
using FixtureMaker.Cases.Junctions;
using FixtureMaker.Design;
using FixtureMaker.Ifc;

namespace FixtureMaker.Cases.Oddities;

/// <summary>Oddities of what the instances state: places, units, axes, attributes, relations.</summary>
internal static class StatedOddities
{
    // 33,400 km east and 5,500 km north: as far as national grids reach, and more.
    private const double East = 33_400_000_000;
    private const double North = 5_500_000_000;

    private static readonly BuildUp _layers = new(
        "Plastered wall 315", 0, LayerSense.Positive, [new("Gypsum plaster", 15), new("Aerated concrete block", 240), new("Mineral insulation", 60)]);

    public static ImmutableArray<(string Name, string Text)> All =>
    [
        .. Houses.Select(house => (house.Key, HouseFile.Write(house))),
        .. Edited.Select(edit => (edit.Name, edit.Edit.Text)),
    ];

    private static ImmutableArray<House> Houses =>
    [
        JunctionCase.Of(
            "far-away", "a corner far from the origin",
            JunctionCase.East("A", East, East + 4000, North), JunctionCase.North("B", East + 4000, North + 240, North + 3000)),
        SmallModel.Of("millimetres-as-metres", "millimetres in a file that says metres", 0, OddityCases.Plain("Wall")) with { Units = HouseUnits.Metre },
        SmallModel.Of("metres-as-millimetres", "metres in a file that says millimetres", 0, Metres("Wall")),
        SmallModel.Of("axis-reversed", "the axis runs against the placement", 0, Layered() with { AxisFrom = 4000, AxisTo = 0 }),
        SmallModel.Of("axis-missing", "a layered wall without an axis", 0, Layered() with { HasAxis = false }),
        SmallModel.Of("group", "a wall that is a member of a group", 0, OddityCases.Plain("Wall") with { Beside = Grouped }),
    ];

    private static ImmutableArray<(string Name, StepEdit Edit)> Edited =>
    [
        ("duplicate-global-ids", SameIds()),
        ("empty-placement", Unplaced()),
        ("no-storey", One("no-storey", "a wall that no storey holds").Remove("IFCRELCONTAINEDINSPATIALSTRUCTURE")),
        ("no-units", One("no-units", "a project without units, in metres", Metres("Wall")).Set("IFCPROJECT", 8, "$").Remove("IFCUNITASSIGNMENT")),
        ("attribute-count", Two("attribute-count", "walls with an attribute too few and one too many").Shorten("IFCWALL", 1).Lengthen("IFCWALL", "$", instance: 1)),
        ("null-attributes", Nulls()),
    ];

    // On a storey 3000 up: the first wall has no placement, the second one's has no axes (after site, building, storey, first wall).
    private static StepEdit Unplaced() =>
        new StepEdit(SmallModel.Of(
                "empty-placement", "a wall without placement, and one whose placement is empty", 3000,
                OddityCases.Plain("First", 1000), OddityCases.Plain("Second", 2000)))
            .Set("IFCWALL", 5, "$").Set("IFCLOCALPLACEMENT", 1, "$", instance: 4);

    private static StepEdit SameIds()
    {
        var edit = Two("duplicate-global-ids", "two walls of one GlobalId");
        var first = edit.LineOf("IFCWALL").Split('\'')[1];
        return edit.Set("IFCWALL", 0, $"'{first}'", instance: 1);
    }

    // No name, type or kind of wall; no name of its storey; a layer set without offset and sense; an opening and a property without value.
    private static StepEdit Nulls()
    {
        var wall = OddityCases.Plain("Wall") with { Openings = [Opening.Void("Void", 1000, 1000, 900, 1200)] };
        var edit = One("null-attributes", "attributes left empty that must be given", wall);
        edit.Set("IFCWALL", 2, "$").Set("IFCWALL", 4, "$").Set("IFCWALL", 8, "$");
        edit.Set("IFCMATERIALLAYERSETUSAGE", 1, "$").Set("IFCMATERIALLAYERSETUSAGE", 2, "$").Set("IFCMATERIALLAYERSETUSAGE", 3, "$");
        edit.Set("IFCOPENINGELEMENT", 6, "$").Set("IFCPROPERTYSINGLEVALUE", 2, "$").Set("IFCBUILDINGSTOREY", 2, "$");
        return edit;
    }

    private static StepEdit One(string key, string title, Wall? wall = null) => new(SmallModel.Of(key, title, 0, wall ?? OddityCases.Plain("Wall")));

    private static StepEdit Two(string key, string title) => new(SmallModel.Of(key, title, 0, OddityCases.Plain("First"), OddityCases.Plain("Second", 3000)));

    private static Wall Metres(string name) => SmallModel.Straight(
        name, BuildUp.Centred("Block wall", new Layer("Aerated concrete block", 0.24)), new(0, 0), Heading.East, 4, 2.519);

    private static Wall Layered() => SmallModel.Straight("Wall", _layers, new(0, 0), Heading.East, 4000, 2519);

    private static void Grouped(ModelFile file, WrittenWall wall)
    {
        var group = file.AddRoot("IFCGROUP", "group", "Walls to be priced", null, null);
        file.AddRoot("IFCRELASSIGNSTOGROUP", "wall in group", null, null, new[] { wall.Wall }, null, group);
    }
}
