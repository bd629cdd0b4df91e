using System.Collections.Immutable;
using IfcCourser.Findings;
using IfcCourser.Units;

namespace IfcCourser.Cli.Commands;

/// <summary>What a run of slab was asked for, checked.</summary>
internal sealed record SlabSettings
{
    /// <summary>Path of layout.json as given.</summary>
    public required string Layout { get; init; }

    /// <summary>Path of the readings as given.</summary>
    public required string Readings { get; init; }

    /// <summary>Folder of the results.</summary>
    public required string Out { get; init; }

    /// <summary>Whether --out names the folder, so that a layout.json there may be replaced by the changed one.</summary>
    public required bool MayReplace { get; init; }

    /// <summary>Unit of columns whose header names none.</summary>
    public required string? Units { get; init; }

    /// <summary>Null for the lowest.</summary>
    public required string? Storey { get; init; }

    /// <summary>The bed at most; null where the catalog's limit counts.</summary>
    public required Length? Thickest { get; init; }

    /// <summary>Whether the readings are of the top of the first course.</summary>
    public required bool IsLevelled { get; init; }

    /// <summary>Whether datum and beds are written into a new layout.json and its sheets.</summary>
    public required bool Apply { get; init; }

    /// <summary>Case does not count.</summary>
    public required ImmutableHashSet<string> Formats { get; init; }

    /// <summary>Findings at least this grave give exit status 1; null for none.</summary>
    public required Severity? FailOn { get; init; }

    public required bool Json { get; init; }
}
