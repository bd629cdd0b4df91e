using System.Globalization;
using IfcCourser.Findings;
using IfcCourser.Layouts;
using IfcCourser.Output.Bcf;
using IfcCourser.Output.Pdf;
using IfcCourser.Slabs;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Cli;

/// <summary>Every sentence this command says to its user.</summary>
internal static partial class Messages
{
    public const string ErrorPrefix = "error:";

    public const string About = "Turns an architect's IFC model into block coursing: what to order, where to cut, what is off the module.";

    public const string AboutLayout = "Lay out every block wall of a model: layout.json, a drawing set, the order, the model with property sets.";

    public const string AboutCheck = "Say which openings are off the module and by how much; the exit status tells a pipeline.";

    public const string AboutSlab = "Turn readings of a slab into the level of the first course, the bed under each of its blocks, and what to do about highs and lows.";

    public const string ArgumentLayout = "layout.json of an earlier run.";

    public const string OptionReadings = "Readings of the slab: CSV with a header; set-out/readings.csv is a form to fill in.";

    public const string OptionSlabOut = "Folder for the results; when left out, one named after the layout's.";

    public const string OptionUnits = "Unit of columns whose header names none.";

    public const string OptionStage = "slab: readings of the slab; levelled: readings of the top of the first course (code TOP).";

    public const string OptionSlabStorey = "The storey that was read; the lowest when left out.";

    public const string OptionBedMax = "The bed at most, in place of the catalog's limit, such as \"1 1/4 in\" under a fully grouted first course.";

    public const string OptionApply = "Write datum and beds into a changed layout.json and the sheets of its walls.";

    public const string OptionSlabJson = "Print the summary as one JSON object.";

    public const string SlabCautions =
        "The readings are only as good as the instrument and the slab between them. Grinding and cutting free silica dust: use extraction and masks. What bears on the structure is the engineer's to confirm.";

    public const string AboutCatalog = "Block catalogs and rule sets, built in or your own.";

    public const string AboutList = "List the built-in catalogs and rule sets.";

    public const string AboutShow = "Print a catalog or rule set with its sources; save it to start one of your own.";

    public const string AboutVerify = "Read a catalog or rule file and say what is wrong in it.";

    public const string AboutIds = "Write two IDS files for other checkers: what a model needs to be laid out with a catalog, and what a coursed model carries.";

    public const string ArgumentModel = "The model: .ifc, or .ifczip with one .ifc in it.";

    public const string ArgumentSet = "Name of a built-in catalog or rule set, or a .toml file.";

    public const string OptionOut = "Folder for the results.";

    public const string OptionCatalog = "Block catalog: a built-in name or a .toml file.";

    public const string OptionRules = "Rule set: a built-in name or a .toml file.";

    public const string OptionOpenings = "keep: as designed; move: shift to module lines, width kept; resize: jambs snap, never smaller.";

    public const string OptionMaxShift = "How far a jamb may move, such as \"50 mm\" or \"2 in\".";

    public const string OptionWalls = "masonry: walls that the catalog's words and widths fit; all: every wall.";

    public const string OptionWidth = "What to do where no catalog width equals the masonry layer.";

    public const string OptionOnly = "Only walls with this GlobalId or name (* and ? match); repeatable.";

    public const string OptionExclude = "Not walls with this GlobalId or name (* and ? match); repeatable.";

    public const string OptionStorey = "Only walls of this storey; repeatable.";

    public const string OptionMovementJoint = "A movement joint in the wall with this GlobalId or name (* and ? match), its middle so far from the wall's start, such as \"North=12 ft\"; repeatable.";

    public const string OptionDate = "Date to stamp, such as 2026-03-31 or 2026-03-31T14:05:00; the model's own time stamp when left out.";

    public const string OptionOffcuts = "How far the saw list may use what is left of a sawn unit: in its wall, its storey or anywhere.";

    public const string OptionPhases = "Deliveries: one for all or one a storey, each with whole packs; a job file may list others.";

