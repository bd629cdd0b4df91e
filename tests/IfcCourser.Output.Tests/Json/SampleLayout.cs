using IfcCourser.Catalogs;
using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Units;
using IfcCourser.Walls;
using Interval = IfcCourser.Geometry.Interval;

namespace IfcCourser.Output.Tests.Json;

/// <summary>A layout made by hand that holds one of every kind of thing; no bond anybody would build.</summary>
internal static class SampleLayout
{
    public static readonly Layout Full = new()
    {
        Model = new ModelFacts("Gebäude «A».ifc", new string('a', 64), "IFC4", 304.8, "3MD_HkJ6X2EwpfIbCFm0g_", "Дом", "2026-01-02"),
        Rules = LayoutRules.For(BuiltInRuleSets.Get("us"), BuiltInCatalogs.Get("aac-in"), OpeningPolicy.Move),
        Walls = [CoursedWall("0UcKJVh1wiUc0jPM8BIIf8", 30), CoursedWall("1UcKJVh1wiUc0jPM8BIIf8", 10)],
        Skipped = [
            new SkippedWall(new WallIdentity("2UcKJVh1wiUc0jPM8BIIf8", 20, null, null, null), new Finding(FindingCodes.NoBody, "no body"), null),
            new SkippedWall(new WallIdentity("3UcKJVh1wiUc0jPM8BIIf8", 40, "x", "EG", "t"), new Finding(FindingCodes.NotSelected, "left out"), Body())],
        WallIds = ["0UcKJVh1wiUc0jPM8BIIf8", "1UcKJVh1wiUc0jPM8BIIf8"],
        Junctions = [new JunctionLayout(
            "J1", JunctionKind.Corner, ["0UcKJVh1wiUc0jPM8BIIf8", "1UcKJVh1wiUc0jPM8BIIf8"], JunctionHow.Bonded, "0UcKJVh1wiUc0jPM8BIIf8",
            "1UcKJVh1wiUc0jPM8BIIf8", [Mm(508)])],
        BarSchedule = [
            new BarScheduleRow("V1", "0UcKJVh1wiUc0jPM8BIIf8", BarSizes.Find("No. 4")!, "ASTM A615 Grade 60", 2, "2", Inches(30), Inches(8), Inches(1.5), Inches(38)),
            new BarScheduleRow("V2", "0UcKJVh1wiUc0jPM8BIIf8", BarSizes.Find("No. 4")!, "ASTM A615 Grade 60", 3, "straight", Inches(96), Mm(0), Mm(0), Inches(96)),
            new BarScheduleRow("HC1", "0UcKJVh1wiUc0jPM8BIIf8", BarSizes.Find("No. 4")!, "ASTM A615 Grade 60", 1, "17", Inches(24.5), Inches(24.5), Inches(1.5), Inches(49)) { Use = BarUse.Corner }],
        ShootingList = [new ShootingPoint(301, ShootingPointKind.Corner, null, "0UcKJVh1wiUc0jPM8BIIf8", Mm(0), Inches(7.875), new Vector3(1, 2, 3))],
        SlabLevels = [new SlabLevel("Erdgeschoß", Mm(30480.5), null, "raise-datum"), new SlabLevel(null, Mm(1), Mm(-2.25), "fill")],
        Findings = [new Finding(FindingCodes.OutlineNotFilled, "a finding of the model")],
    };

