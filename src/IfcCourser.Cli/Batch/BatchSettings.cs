using System.Collections.Immutable;
using IfcCourser.Cli.Commands;
using IfcCourser.Findings;

namespace IfcCourser.Cli.Batch;

/// <summary>What a batch was asked for, checked.</summary>
internal sealed record BatchSettings
{
    /// <summary>Path of the manifest, or of a folder of models.</summary>
    public required string Manifest { get; init; }

    public required string Out { get; init; }

    /// <summary>What counts for every lot, unless its row says otherwise.</summary>
    public required RunSettings Run { get; init; }

    /// <summary>What counts for the lots of a job file: the command line's options, then the file's.</summary>
    public required Func<string, Outcome<RunSettings>> OfJob { get; init; }

    /// <summary>Files that the options name.</summary>
    public required ImmutableArray<string> Files { get; init; }

    /// <summary>The options that decide results, each with its value.</summary>
    public required ImmutableArray<string> Options { get; init; }

    public required Shard Shard { get; init; }

    /// <summary>Only gather what is there.</summary>
    public required bool Collect { get; init; }

    /// <summary>Write how long each lot took.</summary>
    public required bool Timings { get; init; }
}