    public const string OptionJob = "TOML file with project, client, author, checked-by, date, revisions and any of these options; the command line wins.";

    public const string OptionSheet = "Paper of every sheet; where left out, each takes the smallest it fits on.";

    public const string OptionSince = "layout: layout.json of the last issue: sheets of changed walls bear clouds and a revision letter.";

    public const string OptionDxfPerSheet = "A DXF file for each sheet instead of one for the set.";

    public const string OptionFailOn = "Exit with 1 where a finding is at least this grave.";

    public const string OptionIfcParts = "layout: also write the model with every block, lintel and bar as a part of its wall.";

    public const string OptionApplyOpenings = "layout: also write the model with its openings moved to where they are placed, and a list of the changes.";

    public const string OptionQuiet = "Say nothing but errors.";

    public const string OptionVerbose = "Say each step, why each wall was taken or not, and every finding.";

    public const string OptionNoColour = "No colour in messages.";

    public const string OptionJson = "Print the summary as one JSON object.";

    public const string QuietAndVerbose = "--quiet and --verbose can't be combined; leave one out.";

    public const string Catalogs = "Catalogs";

    public const string RuleSets = "Rule sets";

    public const string Reading = "Reading the model";

    public const string LayingOut = "Laying out the walls";

    public const string Cautions = """
        This lays out and counts; it designs no structure. Bars, spacings, lintels and anchors follow the rule set chosen and
        must be confirmed by a licensed engineer and the building officials. Bars drilled in afterwards need the engineer's
        approval. Cutting blocks frees silica dust: use extraction and masks. Brace unfinished walls against wind.
        """;

    public const string SheetsComeTogether = "Sheets are written as dxf and svg, whichever of the two is named.";

    public const string NothingFits = "no wall stands on a storey or has a name that all of --only, --exclude and --storey let pass";

    public const string LoosenFilters = "Leave one of them out.";

    public const string NoNames = "the model names neither material nor type";

    public const string NoWalls = "no wall is laid out: the model has none (no IfcWall)";

    public static string OptionFormats(IEnumerable<string> known) => $"Any of {string.Join(",", known)}; all when left out.";

    public static string UnknownChoice(string option, string value, IEnumerable<string> choices) =>
        $"{option}: \"{value}\" is not understood. Write one of {string.Join(", ", choices)}.";

    public static Fault MatchesNoWall(string option, string pattern, bool isStorey, IEnumerable<string> nearest) => new(
        option, null, null, $"\"{pattern}\" matches no wall's {(isStorey ? "storey" : "name or GlobalId")} in the model", Nearest(nearest));

    public static Fault FiltersLeaveNothing() => new("--only, --exclude, --storey", null, null, NothingFits, LoosenFilters);

    public static string SeeHelp(string command) => $"See: ifccourser {command}--help";

    public static string UnknownWord(string token, string? nearest) =>
        $"\"{token}\" is not understood here." + (nearest is null ? string.Empty : $" Did you mean {nearest}?");

    public static Fault UnknownFormat(string name, IEnumerable<string> known) => new(
        "--formats", null, null, $"\"{name}\" is no format", $"Name any of {string.Join(", ", known)}, separated by commas.");

    public static Fault UnknownPaper(string option, string name, IEnumerable<string> known) => new(
        option, null, null, $"\"{name}\" is no paper size", $"Write one of {string.Join(", ", known)}.");

    public static Fault FileNotFolder(string path) => new(path, null, null, "this is a file, not a folder", "Name a folder with --out.");

    public static Fault BadLength(string option, string problem) => new(option, null, null, problem, "Correct the value.");

    public static Fault BadJoint(string text) => new(
        Commands.GivenJoint.Option, null, null, $"\"{text}\" names no wall and place", "Write a wall and a length, such as \"North=12 ft\".");

    public static Fault NegativeLength(string option) => new(option, null, null, "the length is negative", "Write how far a jamb may move at most.");

    public static Fault NothingToApply() => new(
        "--apply-openings", null, null, "with --openings keep no opening moves", "Choose --openings move or resize, or leave --apply-openings out.");

