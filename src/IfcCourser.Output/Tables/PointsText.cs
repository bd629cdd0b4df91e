using IfcCourser.Layouts;
using IfcCourser.Units;
using IfcCourser.Walls;
using static System.FormattableString;

namespace IfcCourser.Output.Tables;

/// <summary>Every word of the point list's comments.</summary>
internal static class PointsText
{
    public const double MmInMetre = 1000;

    /// <summary>The international foot.</summary>
    public const double MmInFoot = 304.8;

    public static IEnumerable<string> Comments(Layout layout)
    {
        var (survey, isInch) = (layout.SetOut.Survey, layout.Rules.Catalog.Units == UnitSystem.Inch);
        yield return isInch ? "Unit: ft (international foot, 0.3048 m)" : "Unit: m";
        yield return "Origin: " + Origin(survey);
        yield return Invariant($"Rotation: eastings grow {Math.Round(survey.RotationDegrees, 6) + 0.0:0.######} degrees counter-clockwise from the model's x axis");
        yield return Invariant($"Scale: {survey.Scale:0.##########}, map length to model length");
        yield return Invariant($"Elevation: the model's heights plus {survey.Height / (isInch ? MmInFoot : MmInMetre):0.####}");
        yield return "Columns: point as on the set-out sheet; elevation of a bar's foot, where its wall starts, or of the slab's top; wall: the GlobalId of the bar's wall; core: its id in that wall";
        yield return "Codes: BAR cast into the slab; BARON runs on from the bar of the wall below; BARUP starts over a lintel or beam; CORNER of the walls' outer faces; FACE start of a skew wall's left face; SLAB corner; GRID crossing";
        yield return "Check two known points before use. The bars come from the rule set of the run; a licensed engineer confirms them.";
    }

    /// <summary>What the head of readings.csv says.</summary>
    public static IEnumerable<string> ReadingComments(Layout layout)
    {
        yield return "Shooting list: fill in the instrument's height (hi) once for each set-up and a rod reading for each point, or head a column z with the heights; then: ifccourser slab layout.json --readings this file";
        yield return "Axes: those of points.csv; " + Origin(layout.SetOut.Survey) + ". In axes of your own: change the plan coordinates to yours and add two or more rows with the code CONTROL and the number of a point of points.csv or of this list";
        yield return "Rows without a reading are passed over. BAR rows: where bars stand as built";
    }

    private static string Origin(SurveyAxes survey) => survey.Kind switch
    {
        SurveyKind.Map => $"map coordinates, {Flat(survey.Name) ?? "reference system not named"} (the model's IfcMapConversion)",
        SurveyKind.Grid => $"crossing of grid lines {Flat(survey.Name)} (the model has no map conversion)",
        _ => "origin of the model's axes (the model has no map conversion and no square grid)",
    };

    /// <summary>A name of the model that stays in its line and its cell.</summary>
    private static string? Flat(string? name) => name is null ? null : string.Concat(name.Select(c => char.IsControl(c) || c is ',' or ';' or '"' or '\u2028' or '\u2029' ? ' ' : c));
}
