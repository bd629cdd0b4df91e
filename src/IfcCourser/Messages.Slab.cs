using System.Collections.Immutable;
using IfcCourser.Findings;
using IfcCourser.Slabs;
using IfcCourser.Units;
using static System.FormattableString;

namespace IfcCourser;

/// <summary>What is said about readings of slabs.</summary>
internal static partial class Messages
{
    public const string FlatnessNotJudged =
        "Flatness is not judged: FF and FL numbers (ASTM E1155) are made of readings every 12 in (300 mm) along straight lines, and these are not";

    public const string SourceNotGiven = "the rule set names no source";

    public const string CommonPractice = "common practice, no source";

    public static string LevelWithin(Length within, UnitSystem units) => $"Tops within {Apart(within.Mm, units)} of one wall differ by";

    public const string BarOffAlong = "A bar as built stands off its place along the wall by";

    public static string ControlApart(string from, string to) => $"The distance between control points {from} and {to} differs from the plan's by";

    public const string LevelAtMost = "A top lies off the level by";

    public static string FlatAlong(string wall, double apart, UnitSystem units) => Invariant(
        $"{wall}: the slab lies off the straight between two readings {Apart(apart, units)} apart by");

    public static Fault ReadingsUnreadable(string file, Exception e) =>
        new(file, null, null, $"the file can't be read: {e.Message.TrimEnd('.')}", "Check the path and its permissions.");

    public static Fault ReadingsTooLarge(string file, long most) =>
        new(file, null, null, Invariant($"the file is larger than {most} MB, which no readings of a slab are"), "Check the path.");

    public static Fault ReadingsEmpty(string file) => new(file, null, null, "the file has no rows", "Write a header and readings; set-out/readings.csv is a form to fill in.");

    public static Fault ReadingColumnsMissing(string file, int line, IEnumerable<string> columns) => new(
        file, line, null, $"the header has no column {string.Join(" and none called ", columns)}",
        "Head the plan columns x and y, or easting and northing, or wall, station and offset, each with its unit, such as x_m.");

    public static Fault ReadingHeightsMissing(string file, int line) => new(
        file, line, null, "the header has no column of heights", "Head them z, or rod and hi (instrument height), each with its unit, such as rod_ft.");

    public static Fault ReadingUnitMissing(string file, int line, string column) => new(
        file, line, null, $"the column {column} has no unit", $"Write it as {column}_m, _mm, _ft or _in, or name the unit with --units.");

    public static Fault ReadingCellMissing(string file, int line, string column) => new(file, line, null, $"{column} is blank", "Fill it in, or leave the row's reading out.");

    public static Fault ReadingInstrumentMissing(string file, int line) => new(
        file, line, null, "there is a rod reading, but no instrument height in this row or before it", "Write the instrument's height into the column hi of the first row of each set-up.");

    public static Fault ReadingCodeUnknown(string file, int line, string code) => new(
        file, line, null, $"the code is \"{code}\"", "Write SLAB or nothing, TOP for the top of the first course, BAR or CONTROL.");

    public static Fault ReadingNoLength(string file, int line, string column, string text) => new(
        file, line, null, $"{column} is \"{text}\", which is no length", "Write a number in the column's unit, or a length such as 4 3/8 in.");

    public static Fault ReadingWallUnknown(string file, int line, string? wall, bool isSeveral) => new(
        file, line, null, wall is null ? "the row names no wall" : isSeveral ? $"several walls are called \"{wall}\"" : $"no wall is called \"{wall}\"",
        "Write a wall's GlobalId, as layout.json and readings.csv have it.");

    public static Fault ReadingOutlier(string file, int line, double off, UnitSystem units) => new(
        file, line, null, $"this reading lies {Mm(Math.Abs(off), units)} {(off > 0 ? "above" : "below")} the slab that the other readings show",
        "Check rod, instrument height and unit; leave the row out if it is no reading of this slab.");