    public static Fault PartsAsModel(string path) => new(
        path, null, null, "this is the parts file of an earlier run: its walls are blocks already and have no bodies", "Give the model that it was made from, or the coursed one.");

    public static Fault BadDate(string text) => new(
        "--date", null, null, $"\"{text}\" is no date", "Write year, month and day, such as 2026-03-31 or 2026-03-31T14:05:00.");

    /// <summary>What the system says, without the path of our own that it may append.</summary>
    public static Fault NotWritable(string path, Exception e) => new(
        path, null, null, $"this can't be written: {e.Message.Split(" : '")[0].TrimEnd('.')}", "Free the place or choose another folder with --out.");

    public static Fault FolderHeld(string folder) => new(
        folder, null, null, "another run is writing to this folder", "Wait for it to end, or choose another folder with --out.");

    public static Fault LeadsElsewhere(string folder) => new(
        folder, null, null, "this is a link that leads out of the folder of the results", "Remove the link, or choose another folder with --out.");

    public static Fault OverwritesInput(string path) => new(
        path, null, null, "the result would overwrite the model it was made from", "Choose another folder with --out.");

    public static string Stopped => "stopped. What was not finished is not written; files of earlier runs are as they were.";

    public static string Defect(Exception e) =>
        $"this is a defect of ifccourser ({e.GetType().Name}: {e.Message}). Please report it with the model and the command line.";

    public static string Chosen(string catalog, string rules, string why) => $"catalog {catalog}, rules {rules}: {why}";

    public static string BecauseNamed => "as named";

    public static string BecauseModel(bool inches) => inches
        ? "the model is in feet or inches (name others with --catalog and --rules)"
        : "the model is not in feet or inches (name others with --catalog and --rules)";

    public static string BecauseCatalog(bool inches) => inches
        ? "catalog as named, which is in inches (name other rules with --rules)"
        : "catalog as named, which is metric (name other rules with --rules)";

    public static string BecauseRules(bool inches) => inches
        ? "rules as named; the model is in feet or inches (name another catalog with --catalog)"
        : "rules as named; the model is not in feet or inches (name another catalog with --catalog)";

    /// <summary>Heads of check's columns; the last is the state.</summary>
    public static IReadOnlyList<string> OpeningColumns => ["opening", "left", "right", "sill", "head", string.Empty];

    public static string OpeningKey(UnitSystem units) =>
        $"Ways of jambs to their module lines, of sills and heads to their courses, {(units == UnitSystem.Inch ? "in" : "mm")}; + is to the right or up:";

    public const string StateOn = "on the module";

    public const string StateUncoursed = "not coursed around";

    public const string LengthUnknown = "length not its own";

    public static string State(ModuleState state) => state switch
    {
        ModuleState.OnModule => StateOn,
        ModuleState.Cured => "off, moved onto it",
        ModuleState.Curable => "off, a move cures it",
        ModuleState.WidthOff => "off, its width too",
        ModuleState.Stuck => "off, can't move",
        ModuleState.Fixed => "a gap of the wall",
        _ => StateUncoursed,
    };

    /// <summary>How far the jambs move: one figure where the width is kept.</summary>
    public static string Move(OpeningCheck check, UnitSystem units) => (check.MoveLeft == check.MoveRight, check.MoveLeft == Length.Zero, check.MoveRight == Length.Zero) switch
    {
        (true, _, _) => $"move {Signed(check.MoveLeft, units)}",
        (_, true, _) => $"widen {Signed(check.Widening, units)} to the right",
        (_, _, true) => $"widen {Signed(check.Widening, units)} to the left",
        _ => $"move {Signed(check.MoveLeft, units)}, then widen {Signed(check.Widening, units)} to the right",
    };

    public static string Kept(string cost) => $"kept, it costs {cost}";

    public static string Accepted(int accepted, int others) => Invariant($"accepted before: {accepted}; new: {others}");

    public static string WallLength(LengthCheck check, UnitSystem units) => (check.Way == Length.Zero, check.IsTaken) switch
    {
        (true, _) => $"{LengthText.WithUnit(check.Length, units)} long, on the module",
        (_, true) => $"{LengthText.WithUnit(check.Length, units)} long, {Signed(check.Way, units)} to the module, which its joints take",
        _ => $"{LengthText.WithUnit(check.Length, units)} long, {Signed(check.Way, units)} to the module",
    };

    public static string NotCoursedHead(WallIdentity wall, Finding reason) => $"{WallHead(wall)}: not laid out, {reason.Code.Id}: {reason.Message}";

    public static string Signed(Length? length, UnitSystem units) =>
        length is { } value ? (value > Length.Zero ? "+" : string.Empty) + LengthText.Format(value, units) : "-";

    public const string OptionBaseline = "Findings accepted before, as --write-baseline wrote them: only others fail.";

    public const string OptionWriteBaseline = "Write this run's findings to a file, to be accepted with --baseline from now on.";

    public const string OptionBcf = "Which BCF is written: 2.1 or 3.0; that of the file given with --bcf-in, else 3.0, when left out.";

    public const string OptionBcfIn = "A BCF file that came back with answers: what people wrote and closed is kept.";

    public const string OptionJUnit = "Write the results as JUnit XML, a test case for each wall and opening.";

    public static string WallHead(WallIdentity wall) => $"{wall.Name ?? "(no name)"}, {wall.Storey ?? "no storey"}, {wall.GlobalId}";

    public static string Model(ModelFacts model) => $"{model.File}: {model.Schema}, {model.Date}";

    public static string Walls(LayoutTotals totals) => Invariant(
        $"walls: {totals.Walls}, laid out {totals.Coursed}, not laid out {totals.Walls - totals.Coursed}");

    public static string Blocks(LayoutTotals totals) => Invariant(
        $"blocks: {totals.Pieces}, whole {totals.FullUnits}, cut {totals.PartUnits}; saw cuts {totals.Cuts}; cores {totals.Cores}; lintels {totals.Lintels}");

    public static string FindingCounts(int errors, int warnings, int notes) => Invariant($"findings: errors {errors}, warnings {warnings}, notes {notes}");

    /// <summary>The commonest reason, what cures it, and the names that no word of the catalog fits.</summary>
    public static string NoneLaidOut(FindingCode reason, IReadOnlyList<string> names) =>
        $"no wall is laid out, mostly for {reason.Id}: {reason.Meaning} {reason.Remedy}{(names.Count == 0 ? string.Empty : $" Names seen: {string.Join(", ", names.Select(name => $"\"{name}\""))}.")}";

    public static string NotLaidOut(FindingCode reason, int count) => Invariant($"  {reason.Id}: {count}. {reason.Remedy}");

    public static string FindingCount(Severity severity, FindingCode code, int count) => Invariant($"  {Severity(severity)} {code.Id}: {count}");

    public static string MoreCodes(int codes, int findings) => Invariant($"  and {findings} of {codes} other codes");

    public static string OpeningsMoved(int moved, int others) => Invariant(
        $"openings moved in the model: {moved}{(others == 0 ? string.Empty : Invariant($"; left to the designer: {others}"))}");

    public static string Written(string folder) => $"written to {folder}:";

    public static string WrittenFile(string file) => $"  {file}";

    public static string WrittenFiles(string pattern, int count) => Invariant($"  {pattern} ({count} files)");

    public static string Leftover(IReadOnlyList<string> files) => Invariant(
        $"  not of this run, perhaps superseded: {files[0]}{(files.Count > 1 ? Invariant($" and {files.Count - 1} more") : string.Empty)}");

    public static string Finding(WallIdentity? wall, Finding finding) =>
        $"{(wall is null ? "model" : $"{wall.Name ?? "(no name)"} {wall.GlobalId}")}: {Severity(finding.Severity)} {finding.Code.Id}: {finding.Message}";

    public static string Taken(WallIdentity wall, MasonryChoice? choice, string names, UnitSystem units) =>
        $"{Wall(wall)} is laid out: {Stuff(choice, units)}; {names}.";

    public static string NotTaken(WallIdentity wall, Finding reason, MasonryChoice? choice, string names, UnitSystem units) =>
        $"{Wall(wall)} is not laid out, {reason.Code.Id}: {reason.Message} {(choice?.Thickness is null ? "Names" : Capital(Stuff(choice, units)))}: {names}.";

    public static string NameFound(NameRead name) =>
        $"\"{name.Word!.TrimStart('*')}\" in the {Kind(name.Kind)} \"{name.Name}\"{(name.IsMasonry is true ? string.Empty : " rules it out")}";

    public static string NamesSeen(IEnumerable<string> names) => $"no word of the catalog in {string.Join(", ", names.Select(name => $"\"{name}\""))}";

    public static string DrawingSheets(int count) => Invariant($"Drawing {count} sheets");

    /// <summary>The first few characters by shape and number, how many more there are, and where to look.</summary>
    public static string GlyphsMissing(IReadOnlyList<MissingGlyph> missing)
    {
        const int Named = 5;
        var named = string.Join(", ", missing.Take(Named).Select(glyph => Invariant($"{glyph.Character} (U+{glyph.Character.Value:X4})")));
        var others = missing.Count > Named ? Invariant($" and {missing.Count - Named} more characters") : string.Empty;
        return $"The font of the PDF can't set {named}{others}, first on sheet {missing[0].Sheet}: boxes stand there, or letters in the wrong order or shape. "
            + "The search finds them still, and the other formats keep them.";
    }

    public static string WritingBcf => "Drawing the pictures of the issues";

    /// <summary>What became of the file that came back.</summary>
    public static string Replies(BcfReplies replies) => Invariant(
        $"issues: {replies.Ours}, closed {replies.Closed}, answered {replies.Answered}; passed on as they are: {replies.Gone} no longer found, {replies.Others} of others");

    public static string RepliesDropped(int count) => Invariant(
        $"{count} topics that came back are not passed on, for they are of the other version of BCF: leave out --bcf to write the version that came back");

    public static string SlabReadings(SlabSurvey survey) => Invariant(
        $"{survey.Storey ?? "walls without a storey"}: {survey.Readings.Levels.Length} readings, {survey.Beds.Length} blocks in the first course");

    public static string ControlResidual(ControlResidual residual, UnitSystem units) =>
        $"  control point {residual.Point}: {LengthText.WithUnit(Length.FromMm(residual.Off.Length), units)} off its place after the fit";

    public static string SlabDatum(SlabSurvey survey, UnitSystem units) =>
        $"datum: underside of the first course at {Mm(survey.Datum, units)} in the heights of the readings"
        + (survey.Readings.Heights == ReadingHeights.Bench ? string.Empty : $", {Mm(Math.Abs(survey.Chosen.Raised), units)} {(survey.Chosen.Raised < 0 ? "lower" : "higher")} than designed");

    public static string SlabBed(SlabSurvey survey, UnitSystem units) => Invariant(
        $"bed: {Mm(survey.Beds.Min(bed => bed.Least), units)} to {Mm(survey.Beds.Max(bed => bed.Most), units)} (limits {LengthText.WithUnit(survey.Field.Limits.Min, units)} to {LengthText.WithUnit(survey.Field.Limits.Max, units)}), mortar {AmountText.Volume(survey.Field.Mortar(survey.Chosen.Raised) / 1e6, units)}");

    public static string SlabRemedy(SlabRemedy remedy, bool isChosen, UnitSystem units) => Invariant(
        $"  {(isChosen ? "*" : "-")} {Name(remedy.Kind)}: {(remedy.IsPossible ? Invariant($"{Mm(remedy.Depth, units)}, {AmountText.Area(remedy.Area / 1e6, units)}, {AmountText.Volume(remedy.Volume / 1e6, units)}") : "does not bring the bed into its limits")}");

    public static string LevelledCourse(LevelledCourse course) => Invariant(
        $"{course.Storey ?? "walls without a storey"}: {course.Blocks.Length} blocks, not read {Count(course, LevelWork.NotRead)}, right {Count(course, LevelWork.Right)}, to sand {Count(course, LevelWork.Sand)}, to lay again {Count(course, LevelWork.Relay)}");

    public static string LevelledLevel(LevelledCourse course, UnitSystem units) =>
        $"top of the first course at {Mm(course.Level, units)} in the heights of the readings; neighbours may differ by {LengthText.WithUnit(course.Step, units)}, all blocks by {LengthText.WithUnit(course.Range, units)}";

    public const string ApplyForBars = "  with --apply the layout and its sheets are written around these bars";

    public static string BarsAsBuilt(SlabSurvey survey)
    {
        int Count(BarAnswer answer) => survey.Bars.Count(bar => bar.Answer == answer);
        return Invariant(
            $"bars as built: {survey.Bars.Length}, in place {Count(BarAnswer.AsPlanned)}, core drilled around {Count(BarAnswer.CoreMoves)}, blocks laid around {Count(BarAnswer.BondMoves)}, left to the engineer and the building official {Count(BarAnswer.Left)}");
    }

    public static string BarLeft(BarAsBuilt bar, UnitSystem units) =>
        $"  {bar.Bar.Point}: {bar.Wall.Identity.Label} {bar.Core.Id} {bar.Core.Bar}, off {Mm(Math.Abs(bar.Along), units)} along and {Mm(Math.Abs(bar.Across), units)} across: "
        + (bar.Where == BarPlace.OffAcross ? "out of its core" : "no bond keeps its core clear of joints");

    public static string Tolerance(ToleranceCheck check, UnitSystem units) =>
        $"  {(check.IsKept ? "kept" : "NOT KEPT")}: {check.What} {Mm(check.Value, units)}, may be {Mm(check.Limit, units)} ({check.Source})";

    public static string SlabFinding(Finding finding) => $"  {Severity(finding.Severity)} {finding.Code.Id}: {finding.Message}";

    public static string WritingModel => "Writing the model";

    public static string Valid(string path, string kind, string name) => $"{path}: {kind} {name} is valid.";

    public static string BuiltIn(string name) => $"{name} is built in and valid.";

    public static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private static int Count(LevelledCourse course, LevelWork work) => course.Blocks.Count(block => block.Work == work);

    private static string Name(RemedyKind kind) => kind switch
    {
        RemedyKind.Trim => "trim undersides of blocks over highs",
        RemedyKind.Fill => "fill lows",
        RemedyKind.Grind => "grind highs",
        RemedyKind.TrimAndFill => "trim over highs and fill lows",
        RemedyKind.GrindAndFill => "grind highs and fill lows",
        RemedyKind.OtherUnits => "units of other heights",
        _ => "raise the datum",
    };

    private static string Mm(double mm, UnitSystem units) => LengthText.WithUnit(Length.FromMm(mm), units);

    private static string Wall(WallIdentity wall) =>
        string.IsNullOrWhiteSpace(wall.Name) ? Capital(wall.Label) : Invariant($"{wall.Name} (#{wall.StepId})");

    private static string Stuff(MasonryChoice? choice, UnitSystem units) => choice switch
    {
        { Thickness: { } thickness, Layer: { } layer } => Invariant($"layer {layer} of {choice.Layers}, {LengthText.WithUnit(thickness, units)} thick"),
        { Thickness: { } thickness } => $"the whole body, {LengthText.WithUnit(thickness, units)} thick",
        _ => "its body",
    };

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];

    private static string Kind(NameKind kind) => kind switch
    {
        NameKind.Layer => "layer",
        NameKind.Material => "material",
        NameKind.Category => "category",
        NameKind.Part => "part",
        NameKind.LayerSet => "layer set",
        NameKind.Type => "type",
        _ => "wall's name",
    };

    private static string Severity(Severity severity) => severity.ToString().ToLowerInvariant();

    private static string Nearest(IEnumerable<string> names) => $"Nearest: {string.Join(", ", names.Select(name => $"\"{name}\""))}.";
}