    private static WallLayout CoursedWall(string globalId, long stepId) => new()
    {
        Wall = new Wall
        {
            Identity = new WallIdentity(globalId, stepId, "Wand \"1\"\n", "Erdgeschoß", null),
            Frame = new WallFrame(new Vector3(31_000_000.1234567, -0.0000001, 1e-9), new Vector2(1 / Math.Sqrt(2), -1 / Math.Sqrt(2)), Inches(96), Inches(7.875)),
            Body = Body(),
            Outline = [new(Mm(0), Mm(0)), new(Inches(96), Mm(0)), new(Inches(96), Inches(16.375)), new(Mm(0), Inches(16.375))],
            Openings = [],
            Start = WallEnd.Free,
            End = new WallEnd(EndKind.Corner, [1]),
            Findings = [],
        },
        Group = "G1",
        LevelLine = Inches(8.375),
        Openings = [new OpeningLayout(
            new WallOpening("4UcKJVh1wiUc0jPM8BIIf8", 50, null, OpeningKind.Window, null, null, Rect(), [new(Mm(1), Mm(2)), new(Mm(3), Mm(2)), new(Mm(2), Mm(4))]),
            Rect(), Rect(), OnModule: true)],
        ModuleLines = new ModuleLines(Mm(0), Inches(8)),
        Courses = [
            new Course(
                1, CourseKind.Levelling, Inches(0.5), Inches(8.375), [new Span(new Interval(Mm(0), Inches(23.875)), EdgeKind.Free, EdgeKind.Jamb)],
                [Piece("C1P1", Cuts.None) with { Notch = new Notch("left", Mm(10), Mm(110), Mm(100)), Cores = ["K1"], Bed = new PieceBed(Mm(6.35), Mm(9), Mm(7.5)) }]),
            new Course(2, CourseKind.BondBeam, Inches(8.5), Inches(16.375), [], [Piece("C2P1", Cuts.Length | Cuts.Rake) with { IsFull = false, Outline = [new(Mm(0), Mm(0)), new(Mm(9), Mm(0)), new(Mm(0), Mm(9))] }])],
        Lintels = [new Lintel("L1", "4UcKJVh1wiUc0jPM8BIIf8", LintelKind.Solid, "p", Mm(0), Mm(100), Mm(5), Mm(9), Mm(20), Mm(20), ["C1P1"])],
        Cores = [new Core("K1", Mm(100), Mm(100), Mm(0), Mm(2000), Mm(101.6), "No. 4", ["end"], new Vector2(1, 2), Mm(3), Mm(4), []) with { Bars = Bars() }],
        BondBeams = [new BondBeam
        {
            Id = "B1",
            Kind = BondBeamKind.Trough,
            Course = 2,
            Bottom = Mm(1),
            Top = Mm(2),
            From = Mm(3),
            To = Mm(4),
            Why = ["top"],
            BarCount = 2,
            BarSize = "No. 4",
            Lap = Inches(24),
            Laps = [new BarLap(1, Mm(3), Mm(3.5))],
            Steel = [new BeamBar(1, Mm(3), Mm(3.5), Mm(0.5), Mm(89), Mm(70)) { Mark = "H1" }],
            Corners = [new BeamCorner("0Other", Mm(4), 2, Inches(24)) { Bars = [new BeamCornerBar(Mm(89), Mm(114), Mm(95)) { Mark = "HC1" }] }],
            GroutVolume = 0.25,
        }],
        MovementJoints = [new MovementJoint(Mm(1), Mm(10), Mm(0), Mm(100), "length")],
        Embeds = [new Embed("anchor", Mm(1), Mm(2), "by others", "12 mm")],
        Quantities = new WallQuantities(1.23456789, 0.1, 1.13456789, 0.2, 1, 1, 0, 0.25),
        Findings = [new Finding(FindingCodes.OverlapShort, "short", new FindingPlace { S = Mm(1), Z = Mm(2), Course = 2, Piece = "C2P1", Core = "K1", Opening = "o" })],
    };

    private static CoreBars Bars() => new(
        1, Inches(0.5), [new Interval(Mm(0), Mm(2000))], [new Interval(Mm(0), Inches(24))], IsCoupled: false, new StarterBar(true, Inches(6), Inches(8), Inches(24)),
        new CoreBelow("1UcKJVh1wiUc0jPM8BIIf8", "K1"), 0.016, [new Interval(Mm(0), Inches(64)), new Interval(Inches(64), Mm(2000))]);

    private static Piece Piece(string id, Cuts cut) => new()
    {
        Id = id,
        Product = "unit",
        From = Mm(0),
        To = Inches(23.875),
        Bottom = Inches(0.5),
        Top = Inches(8.375),
        Cut = cut,
        IsFull = true,
        Cores = [],
    };

    private static BodyFacts Body() => new(1.5, 2, new Vector3(0, 0, 0), new Vector3(1, 2, 3));

    private static ElevationRect Rect() => new(Mm(1), Mm(3), Mm(2), Mm(4));

    private static Length Mm(double value) => Length.FromMm(value);

    private static Length Inches(double value) => Length.FromInches(value);
}
