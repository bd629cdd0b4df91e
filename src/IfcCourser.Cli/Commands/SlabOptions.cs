using System.Collections.Immutable;
using System.CommandLine;
using IfcCourser.Findings;
using IfcCourser.Units;

namespace IfcCourser.Cli.Commands;

/// <summary>The options of slab, and how they become settings.</summary>
internal sealed class SlabOptions
{
    private readonly Argument<string> _layout = new("LAYOUT.json") { Description = Messages.ArgumentLayout };

    private readonly Option<string> _readings = new("--readings") { HelpName = "CSV", Description = Messages.OptionReadings, Required = true };

    private readonly Option<string?> _out = new("--out", "-o") { HelpName = "DIR", Description = Messages.OptionSlabOut };

    private readonly Option<string?> _units = Choice("--units", Messages.OptionUnits, null, "mm", "cm", "m", "ft", "in");

    private readonly Option<string?> _stage = Choice("--stage", Messages.OptionStage, "slab", "slab", "levelled");

    private readonly Option<string?> _storey = new("--storey") { HelpName = "NAME", Description = Messages.OptionSlabStorey };

    private readonly Option<string?> _thickest = new("--bed-max") { HelpName = "LENGTH", Description = Messages.OptionBedMax };

    private readonly Option<bool> _apply = new("--apply") { Description = Messages.OptionApply };

    private readonly Option<string?> _formats = new Option<string?>("--formats") { HelpName = "LIST", Description = Messages.OptionFormats(SlabFiles.Formats) }.WithFormats(SlabFiles.Formats);

    private readonly Option<string?> _failOn = Choice("--fail-on", Messages.OptionFailOn, "none", "error", "warning", "note", "none");

    private readonly Option<bool> _json = new("--json") { Description = Messages.OptionSlabJson };

    public void AddTo(Command command)
    {
        command.Add(_layout);
        foreach (var option in (Option[])[_readings, _out, _units, _stage, _storey, _thickest, _apply, _formats, _failOn, _json])
        {
            command.Add(option);
        }
    }

    public Outcome<SlabSettings> Read(ParseResult parsed)
    {
        var named = parsed.GetValue(_formats)?.Split(',', StringSplitOptions.TrimEntries) ?? [.. SlabFiles.Formats];
        if (Array.Find(named, name => !SlabFiles.Formats.Contains(name, StringComparer.OrdinalIgnoreCase)) is { } unknown)
        {
            return Messages.UnknownFormat(unknown, SlabFiles.Formats);
        }

        Length? thickest = null;
        if (parsed.GetValue(_thickest) is { } text)
        {
            if (!LengthText.TryParse(text, out var length, out var problem))
            {
                return Messages.BadLength(_thickest.Name, problem);
            }

            thickest = length;
        }

        var layout = parsed.GetRequiredValue(_layout);
        return new SlabSettings
        {
            Layout = layout,
            Readings = parsed.GetRequiredValue(_readings),
            Out = parsed.GetValue(_out) ?? DefaultOut(layout),
            MayReplace = parsed.GetValue(_out) is not null,
            Units = parsed.GetValue(_units),
            Storey = parsed.GetValue(_storey),
            Thickest = thickest,
            IsLevelled = string.Equals(parsed.GetValue(_stage), "levelled", StringComparison.OrdinalIgnoreCase),
            Apply = parsed.GetValue(_apply),
            Formats = named.ToImmutableHashSet(StringComparer.OrdinalIgnoreCase),
            FailOn = Enum.TryParse<Severity>(parsed.GetValue(_failOn), ignoreCase: true, out var failOn) ? failOn : null,
            Json = parsed.GetValue(_json),
        };
    }

    /// <summary>Named after the layout's folder, as that is after its model.</summary>
    private static string DefaultOut(string layout)
    {
        var folder = Path.GetFileName(Path.GetDirectoryName(Path.GetFullPath(layout)));
        return string.IsNullOrEmpty(folder) ? "slab" : folder + "-slab";
    }

    private static Option<string?> Choice(string name, string about, string? standard, params string[] choices)
    {
        var option = new Option<string?>(name) { HelpName = string.Join('|', choices), Description = about, DefaultValueFactory = _ => standard };
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
}
