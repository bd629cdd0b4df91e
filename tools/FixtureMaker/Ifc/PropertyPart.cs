using FixtureMaker.Design;
using FixtureMaker.Step;

namespace FixtureMaker.Ifc;

/// <summary>Pset_WallCommon on every wall and base quantities on those that ask for them.</summary>
internal static class PropertyPart
{
    public static void Write(ModelFile file, Reference instance, Wall wall)
    {
        var properties = new[]
        {
            Property(file, "Reference", new Typed("IFCIDENTIFIER", wall.BuildUp.Name)),
            Property(file, "IsExternal", new Typed("IFCBOOLEAN", wall.IsExternal ? Keyword.True : Keyword.False)),
            Property(file, "LoadBearing", new Typed("IFCBOOLEAN", wall.IsLoadBearing ? Keyword.True : Keyword.False)),
        };
        var set = file.AddRoot("IFCPROPERTYSET", $"common {wall.Name}", "Pset_WallCommon", null, properties);
        Relate(file, instance, set, $"has common {wall.Name}");
        if (wall.HasQuantities)
        {
            WriteQuantities(file, instance, wall);
        }
    }

    private static void WriteQuantities(ModelFile file, Reference instance, Wall wall)
    {
        // Lengths in mm stand beside areas in m2 and volumes in m3, as many authoring programs write them.
        var metre = file.House.Units == HouseUnits.Millimetre ? 1000d : 1d;
        var quantities = new[]
        {
            Quantity(file, "LENGTH", "Length", WallArithmetic.Length(wall)),
            Quantity(file, "LENGTH", "Width", wall.BuildUp.Thickness),
            Quantity(file, "LENGTH", "Height", WallArithmetic.Height(wall)),
            Quantity(file, "AREA", "GrossFootprintArea", WallArithmetic.GrossFootprintArea(wall) / (metre * metre)),
            Quantity(file, "AREA", "GrossSideArea", WallArithmetic.GrossSideArea(wall) / (metre * metre)),
            Quantity(file, "AREA", "NetSideArea", WallArithmetic.NetSideArea(wall) / (metre * metre)),
            Quantity(file, "VOLUME", "GrossVolume", WallArithmetic.GrossVolume(wall) / (metre * metre * metre)),
            Quantity(file, "VOLUME", "NetVolume", WallArithmetic.NetVolume(wall) / (metre * metre * metre)),
        };
        var set = file.AddRoot(
            "IFCELEMENTQUANTITY", $"quantities {wall.Name}", file.IsIfc4 ? "Qto_WallBaseQuantities" : "BaseQuantities", null,
            file.IsIfc4 ? null : "BaseQuantities", quantities);
        Relate(file, instance, set, $"has quantities {wall.Name}");
    }

    private static void Relate(ModelFile file, Reference wall, Reference set, string key) =>
        file.AddRoot("IFCRELDEFINESBYPROPERTIES", key, null, null, new[] { wall }, set);

    private static Reference Property(ModelFile file, string name, Typed value) =>
        file.Step.Add("IFCPROPERTYSINGLEVALUE", name, null, value, null);

    private static Reference Quantity(ModelFile file, string kind, string name, double value) =>
        file.Step.Add($"IFCQUANTITY{kind}", [name, null, null, value, .. file.InIfc4([null])]);
}
