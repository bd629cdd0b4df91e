using System.Collections.Immutable;
using System.CommandLine;
using IfcCourser.Findings;
using IfcCourser.Jobs;
using IfcCourser.Layouts;
using IfcCourser.Output.Json;
using IfcCourser.Output.Sheets;
using IfcCourser.Rules;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Cli.Commands;

/// <summary>The options that layout and check share, and how they become settings.</summary>
internal sealed class RunOptions
{
    public const string JobOption = "--job";

    private readonly Argument<string> _model;

    private readonly Option<string?> _out = new("--out", "-o") { HelpName = "DIR", Description = Messages.OptionOut };

    private readonly Option<string?> _catalog = new Option<string?>("--catalog") { HelpName = "NAME|FILE", Description = Messages.OptionCatalog }.WithCatalogs();

    private readonly Option<string?> _rules = new Option<string?>("--rules") { HelpName = "NAME|FILE", Description = Messages.OptionRules }.WithRuleSets();

    private readonly Option<string> _openings = ChoiceOption.Of("--openings", Messages.OptionOpenings, "move", "keep", "move", "resize");

    private readonly Option<string?> _maxShift = new("--max-shift") { HelpName = "LENGTH", Description = Messages.OptionMaxShift };

    private readonly Option<string> _walls = ChoiceOption.Of("--walls", Messages.OptionWalls, "masonry", "masonry", "all");

    private readonly Option<string> _width = ChoiceOption.Of("--width", Messages.OptionWidth, "exact", "exact", "nearest", "any");

    private readonly Option<string[]> _only = new("--only") { HelpName = "GUID|NAME", Description = Messages.OptionOnly };

    private readonly Option<string[]> _exclude = new("--exclude") { HelpName = "GUID|NAME", Description = Messages.OptionExclude };

    private readonly Option<string[]> _storey = new("--storey") { HelpName = "NAME", Description = Messages.OptionStorey };

    private readonly Option<string[]> _joints = new(GivenJoint.Option) { HelpName = "WALL=LENGTH", Description = Messages.OptionMovementJoint };

    private readonly Option<string> _offcuts = ChoiceOption.Of("--offcuts", Messages.OptionOffcuts, "wall", "wall", "storey", "job");

    private readonly Option<string> _phases = ChoiceOption.Of("--phases", Messages.OptionPhases, "one", "one", "storey");

    private readonly Option<string?> _job = new(JobOption) { HelpName = "FILE", Description = Messages.OptionJob };
    private readonly Option<string?> _sheet = PaperOption.Create();
    private readonly Option<string?> _since = new("--since") { HelpName = "OLD.json", Description = Messages.OptionSince };
    private readonly Option<bool> _dxfPerSheet = new("--dxf-per-sheet") { Description = Messages.OptionDxfPerSheet };
    private readonly Option<string?> _formats;

    private readonly Option<string?> _date = new("--date") { HelpName = "DATE", Description = Messages.OptionDate };

    private readonly Option<string> _failOn;

    private readonly BcfOptions _bcf = new();

    private readonly Option<bool> _json = new("--json") { Description = Messages.OptionJson };

    private readonly Option<bool> _ifcParts = new("--ifc-parts") { Description = Messages.OptionIfcParts };

    private readonly Option<bool> _applyOpenings = new("--apply-openings") { Description = Messages.OptionApplyOpenings };

    private readonly ImmutableArray<string> _knownFormats;

    /// <param name="formats">Formats that the command writes.</param>
    /// <param name="aboutFormats">What the help says of --formats.</param>
    /// <param name="failOn">What --fail-on is where it is not given.</param>
    /// <param name="input">What is read; a model where it is left out.</param>
    public RunOptions(ImmutableArray<string> formats, string aboutFormats, string failOn, Argument<string>? input = null)
    {
        _model = input ?? new Argument<string>("MODEL") { Description = Messages.ArgumentModel };
        _knownFormats = formats;
        _formats = new Option<string?>("--formats") { HelpName = "LIST", Description = aboutFormats }.WithFormats(formats);
        _failOn = ChoiceOption.Of("--fail-on", Messages.OptionFailOn, failOn, "error", "warning", "note", "none");
    }

    public void AddTo(Command command)
    {
        command.Add(_model);
        foreach (var option in (Option[])[_out, _catalog, _rules, _openings, _maxShift, _walls, _width, _only, _exclude, _storey, _joints, _offcuts, _phases, _formats, _sheet, _dxfPerSheet, _since, _job, _date, _failOn, _json, _ifcParts, _applyOpenings])
        {
            command.Add(option);
        }

        _bcf.AddTo(command);
    }

    /// <summary>What the command line says counts, else what the job file says, else what each option is where it is left out.</summary>
    /// <param name="jobFile">Counts in place of --job.</param>
    public Outcome<RunSettings> Read(ParseResult parsed, string? jobFile = null)
    {
        var job = (jobFile ?? parsed.GetValue(_job)) is { } file ? JobReader.Load(file) : Job.None;
        return job.IsOk ? Read(parsed, job.Value) : job.Fault;
    }