    public static Fault ReadingsElsewhere(string file, double away) => new(
        file, null, null, Invariant($"all readings lie {away / 1000:0} m or more from every wall of the storey"),
        "Check units and axes; readings in axes of their own need two or more CONTROL rows.");

    public static Fault ReadingFarOff(string file, int line, double away) => new(
        file, line, null, Invariant($"this reading lies {away / 1000:0} m from every wall"), "Check its coordinates, or leave the row out.");

    public static Fault ReadingsDisagree(string file, int line, int other, double by, UnitSystem units) => new(
        file, other, null, $"this reading and that of line {line} are of one place and differ by {Mm(by, units)}", "Shoot the place again, or leave the wrong row out.");

    public static Fault ReadingsTooFew(string file, int count, int notShot) => new(
        file, null, null, Invariant($"{count} readings of the slab are too few, or lie in one line{(notShot > 0 ? Invariant($"; {notShot} rows have none") : string.Empty)}"),
        "Read at least three places around each wall; set-out/readings.csv lists them.");

    public static Fault ReadingsTooMany(string file, int count, int most) => new(
        file, null, null, Invariant($"{count} readings are more than the {most} that are taken"), "Thin them out: one every foot (300 mm) along the walls is plenty.");

    public static Fault BedMaxTooThin(Length least, UnitSystem units) =>
        new("--bed-max", null, null, $"the bed would be thinner than its least of {LengthText.WithUnit(least, units)}", "Give a larger length.");

    public static Fault ControlTooFew(string file, int line) => new(
        file, line, null, "there is one CONTROL row, or all are of one place", "Measure two or more control points, as far apart as the slab allows.");

    public static Fault ControlUnknown(string file, int line, string point) => new(
        file, line, null, $"\"{point}\" is no point of the layout", "Write the number of a point of points.csv, readings.csv or the set-out sheet.");

    public static Fault ControlExchanged(string file) => new(
        file, null, null, "control points come to their places only with x and y exchanged", "Exchange the names of the two columns in the header: x or easting, y or northing.");

    public static Fault ControlScale(string file, double scale) => new(
        file, null, null, Invariant($"control points lie {scale:0.####} times as far apart in the model as in the file"), "Check the unit of the columns, and the points' numbers.");

    public static Fault ControlOff(string file, int line, string point, double off, UnitSystem units) => new(
        file, line, null, $"control point {point} lies {Mm(off, units)} off its place after the fit", "Check the points' numbers and coordinates; measure it again.");

    public static Fault BarUnknown(string file, int line, string? wall, string? core, string point) => new(
        file, line, null, $"the row names no bar of the layout ({string.Join(", ", new[] { wall, core, point }.Where(name => !string.IsNullOrEmpty(name)))})",
        "Write wall and core as points.csv has them, or the bar's number as the point.");

    public static Fault NoFirstCourse() => new("layout.json", null, null, "no wall of the layout has a course", "Lay out the model's walls first.");

    public static Fault NoSuchStorey(string name, IEnumerable<string> nearest) =>
        new("--storey", null, null, $"\"{name}\" is no storey with walls laid out", $"The storeys are: {string.Join(", ", nearest.Take(5))}.");

    public static Fault NoTopReadings(string file) => new(
        file, null, null, "no reading with the code TOP lies on a block of the first course", "Read the top of each block near its middle, code TOP.");

    public static string BlockOff(LevelledBlock block, UnitSystem units) =>
        $"{block.Block.Wall.Identity.Label}, {block.Block.Piece.Id}: {Mm(Math.Abs(block.Off), units)} {(block.Off > 0 ? "high" : "low")}: {(block.Work == LevelWork.Sand ? "sand it down" : "lift it and lay it again")}";

    public static string SlabOutOfLevel(SlabSurvey survey, UnitSystem units) => Invariant(
        $"The slab under the first course differs by {Mm(survey.Spread, units)}; the bed takes {LengthText.WithUnit(survey.Field.Limits.Max - survey.Field.Limits.Min, units)}. Cheapest: {Remedy(survey.Chosen.Kind)}, at most {Mm(survey.Chosen.Depth, units)} deep, {AmountText.Area(survey.Chosen.Area / 1e6, units)}, {AmountText.Volume(survey.Chosen.Volume / 1e6, units)}");

