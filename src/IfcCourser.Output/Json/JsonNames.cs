using IfcCourser.Catalogs;
using IfcCourser.Findings;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Slabs;
using IfcCourser.Walls;

namespace IfcCourser.Output.Json;

/// <summary>The fixed words of layout.json for each choice.</summary>
internal static class JsonNames
{
    public static string Of(Severity severity) => Lower(severity);

    public static string Of(JunctionKind kind) => Lower(kind);

    public static string Of(JunctionHow how) => Lower(how);

    public static string Of(OpeningKind kind) => Lower(kind);

    public static string Of(EdgeKind kind) => Lower(kind);

    public static string Of(LintelKind kind) => Lower(kind);

    public static string Of(BondBeamKind kind) => Lower(kind);

    public static string Of(OpeningPolicy policy) => Lower(policy);

    public static string Of(SurveyKind kind) => Lower(kind);

    public static string Of(ShootingPointKind kind) => Lower(kind);

    public static string Of(LevelWork work) => work is LevelWork.NotRead ? "not-read" : Lower(work);

    public static string Of(BarAnswer answer) => answer switch
    {
        BarAnswer.AsPlanned => "as-planned",
        BarAnswer.CoreMoves => "core-moves",
        BarAnswer.BondMoves => "bond-moves",
        _ => "left",
    };

    public static string Of(ReadingHeights heights) => Lower(heights);

    public static string Of(RemedyKind kind) => kind switch
    {
        RemedyKind.RaiseDatum => "raise-datum",
        RemedyKind.TrimAndFill => "trim-and-fill",
        RemedyKind.GrindAndFill => "grind-and-fill",
        RemedyKind.OtherUnits => "other-units",
        _ => Lower(kind),
    };

    public static string Of(BarUse use) => Lower(use);

    public static string Of(BarFoot foot) => foot is BarFoot.BarBelow ? "bar-below" : Lower(foot);

    public static string Of(ControlLineKind kind) => kind switch
    {
        ControlLineKind.GridLine => "grid-line",
        ControlLineKind.SlabEdge => "slab-edge",
        _ => "wall-face",
    };

    public static string Of(ControlPointKind kind) => kind switch
    {
        ControlPointKind.WallCorner => "wall-corner",
        ControlPointKind.SkewCorner => "skew-corner",
        ControlPointKind.SlabCorner => "slab-corner",
        _ => "grid-crossing",
    };

    public static string Of(EndKind kind) => kind is EndKind.MovementJoint ? "movement-joint" : Lower(kind);

    public static string Of(CourseKind kind) => kind is CourseKind.BondBeam ? "bond-beam" : Lower(kind);

    public static string Of(Certainty certainty) => certainty is Certainty.FromMemory ? "from-memory" : Lower(certainty);

    /// <summary>full-unit, unit-waste: the words of its name joined by dashes.</summary>
    public static string Of(OrderItem item) => string.Concat(item.ToString().Select((letter, i) => i > 0 && char.IsUpper(letter) ? $"-{letter}" : letter.ToString())).ToLowerInvariant();

    public static string Of(OffcutReuse reuse) => Lower(reuse);

    public static string Of(QuantityUnit unit) => unit switch
    {
        QuantityUnit.Metre => "m",
        QuantityUnit.SquareMetre => "m2",
        QuantityUnit.Litre => "l",
        _ => Lower(unit),
    };

    /// <summary>The kinds of cut joined by +, in a fixed order.</summary>
    public static string Of(Cuts cuts) => cuts is Cuts.None
        ? "none"
        : string.Join('+', Enum.GetValues<Cuts>().Where(cut => cut is not Cuts.None && cuts.HasFlag(cut)).Select(cut => Lower(cut)));

    private static string Lower(Enum value) => value.ToString().ToLowerInvariant();
}
