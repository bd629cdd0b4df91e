using IfcCourser.Findings;
using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Plans;
using IfcCourser.SettingOut;
using IfcCourser.Units;
using IfcCourser.Walls;
using static System.FormattableString;

namespace IfcCourser.Output.Sheets.SetOut;

/// <summary>Every word that a set-out sheet prints beside those of <see cref="SheetText"/>.</summary>
internal static class SetOutText
{
    public const string Plan = "Plan";
    public const string DocumentType = "Set-out sheet";
    public const string Bars = "Bars to cast in, in walking order";
    public const string Checks = "Bars: ends of the block above, as built";
    public const string RunningOn = "Bars that run on from below: check";
    public const string Held = "held";
    public const string SkewBars = "Bars of skew walls";
    public const string ControlPoints = "Control points: set out first";
    public const string Diagonals = "Diagonals";
    public const string SignOff = "As built: to be signed";
    public const string MapNorth = "map north";
    public const string TrueNorth = "true north";
    public const string ModelNorth = "model y, no north given";
    public const string LegendBar = "bar to cast in, with its number";
    public const string LegendControl = "control point, with its number";
    public const string LegendFace = "face of the first course; gaps: doors";
    public const string LegendEnd = "end of a wall, or movement joint";
    public const string LegendWall = "wall, and its sheet";
    public const string LegendJoint = "block end in the first course";
    public const string LegendSlab = "edge of the slab";
    public const string LegendGrid = "grid line";
    public const string LegendDiagonal = "diagonal (faint): see table";
    public const string LegendRunning = "bars, then distance from zero";
    public const string LegendZero = "zero of a line of running dimensions";

    public static readonly ImmutableArray<string> BenchMark = ["bench mark no. ........", "height ...............", "(to be filled in on site)"];

    /// <summary>What is signed, with room to write.</summary>
    public static ImmutableArray<string> SignLines(SetOutFacts facts) => facts.CastIn.IsEmpty
        ? ["Control points and diagonals set out by, date", "Faces and door jambs marked by, date", "Accepted: name, signature"]
        : ["Control points and diagonals set out by, date", "Bars set by, date", "Checked before the pour by, date", "Checked after the pour by, date", "Accepted: name, signature"];

    public static string Of(ControlLine line) => line.Kind switch
    {
        ControlLineKind.GridLine => line.Tag.Length > 0 ? "grid " + line.Tag : "grid",
        ControlLineKind.SlabEdge => "slab",
        _ => "face",
    };

    public static string Of(BlockWay way) => way switch
    {
        BlockWay.X => "x",
        BlockWay.Y => "y",
        _ => "face",
    };

    public static string What(ControlPoint point) => point.Kind switch
    {
        ControlPointKind.GridCrossing => "grid " + point.Tag,
        ControlPointKind.SlabCorner => "slab corner",
        ControlPointKind.SkewCorner => "skew wall's corner",
        _ => "wall corner",
    };

    public static string Number(int number) => Invariant($"S{number:00}");

    public static string SheetName(int number, string storey) => SheetText.SheetName(Number(number), storey);

    public static string Skew(string wall, int corner) => Invariant($"{wall} askew: along its left face from point {corner}, and square to it");

    public static IEnumerable<string> Notes(SetOutFacts facts)
    {
        var (layout, storey, text) = (facts.Layout, facts.Storey, facts.Text);
        yield return text.Units == UnitSystem.Inch ? facts.CastIn.IsEmpty ? "Dimensions in feet and inches." : "Dimensions in feet and inches; Back, On and Up in inches." : facts.Storey.Bars.IsEmpty ? "Dimensions in millimetres." : "Dimensions in millimetres; the bar schedule in the unit of its title.";
        yield return $"Set out first: {Line(storey.Axes.XFrom)} at the left (x = 0) and {Line(storey.Axes.YFrom)} at the foot (y = 0), then the control points; "
            + (facts.CastIn.IsEmpty ? "check both diagonals. Mark faces and door jambs from the two zero lines: never from wall to wall." : "check both diagonals. Measure every bar from the two zero lines: never from bar to bar.");
        if (facts.Part is { } part)
        {
            yield return PlanText.Parted(part);
        }

        yield return storey.Outlines[0].Kind == ControlLineKind.SlabEdge
            ? "Slab edges are those of the model. The zero lines stand by the control points and not by the form: measure the form from them before bars are set."
            : "The slab's edges are assumed: take them from the drawings.";
        if (facts.CastIn.IsEmpty)
        {
            yield return "No bar is cast in here.";
        }
        else
        {
            foreach (var note in CastIn(facts))
            {
                yield return note;
            }
        }

        yield return "Points at one place bear the lowest of their numbers on the plan.";
        var below = NumberRanges.Of(storey.Bars.Where(bar => bar.Foot == BarFoot.BarBelow).Select(bar => bar.Number));
        if (below.Length > 0)
        {
            yield return $"Not drawn, in a table of their own: {RunOn(below)} from the walls below through this slab (BARON in the point list).";
        }

        var above = NumberRanges.Of(storey.Bars.Where(bar => bar.Foot == BarFoot.Head).Select(bar => bar.Number));
        if (above.Length > 0)
        {
            yield return $"Not drawn, for not cast into this slab: over lintels or beams {Starting(above)}; see the point list (BARUP) and the wall sheets.";
        }

        yield return Heights(facts);
        yield return Survey(layout.SetOut.Survey);
        foreach (var sentence in facts.CastIn.IsEmpty ? [] : layout.Findings.Where(finding => finding.Code == FindingCodes.BarsNotFor).Select(finding => finding.Message).Distinct(StringComparer.Ordinal))
        {
            yield return Sentence(sentence);
        }
    }