    public static string Remedy(RemedyKind kind) => kind switch
    {
        RemedyKind.Trim => "trim the undersides of blocks over highs",
        RemedyKind.Fill => "fill lows before the bed is laid",
        RemedyKind.Grind => "grind highs off",
        RemedyKind.TrimAndFill => "trim blocks over highs and fill lows",
        RemedyKind.GrindAndFill => "grind highs off and fill lows",
        RemedyKind.OtherUnits => "lay units of other heights",
        _ => "raise the datum",
    };

    public static string BedOut(BlockBed bed, UnitSystem units) => string.Join("; ", new[]
    {
        bed.High > 0 ? $"{bed.Block.Wall.Identity.Label}, {bed.Block.Piece.Id}: the slab is {Mm(bed.High, units)} too high for the least bed" : null,
        bed.Low > 0 ? $"{bed.Block.Wall.Identity.Label}, {bed.Block.Piece.Id}: the bed is {Mm(bed.Low, units)} thicker than its limit" : null,
    }.OfType<string>());

    public static string BarOut(BarAsBuilt bar, UnitSystem units) =>
        $"{bar.Wall.Identity.Label}, {bar.Core.Id}: as built {Mm(Math.Abs(bar.Along), units)} towards the {(bar.Along < 0 ? "start" : "end")} and {Mm(Math.Abs(bar.Across), units)} towards the {(bar.Across < 0 ? "left" : "right")} face of its place; "
        + (bar.Where == BarPlace.OffAcross ? "it stands out of its core" : "its core comes too near a joint, whatever the bond");

    public static string BondAroundBars(BondChange change)
    {
        var (before, after) = (change.Before.Quantities.PartUnits, change.After.Quantities.PartUnits);
        return Invariant($"{change.After.Identity.Label} is coursed again around {string.Join(", ", change.Bars)} as built: {after} pieces cut, {before} as planned");
    }

    public static string SlabOffLevel(double off, Length limit, string source, UnitSystem units) =>
        $"The slab lies up to {Mm(Math.Abs(off), units)} {(off > 0 ? "above" : "below")} its designed level; {LengthText.WithUnit(limit, units)} is the limit ({source})";

    public static string HeightsOfBench(double zero, UnitSystem units) =>
        $"The heights are not the model's: they are counted from a bench mark of their own, about {Mm(Math.Abs(zero), units)} {(zero > 0 ? "below" : "above")} the model's zero; how high the slab lies against the design is not known";

    public static string BedBeyondReadings(int blocks) => Invariant($"{Blocks(blocks)} beyond the outermost readings; the slab is taken as high there as at the nearest place between readings");

    public static string ReadingsSparse(int blocks) => Invariant($"{Blocks(blocks)} further than 6 ft (1.8 m) from every reading");

    public static string ControlPointsOff(IEnumerable<ControlResidual> residuals, UnitSystem units) =>
        $"Control points lie off their places after the fit: {string.Join(", ", residuals.Select(residual => $"{residual.Point} by {Mm(residual.Off.Length, units)}"))}";

    public static string PointsNotShot(int count) => Invariant($"{count} {(count == 1 ? "row of the file has" : "rows of the file have")} no reading");

    public static string ReadingColumnsIgnored(ImmutableArray<string> columns) => $"Columns that mean nothing here: {string.Join(", ", columns)}";

    private static string Blocks(int count) => count == 1 ? "1 block of the first course lies" : Invariant($"{count} blocks of the first course lie");

    private static string Apart(double mm, UnitSystem units) => units == UnitSystem.Inch ? Invariant($"{mm / 304.8:0.#} ft") : Invariant($"{mm / 1000:0.#} m");

    private static string Mm(double mm, UnitSystem units) => LengthText.WithUnit(Length.FromMm(mm), units);
}
