using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Output.Sheets;
using IfcCourser.Units;
using static System.FormattableString;

namespace IfcCourser.Output.Page;

/// <summary>What the page says, apart from the words of elevations, which stand in words.js.</summary>
internal static class PageText
{
    public const string OpeningsHeading = "Openings";
    public const string WallsHeading = "Plan and elevations";
    public const string FindingsHeading = "Findings";
    public const string QuantitiesHeading = "Quantities";
    public const string SkippedHeading = "Walls not laid out";
    public const string CautionsHeading = "Cautions";
    public const string RunHeading = "What this run was given";
    public const string NoOpenings = "No wall that is laid out has an opening.";
    public const string NoFindings = "Nothing was found that anyone should know or decide.";
    public const string NoneSkipped = "Every wall of the model is laid out.";
    public const string NoWalls = "No wall is laid out; the reasons stand below.";
    public const string Job = "The job";
    public const string OfTheModel = "the model as a whole";
    public const string NeedsScript =
        "The elevations are drawn by this page's script, which does not run here. The tables, the plans and the sheets of the walls hold the same.";

    public const string OpeningsLead =
        "Ways are those of the masonry opening, seen as the elevation is drawn: A left, B right. X and Y are the model's axes, marked on the plan.";

    public const string AxesNote = "At openings: an arrow, the way it moved; a diamond, off the module or moved in height alone.";

    /// <summary>Standing cautions; the first speaks of the page where the sheet's speaks of the sheet.</summary>
    public static ImmutableArray<string> Cautions { get; } =
    [
        "This page is a layout aid, not a structural design. Bars, spacings, lintels, bearings and anchors come from the rule set that was chosen; a licensed "
            + "engineer and the local code and building officials must confirm them before work starts.",
        .. SheetText.CautionTexts.Skip(1),
    ];

    public static string Title(PageKind kind) => kind == PageKind.Report ? "Block coursing" : "Openings and findings";

    public static string State(OpeningState state) => state switch
    {
        OpeningState.Off => "off the module",
        OpeningState.Moved => "moved, awaiting consent",
        OpeningState.OnModule => "on the module",
        _ => "not coursed around",
    };

    public static string Count(int count, string one, string many) => Invariant($"{count} {(count == 1 ? one : many)}");

    public static string Severity(Severity severity) => severity.ToString().ToLowerInvariant();

    public static string Area(double squareMetres, UnitSystem units)
    {
        const double SquareFoot = 0.3048 * 0.3048;
        return units == UnitSystem.Inch ? Invariant($"{squareMetres / SquareFoot:0.0}") : Invariant($"{squareMetres:0.00}");
    }

    public static string Volume(double cubicMetres, UnitSystem units)
    {
        const double CubicFoot = 0.3048 * 0.3048 * 0.3048;
        return units == UnitSystem.Inch ? Invariant($"{cubicMetres / CubicFoot:0.0}") : Invariant($"{cubicMetres:0.000}");
    }

    public static string AreaUnit(UnitSystem units) => units == UnitSystem.Inch ? "ft\u00b2" : "m\u00b2";

    public static string VolumeUnit(UnitSystem units) => units == UnitSystem.Inch ? "ft\u00b3" : "m\u00b3";

    public static string LengthUnit(UnitSystem units) => units == UnitSystem.Inch ? "ft and in" : "mm";

    public static string WithUnit(Length length, UnitSystem units) => LengthText.WithUnit(length, units);

    /// <summary>Which way along the wall: an arrow and how far.</summary>
    public static string Along(Length way, UnitSystem units) => $"{(way < Length.Zero ? "\u2190" : "\u2192")} {WithUnit(Length.Abs(way), units)}";

    public static string Up(Length way, UnitSystem units) => $"{(way < Length.Zero ? "\u2193" : "\u2191")} {WithUnit(Length.Abs(way), units)}";

    /// <summary>The same in words, with the direction in plan.</summary>
    public static string Sideways(Length way, Vector2 direction) =>
        $"{(way < Length.Zero ? "left" : "right")}, in plan {Axis(way < Length.Zero ? -direction : direction)}";

    /// <summary>Along an axis of the model, or turned from it.</summary>
    public static string Axis(Vector2 direction)
    {
        const double NearlyAlong = 0.01;
        return Math.Abs(direction.Y) < NearlyAlong ? (direction.X > 0 ? "+X" : "\u2212X")
            : Math.Abs(direction.X) < NearlyAlong ? (direction.Y > 0 ? "+Y" : "\u2212Y")
            : Invariant($"{Math.Atan2(direction.Y, direction.X) * 180 / Math.PI:0}\u00b0 from +X");
    }

    public static string Wider(Length change, UnitSystem units) => $"{WithUnit(Length.Abs(change), units)} {(change < Length.Zero ? "narrower" : "wider")}";

    /// <summary>Where a finding lies in its wall.</summary>
    public static string Place(FindingPlace? at, SheetLengths text)
    {
        var parts = new[]
        {
            at?.S is { } s ? text.Dimension(s) + " from A" : null,
            at?.Z is { } z ? text.Height(z) + " up" : null,
            at?.Course is { } course ? Invariant($"course {course}") : null,
            at?.Core is { } core ? "bar " + core : null,
        };
        return string.Join(", ", parts.Where(part => part is not null));
    }

    public static string Openings(IReadOnlyCollection<OpeningState> states) => states.Count == 0
        ? NoOpenings
        : string.Join("; ", new[] { OpeningState.Off, OpeningState.Moved, OpeningState.OnModule, OpeningState.NotCoursed }
            .Select(state => (state, Count: states.Count(other => other == state)))
            .Where(pair => pair.Count > 0)
            .Select(pair => Invariant($"{pair.Count} {State(pair.state)}"))) + ".";

    public static string Policy(Rules.OpeningPolicy policy) => policy switch
    {
        Rules.OpeningPolicy.Keep => "keep: laid out as designed",
        Rules.OpeningPolicy.Move => "move: shifted to module lines, width kept",
        _ => "resize: jambs snap to module lines, never smaller",
    };
}
