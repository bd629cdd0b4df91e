using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using IfcCourser.Findings;
using IfcCourser.Rules;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Cli.Commands;

/// <summary>The options that layout and check share, and how they become settings.</summary>
internal sealed class RunOptions
{
    /// <summary>ISO 8601 calendar dates, with or without time and offset.</summary>
    private static readonly string[] _isoDates = ["yyyy-MM-dd", "yyyy-MM-dd'T'HH:mm:ssK"];

    private readonly Argument<string> _model;

    private readonly Option<string?> _out = new("--out", "-o") { HelpName = "DIR", Description = Messages.OptionOut };

    private readonly Option<string?> _catalog = new("--catalog") { HelpName = "NAME|FILE", Description = Messages.OptionCatalog };

    private readonly Option<string?> _rules = new("--rules") { HelpName = "NAME|FILE", Description = Messages.OptionRules };

    private readonly Option<string> _openings = Choice("--openings", Messages.OptionOpenings, "move", "keep", "move", "resize");

    private readonly Option<string?> _maxShift = new("--max-shift") { HelpName = "LENGTH", Description = Messages.OptionMaxShift };

    private readonly Option<string> _walls = Choice("--walls", Messages.OptionWalls, "masonry", "masonry", "all");

    private readonly Option<string> _width = Choice("--width", Messages.OptionWidth, "exact", "exact", "nearest", "any");

    private readonly Option<string[]> _only = new("--only") { HelpName = "GUID|NAME", Description = Messages.OptionOnly };

    private readonly Option<string[]> _exclude = new("--exclude") { HelpName = "GUID|NAME", Description = Messages.OptionExclude };

    private readonly Option<string[]> _storey = new("--storey") { HelpName = "NAME", Description = Messages.OptionStorey };

    private readonly Option<string[]> _joints = new(GivenJoint.Option) { HelpName = "WALL=LENGTH", Description = Messages.OptionMovementJoint };

    private readonly Option<string?> _formats;

    private readonly Option<string?> _date = new("--date") { HelpName = "DATE", Description = Messages.OptionDate };

    private readonly Option<string> _failOn;

    private readonly Option<bool> _json = new("--json") { Description = Messages.OptionJson };

    private readonly ImmutableArray<string> _knownFormats;

    /// <param name="formats">Formats that the command writes.</param>
    /// <param name="aboutFormats">What the help says of --formats.</param>
    /// <param name="failOn">What --fail-on is where it is not given.</param>
    /// <param name="input">What is read; a model where it is left out.</param>
    public RunOptions(ImmutableArray<string> formats, string aboutFormats, string failOn, Argument<string>? input = null)
    {
        _model = input ?? new Argument<string>("MODEL") { Description = Messages.ArgumentModel };
        _knownFormats = formats;
        _formats = new Option<string?>("--formats") { HelpName = "LIST", Description = aboutFormats };
        _failOn = Choice("--fail-on", Messages.OptionFailOn, failOn, "error", "warning", "note", "none");
    }

    public void AddTo(Command command)
    {
        command.Add(_model);
        foreach (var option in (Option[])[_out, _catalog, _rules, _openings, _maxShift, _walls, _width, _only, _exclude, _storey, _joints, _formats, _date, _failOn, _json])
        {
            command.Add(option);
        }
    }

    public Outcome<RunSettings> Read(ParseResult parsed)
    {
        var catalog = Named(parsed.GetValue(_catalog), SettingsReader.Catalog);
        var rules = Named(parsed.GetValue(_rules), SettingsReader.RuleSet);
        var joints = (parsed.GetValue(_joints) ?? []).Select(GivenJoint.Parse).ToList();
        var faults = new[]
        {
            catalog?.Fault, rules?.Fault, MaxShift(parsed, out var maxShift), Date(parsed, out var date), Formats(parsed, out var formats),
            joints.Select(joint => joint.Fault).FirstOrDefault(fault => fault is not null),
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
            Openings = Enum.Parse<OpeningPolicy>(parsed.GetRequiredValue(_openings), ignoreCase: true),
            MaxShift = maxShift,
            Selection = Selection(parsed),
            MovementJoints = [.. joints.Select(joint => joint.Value).OfType<GivenJoint>()],
            Formats = formats,
            Date = date,
            FailOn = Enum.TryParse<Severity>(parsed.GetRequiredValue(_failOn), ignoreCase: true, out var failOn) ? failOn : null,
            Json = parsed.GetValue(_json),
        };
    }

    private static Option<string> Choice(string name, string about, string standard, params string[] choices)
    {
        var option = new Option<string>(name)
        {
            HelpName = string.Join('|', choices),
            Description = about,
            DefaultValueFactory = _ => standard,
        };
        option.CompletionSources.Add(choices);
        option.Validators.Add(given =>
        {
            if (given.Tokens is [{ Value: var value }] && !choices.Contains(value, StringComparer.OrdinalIgnoreCase))
            {
                given.AddError(Messages.UnknownChoice(name, value, choices));
            }
        });
        return option;
    }

    private static Outcome<T>? Named<T>(string? nameOrFile, Func<string, Outcome<T>> load)
        where T : class => nameOrFile is null ? null : load(nameOrFile);

    private WallSelection Selection(ParseResult parsed) => new()
    {
        Walls = Enum.Parse<WallChoice>(parsed.GetRequiredValue(_walls), ignoreCase: true),
        Width = Enum.Parse<WidthMatch>(parsed.GetRequiredValue(_width), ignoreCase: true),
        Only = [.. parsed.GetValue(_only) ?? []],
        Exclude = [.. parsed.GetValue(_exclude) ?? []],
        Storeys = [.. parsed.GetValue(_storey) ?? []],
    };

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

    private Fault? Date(ParseResult parsed, out string? date)
    {
        date = parsed.GetValue(_date);
        return date is null || DateTime.TryParseExact(date, _isoDates, CultureInfo.InvariantCulture, DateTimeStyles.None, out _)
            ? null
            : Messages.BadDate(date);
    }

    private Fault? Formats(ParseResult parsed, out ImmutableHashSet<string> formats)
    {
        var named = parsed.GetValue(_formats)?.Split(',', StringSplitOptions.TrimEntries) ?? [.. _knownFormats];
        formats = named.ToImmutableHashSet(StringComparer.OrdinalIgnoreCase);
        return named.FirstOrDefault(name => !_knownFormats.Contains(name, StringComparer.OrdinalIgnoreCase)) is { } unknown
            ? Messages.UnknownFormat(unknown, _knownFormats)
            : null;
    }
}
