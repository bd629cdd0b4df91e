using IfcCourser.Catalogs;
using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Output.Sheets;
using IfcCourser.Rules;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Output.Tests.Support;

/// <summary>Layouts of invented walls: metric with door and window, a gable, one in inches.</summary>
internal static class Samples
{
    private static Catalog AacMm => BuiltInCatalogs.Get("aac-mm");

    private static Catalog AacIn => BuiltInCatalogs.Get("aac-in");

    public static Layout Metric { get; } = LayoutOf(
        AacMm, "eu", FrontWall().Laid(), GableWall().Laid(), ShortWall().Laid());

    public static Layout Inch { get; } = LayoutOf(AacIn, "us", InchWall().Laid());

    /// <summary>A wall of 62 m, too long for any sheet at the first scale.</summary>
    public static Layout Long => LayoutOf(AacMm, "eu", new SampleWall(AacMm, "Long wall", Mm(62_499), 11).Laid());

    /// <summary>Composed sheets by wall name.</summary>
    public static IReadOnlyDictionary<string, (Layout Layout, WallLayout Wall, Sheet Sheet)> Sheets { get; } = new[] { Metric, Inch }
        .SelectMany(layout => layout.Walls.Select(wall => (Layout: layout, Wall: wall, Sheet: WallSheet.Compose(layout, wall))))
        .ToDictionary(entry => entry.Wall.Identity.Name!, StringComparer.Ordinal);

    public static Length Mm(double mm) => Length.FromMm(mm);

    public static Length In(double inches) => Length.FromInches(inches);

    private static Layout LayoutOf(Catalog catalog, string rules, params WallLayout[] walls) => new()
    {
        Model = new ModelFacts("sample.ifc", new string('0', 64), "IFC4", 1, "0Project", "Invented house", "2026-03-01"),
        Rules = LayoutRules.For(BuiltInRuleSets.Get(rules), catalog, OpeningPolicy.Move),
        Walls = [.. walls],
        Skipped = [],
        Junctions = [],
        Findings = [],
    };

    private static SampleWall FrontWall()
    {
        var wall = new SampleWall(AacMm, "Front wall, Süd / Юг", Mm(7499), 11) { Rip = Mm(124) };
        var door = Opening("Entrance door", OpeningKind.Door, new(Mm(1250), Mm(2251), Mm(0), wall.TopOf(8) + Mm(1)), Mm(-37));
        var window = Opening("Window 1", OpeningKind.Window, new(Mm(3750), Mm(5251), wall.BottomOf(5), wall.TopOf(8) + Mm(1)), Mm(0));
        return wall with
        {
            Openings = [door, window],
            Lintels = [LintelOver("L1", door, wall, 9, Mm(199), Mm(200)), LintelOver("L2", window, wall, 9, Mm(249), Mm(249))],
            Cores =
            [
                Core("B1", Mm(125), wall), Core("B2", Mm(1100), wall), Core("B3", Mm(2400), wall), Core("B4", Mm(7350), wall),
            ],
            Findings = [new Finding(FindingCodes.OpeningMoved, "Door D1 was moved 37 mm onto module lines.")],
        };
    }

    private static SampleWall GableWall()
    {
        var wall = new SampleWall(AacMm, "Gable wall", Mm(5000), 15)
        {
            Gable = [new(Mm(5000), Mm(1769)), new(Mm(2500), Mm(3769)), new(Mm(0), Mm(1769))],
            Origin = new Vector3(0, 0, 0),
            Direction = new Vector2(0, 1),
            StepId = 200,
        };
        return wall;
    }

    private static SampleWall ShortWall() =>
        new(AacMm, "Return", Mm(1249), 11) { StepId = 300, Origin = new Vector3(7499, 0, 0), Direction = new Vector2(0, 1) };

    private static SampleWall InchWall()
    {
        var wall = new SampleWall(AacIn, "North wall", In(319.875), 14);
        var door = Opening("Door 1", OpeningKind.Door, new(In(48), In(88.125), In(0), wall.TopOf(10) + In(0.125)), In(1.5));
        var window = Opening("Window A", OpeningKind.Window, new(In(160), In(208.125), wall.BottomOf(5), wall.TopOf(10) + In(0.125)), In(0));
        return wall with
        {
            Openings = [door, window],
            Lintels = [LintelOver("L1", door, wall, 11, In(7.875), In(8)), LintelOver("L2", window, wall, 11, In(8), In(8))],
            Cores = [Core("B1", In(4), wall), Core("B2", In(36), wall), Core("B3", In(98), wall), Core("B4", In(316), wall)],
        };
    }

    private static OpeningLayout Opening(string name, OpeningKind kind, ElevationRect placed, Length shift)
    {
        var design = placed.ShiftedBy(-shift, Length.Zero);
        return new OpeningLayout(new WallOpening("0Open" + name, 200, name, kind, null, null, design, null), design, placed, true)
        {
            Check = new OpeningCheck(shift == Length.Zero ? ModuleState.OnModule : ModuleState.Cured, new OpeningDeviation(shift, shift, Length.Zero, Length.Zero), shift, shift, null),
        };
    }

    private static Lintel LintelOver(string id, OpeningLayout opening, SampleWall wall, int course, Length left, Length right) => new(
        id,
        opening.Opening.GlobalId,
        LintelKind.Solid,
        "Example lintel",
        opening.Placed.Left - left,
        opening.Placed.Right + right,
        wall.BottomOf(course),
        wall.TopOf(course),
        left,
        right,
        []);

    private static Core Core(string id, Length at, SampleWall wall) => new(
        id,
        at,
        wall.Catalog.Widths[^2].Actual / 2,
        Length.Zero,
        wall.TopOf(wall.CourseCount),
        wall.Catalog.Cores[0].Diameter,
        "1 x 12",
        ["jamb"],
        new Vector2(at.Mm, 0),
        Length.FromMm(20),
        Length.FromMm(35),
        []);
}