    public static string Sentence(string message) => message.EndsWith('.') ? message : message + ".";

    private static string RunOn(string numbers) => IsOne(numbers) ? $"bar {numbers} runs on" : $"bars {numbers} run on";

    private static string Starting(string numbers) => IsOne(numbers) ? $"starts bar {numbers}" : $"start bars {numbers}";

    private static bool IsOne(string numbers) => numbers.All(char.IsAsciiDigit);

    private static IEnumerable<string> CastIn(SetOutFacts facts)
    {
        var (layout, text) = (facts.Layout, facts.Text);
        yield return Invariant($"Bars {NumberRanges.Of(facts.CastIn.Select(bar => bar.Number))}: {Sizes(facts)}. A bar at a corner belongs to both walls and has one number.");
        yield return "Place bars to their middles. Back and On: from the bar's middle to the ends of the block that stands over it, along x or y as column In says, Back towards the zero line and On away from it"
            + $"{(facts.CastIn.Any(bar => facts.BlockOf(bar)?.Way == BlockWay.Face) ? "; face: along the wall's face, Back towards its start, from which bars of skew walls are measured" : string.Empty)}. A bar that moves must keep {text.WithUnit(layout.Rules.CoreClearance)} to the middle of every joint.";
        if (!facts.Held.IsEmpty)
        {
            yield return $"Held ({NumberRanges.Of(facts.Held)}): these stand by openings that are not where they were drawn. Cast them in only when the designer has agreed to the openings as on the wall sheets.";
        }

        if (!facts.Near.IsEmpty)
        {
            yield return $"Nearer to a joint than that, since no place is clear: {NumberRanges.Of(facts.Near)}. Set them where they are dimensioned.";
        }
        foreach (var starter in Starters(facts))
        {
            yield return starter;
        }

        yield return $"Bar schedule: steel {layout.Rules.Set.Bars?.Steel}. A and B to the outside of the legs, R inside the bend; lengths as cut. Starters, and the bars set into this storey's walls; order/bars.csv lists them wall by wall.";
    }

    /// <summary>How the starters of each mark stand in the slab.</summary>
    private static IEnumerable<string> Starters(SetOutFacts facts) => facts.CastIn.GroupBy(facts.StarterOf).OrderBy(same => same.Min(bar => bar.Number)).Select(same =>
    {
        var (starter, text) = (same.Key, facts.Text);
        var foot = starter.IsHooked ? $"down to the underside of the hook; hook of 90 degrees, its leg {text.WithUnit(starter.HookLeg)} over all and turned away from the slab's edge" : "down to its straight end";
        return $"Starters {starter.Mark} (bars {NumberRanges.Of(same.Select(bar => bar.Number))}): stick-up {text.WithUnit(starter.StickUp)} over the slab (Up), embedment {text.WithUnit(starter.Embedment)} {foot}. "
            + "Slab thickness, cover and the way of the leg are the engineer's to check.";
    });

    private static string Heights(SetOutFacts facts)
    {
        var bars = facts.CastIn.GroupBy(bar => facts.Text.Dimension(Math.Round(bar.Point.Z, 1)), StringComparer.Ordinal).OrderBy(same => same.Min(bar => bar.Point.Z)).ToList();
        var walls = facts.Walls.Select(wall => Math.Round(wall.Frame.Origin.Z, 1)).Distinct().Order().Select(z => facts.Text.Dimension(z));
        return bars.Count > 1
            ? $"Bars start at several heights, those of the model: {string.Join("; ", bars.Select(same => $"{NumberRanges.Of(same.Select(bar => bar.Number))} at {same.Key}"))}."
            : $"Foot of the walls at {string.Join(" and ", bars.Count == 1 ? [bars[0].Key] : walls)} in the model's heights.";
    }

    private static string Survey(SurveyAxes survey) => survey.Kind switch
    {
        SurveyKind.Map => $"points.csv has these point numbers, in map coordinates ({survey.Name ?? "reference system not named"}).",
        SurveyKind.Grid => $"points.csv has these point numbers, measured from the crossing of grid lines {survey.Name}.",
        _ => "points.csv has these point numbers, in the model's axes and not in those of this sheet.",
    };

    private static string Sizes(SetOutFacts facts) => string.Join(", ", facts.CastIn.GroupBy(bar => facts.CoreOf(bar).Bar, StringComparer.Ordinal)
        .OrderBy(size => size.Key, StringComparer.Ordinal)
        .Select(size => Invariant($"{size.Count()} of {size.Key}")));

    private static string Line(ControlLine line) => line.Kind switch
    {
        ControlLineKind.GridLine => "grid line " + line.Tag,
        ControlLineKind.SlabEdge => "the slab's edge",
        _ => "the walls' outer face",
    };
}