    private Outcome<RunSettings> Read(ParseResult parsed, Job job)
    {
        var catalog = Named(parsed.GetValue(_catalog) ?? job.Options.Catalog, SettingsReader.Catalog);
        var rules = Named(parsed.GetValue(_rules) ?? job.Options.Rules, SettingsReader.RuleSet);
        var joints = (parsed.GetValue(_joints) ?? []).Select(GivenJoint.Parse).ToList();
        var faults = new[]
        {
            catalog?.Fault, rules?.Fault, MaxShift(parsed, out var maxShift), Date(parsed, out var date), Formats(parsed, job, out var formats),
            joints.Select(joint => joint.Fault).FirstOrDefault(fault => fault is not null), Paper(parsed, job, out var paper), Since(parsed, out var since), _bcf.Replies(parsed, out var replies), AppliesNothing(parsed),
        };
        if (faults.FirstOrDefault(fault => fault is not null) is { } first)
        {
            return first;
        }

        return new RunSettings
        {
            Model = parsed.GetRequiredValue(_model),
            Out = parsed.GetValue(_out),
            Catalog = catalog?.Value,
            Rules = rules?.Value,
            Openings = Chosen(parsed, _openings, job.Options.Openings),
            MaxShift = maxShift ?? job.Options.MaxShift,
            Selection = Selection(parsed, job.Options),
            MovementJoints = joints.Count > 0 ? [.. joints.Select(joint => joint.Value).OfType<GivenJoint>()] : [.. GivenJoint.Of(job)],
            JobWalls = job.Walls,
            Job = job.Facts,
            Phases = !IsGiven(parsed, _phases) ? job.Phases : parsed.GetValue(_phases) == "storey" ? new JobPhases(ByStorey: true, []) : JobPhases.One,
            Paper = paper,
            Since = since,
            DxfPerSheet = IsGiven(parsed, _dxfPerSheet) ? parsed.GetValue(_dxfPerSheet) : job.Options.DxfPerSheet ?? false,
            Offcuts = Enum.Parse<OffcutReuse>(parsed.GetRequiredValue(_offcuts), ignoreCase: true),
            Formats = formats,
            Date = date ?? job.Date,
            FailOn = Enum.TryParse<Severity>(IsGiven(parsed, _failOn) ? parsed.GetRequiredValue(_failOn) : job.Options.FailOn ?? parsed.GetRequiredValue(_failOn), ignoreCase: true, out var failOn) ? failOn : null,
            Json = parsed.GetValue(_json),
            IfcParts = parsed.GetValue(_ifcParts),
            Bcf = _bcf.Version(parsed),
            Replies = replies,
            ApplyOpenings = parsed.GetValue(_applyOpenings),
        };
    }

    private static bool IsGiven(ParseResult parsed, Option option) => parsed.GetResult(option) is { Implicit: false };

    private static T Chosen<T>(ParseResult parsed, Option<string> option, T? job)
        where T : struct, Enum => IsGiven(parsed, option) || job is null ? Enum.Parse<T>(parsed.GetRequiredValue(option), ignoreCase: true) : job.Value;

    private static Outcome<T>? Named<T>(string? nameOrFile, Func<string, Outcome<T>> load)
        where T : class => nameOrFile is null ? null : load(nameOrFile);

    private WallSelection Selection(ParseResult parsed, JobOptions job) => new()
    {
        Walls = Chosen(parsed, _walls, job.Walls),
        Width = Chosen(parsed, _width, job.Width),
        Only = Listed(parsed, _only, job.Only),
        Exclude = Listed(parsed, _exclude, job.Exclude),
        Storeys = Listed(parsed, _storey, job.Storeys),
    };

    private static ImmutableArray<string> Listed(ParseResult parsed, Option<string[]> option, ImmutableArray<string>? job) =>
        IsGiven(parsed, option) ? [.. parsed.GetValue(option) ?? []] : job ?? [];

    private Fault? Paper(ParseResult parsed, Job job, out PaperSize? paper)
    {
        var chosen = PaperOption.Read(_sheet, parsed.GetValue(_sheet) ?? job.Options.Sheet);
        paper = chosen.Value?.Given;
        return chosen.Fault;
    }

    private Fault? Since(ParseResult parsed, out Layout? since)
    {
        var older = parsed.GetValue(_since) is { } file ? LayoutReader.Load(file) : null;
        since = older?.Value;
        return older?.Fault;
    }

    private Fault? MaxShift(ParseResult parsed, out Length? maxShift)
    {
        maxShift = null;
        if (parsed.GetValue(_maxShift) is not { } text)
        {
            return null;
        }

        if (!LengthText.TryParse(text, out var length, out var problem))
        {
            return Messages.BadLength(_maxShift.Name, problem);
        }

        maxShift = length;
        return length < Length.Zero ? Messages.NegativeLength(_maxShift.Name) : null;
    }

    /// <summary>Openings that stay as designed can't be applied.</summary>
    private Fault? AppliesNothing(ParseResult parsed) =>
        parsed.GetValue(_applyOpenings) && string.Equals(parsed.GetValue(_openings), "keep", StringComparison.OrdinalIgnoreCase)
            ? Messages.NothingToApply()
            : null;

    private Fault? Date(ParseResult parsed, out string? date)
    {
        date = parsed.GetValue(_date);
        return date is null || JobReader.IsDate(date)
            ? null
            : Messages.BadDate(date);
    }

    private Fault? Formats(ParseResult parsed, Job job, out ImmutableHashSet<string> formats)
    {
        var named = parsed.GetValue(_formats)?.Split(',', StringSplitOptions.TrimEntries) ?? job.Options.Formats?.ToArray() ?? [.. _knownFormats];
        formats = named.ToImmutableHashSet(StringComparer.OrdinalIgnoreCase);
        return named.FirstOrDefault(name => !_knownFormats.Contains(name, StringComparer.OrdinalIgnoreCase)) is { } unknown
            ? Messages.UnknownFormat(unknown, _knownFormats)
            : null;
    }
}
