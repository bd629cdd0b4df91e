using System.Collections.Immutable;
using IfcCourser.Catalogs;
using IfcCourser.Findings;
using IfcCourser.Rules;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Cli.Commands;

/// <summary>What a run was asked for, checked.</summary>
internal sealed record RunSettings
{
    /// <summary>Path of the model as given.</summary>
    public required string Model { get; init; }

    /// <summary>Folder of the results; null where none are written.</summary>
    public required string? Out { get; init; }

    /// <summary>The catalog named; null where the model decides.</summary>
    public required Catalog? Catalog { get; init; }

    /// <summary>The rule set named; null where the catalog decides.</summary>
    public required RuleSet? Rules { get; init; }

    public required OpeningPolicy Openings { get; init; }

    /// <summary>Null where the rules decide.</summary>
    public required Length? MaxShift { get; init; }

    public required WallSelection Selection { get; init; }

    public required ImmutableArray<GivenJoint> MovementJoints { get; init; }

    /// <summary>Case does not count.</summary>
    public required ImmutableHashSet<string> Formats { get; init; }

    /// <summary>ISO 8601 date, perhaps with a time; null for the model's own time stamp.</summary>
    public required string? Date { get; init; }

    /// <summary>Findings at least this grave give exit status 1; null for none.</summary>
    public required Severity? FailOn { get; init; }

    public required bool Json { get; init; }

    /// <summary>Whether the model is also written with blocks and bars as parts.</summary>
    public bool IfcParts { get; init; }

    /// <summary>Whether the model is also written with its openings moved.</summary>
    public bool ApplyOpenings { get; init; }
}
