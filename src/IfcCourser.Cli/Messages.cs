using System.Globalization;
using IfcCourser.Findings;
using IfcCourser.Layouts;
using IfcCourser.Output.Pdf;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Cli;

/// <summary>Every sentence this command says to its user.</summary>
internal static partial class Messages
{
    public const string ErrorPrefix = "error:";

    public const string About = "Turns an architect's IFC model into block coursing: what to order, where to cut, what is off the module.";

    public const string AboutLayout = "Lay out every block wall of a model: layout.json, a sheet per wall, the model with property sets.";

    public const string AboutCheck = "Say which openings are off the module and by how much; the exit status tells a pipeline.";

    public const string AboutCatalog = "Block catalogs and rule sets, built in or your own.";

    public const string AboutList = "List the built-in catalogs and rule sets.";

    public const string AboutShow = "Print a catalog or rule set with its sources; save it to start one of your own.";

    public const string AboutVerify = "Read a catalog or rule file and say what is wrong in it.";

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

    public const string OptionFailOn = "Exit with 1 where a finding is at least this grave.";

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

    public const string SheetsComeTogether = "A sheet is written as dxf and svg, whichever of the two is named.";

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

    public static Fault FileNotFolder(string path) => new(path, null, null, "this is a file, not a folder", "Name a folder with --out.");

    public static Fault BadLength(string option, string problem) => new(option, null, null, problem, "Correct the value.");

    public static Fault BadJoint(string text) => new(
        Commands.GivenJoint.Option, null, null, $"\"{text}\" names no wall and place", "Write a wall and a length, such as \"North=12 ft\".");

    public static Fault NegativeLength(string option) => new(option, null, null, "the length is negative", "Write how far a jamb may move at most.");

    public static Fault BadDate(string text) => new(
        "--date", null, null, $"\"{text}\" is no date", "Write year, month and day, such as 2026-03-31 or 2026-03-31T14:05:00.");

    /// <summary>What the system says, without the path of our own that it may append.</summary>
    public static Fault NotWritable(string path, Exception e) => new(
        path, null, null, $"this can't be written: {e.Message.Split(" : '")[0].TrimEnd('.')}", "Free the place or choose another folder with --out.");

    public static Fault OverwritesInput(string path) => new(
        path, null, null, "the result would overwrite the model it was made from", "Choose another folder with --out.");

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

    /// <summary>Heads of check's columns: where edges are from their lines; + is to the right or up.</summary>
    public static IReadOnlyList<string> OpeningColumns => ["opening", "state", "left to line", "right to line", "sill to course", "head to course", "least move", "findings"];

    public const string StateOn = "on the module";

    public const string StateCurable = "off, a move cures it";

    public const string StateOff = "off the module";

    public const string StateUncoursed = "not coursed around";

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

    public static string WritingSheets(int done, int all) => Invariant($"Drawing sheet {done} of {all}");

    public static string PrintingSheets(int done, int all) => Invariant($"Printing sheet {done} of {all}");

    /// <summary>The first few characters by shape and number, how many more there are, and where to look.</summary>
    public static string GlyphsMissing(IReadOnlyList<MissingGlyph> missing)
    {
        const int Named = 5;
        var named = string.Join(", ", missing.Take(Named).Select(glyph => Invariant($"{glyph.Character} (U+{glyph.Character.Value:X4})")));
        var others = missing.Count > Named ? Invariant($" and {missing.Count - Named} more characters") : string.Empty;
        return $"The font of the PDF can't set {named}{others}, first on sheet {missing[0].Sheet}: boxes stand there, or letters in the wrong order or shape. "
            + "The search finds them still, and the other formats keep them.";
    }

    public static string WritingModel => "Writing the model";

    public static string Valid(string path, string kind, string name) => $"{path}: {kind} {name} is valid.";

    public static string BuiltIn(string name) => $"{name} is built in and valid.";

    public static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

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
