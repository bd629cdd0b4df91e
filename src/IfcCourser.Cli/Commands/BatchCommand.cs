using System.Collections.Immutable;
using System.CommandLine;
using IfcCourser.Cli.Batch;
using IfcCourser.Findings;

namespace IfcCourser.Cli.Commands;

/// <summary><c>batch MANIFEST|FOLDER</c>: many lots.</summary>
internal static class BatchCommand
{
    private const string Out = "--out";

    private static readonly Option<string?> _shard = new("--shard") { HelpName = "K/N", Description = Messages.OptionShard };

    private static readonly Option<bool> _collect = new("--collect") { Description = Messages.OptionCollect };

    private static readonly Option<bool> _timings = new("--timings") { Description = Messages.OptionTimings };

    private static readonly Option<bool> _watch = new("--watch") { Description = Messages.OptionWatch };

    /// <summary>They say where results go and what is told of them, not what the results are.</summary>
    private static readonly ImmutableHashSet<string> _idle = [Out, "--fail-on", "--json", _shard.Name, _collect.Name, _timings.Name, _watch.Name, "--help"];

    public static Command Create(Func<ParseResult, Terminal> terminal)
    {
        var options = new RunOptions(
            LayoutFiles.Formats, $"{Messages.OptionFormats(LayoutFiles.Formats)} {Messages.SheetsComeTogether}", failOn: "none",
            new Argument<string>("MANIFEST|FOLDER") { Description = Messages.ArgumentManifest });
        var command = new Command("batch", Messages.AboutBatch);
        options.AddTo(command);
        command.Add(_shard);
        command.Add(_collect);
        command.Add(_timings);
        command.Add(_watch);
        command.SetAction(parsed =>
        {
            var told = terminal(parsed);
            var settings = Read(options, command, parsed);
            return (int)(!settings.IsOk ? told.End(settings.Fault, ExitStatus.Usage)
                : parsed.GetValue(_watch) ? new BatchWatch(() => Read(options, command, parsed), told).Run(told.Stop)
                : new BatchRun(settings.Value, told).Run());
        });
        return command;
    }

    private static Outcome<BatchSettings> Read(RunOptions options, Command command, ParseResult parsed)
    {
        var run = options.Read(parsed);
        if (!run.IsOk)
        {
            return run.Fault;
        }

        var shard = parsed.GetValue(_shard) is { } text ? Shard.Parse(text) : Shard.Whole;
        if (!shard.IsOk)
        {
            return shard.Fault;
        }

        var collect = parsed.GetValue(_collect);
        return collect && parsed.GetValue(_watch) ? Messages.WatchAndCollect()
            : collect && shard.Value != Shard.Whole
            ? Messages.ShardAndCollect()
            : new BatchSettings
            {
                Manifest = run.Value.Model,
                Out = run.Value.Out ?? $"{Path.GetFileNameWithoutExtension(Path.TrimEndingDirectorySeparator(run.Value.Model))}-batch",
                Run = run.Value,
                OfJob = file => options.Read(parsed, file),
                Files = [.. command.Options.SelectMany(option => parsed.GetResult(option)?.Tokens ?? []).Select(token => token.Value).Where(File.Exists)],
                Options = [.. command.Options.Where(option => !_idle.Contains(option.Name)).Select(option => Given(option, parsed)).OfType<string>()],
                Shard = shard.Value,
                Collect = collect,
                Timings = parsed.GetValue(_timings),
            };
    }

    /// <summary>An option as it was given; null where it was not.</summary>
    private static string? Given(Option option, ParseResult parsed) => parsed.GetResult(option) is { Implicit: false } result
        ? string.Join(' ', result.Tokens.Select(token => option.Name == RunOptions.JobOption ? LotKey.OfJob(token.Value) : LotKey.Content(token.Value)).Prepend(option.Name))
        : null;
}
