using System.Collections.Immutable;
using IfcCourser.Catalogs;
using IfcCourser.Findings;
using IfcCourser.Jobs;
using IfcCourser.Layouts;
using IfcCourser.Output.Bcf;
using IfcCourser.Output.Sheets;
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

    /// <summary>What the job file gives to single walls.</summary>
    public ImmutableArray<JobWall> JobWalls { get; init; } = [];

    /// <summary>How far the saw list may use an offcut.</summary>
    public required OffcutReuse Offcuts { get; init; }

    /// <summary>How the material comes.</summary>
    public required JobPhases Phases { get; init; }

    /// <summary>What the office says of the job.</summary>
    public required JobFacts Job { get; init; }

    /// <summary>The paper that every sheet takes; null where each takes what it needs.</summary>
    public required PaperSize? Paper { get; init; }

    /// <summary>The last issue, after which this one is marked; null for a first issue.</summary>
    public Layout? Since { get; init; }

    /// <summary>A DXF file for each sheet instead of one for a set.</summary>
    public required bool DxfPerSheet { get; init; }

    /// <summary>Case does not count.</summary>
    public required ImmutableHashSet<string> Formats { get; init; }

    /// <summary>ISO 8601 date, perhaps with a time; null for the model's own time stamp.</summary>
    public required string? Date { get; init; }

    /// <summary>Findings at least this grave give exit status 1; null for none.</summary>
    public required Severity? FailOn { get; init; }

    public required bool Json { get; init; }

    /// <summary>Whether the model is also written with blocks and bars as parts.</summary>
    public bool IfcParts { get; init; }

    /// <summary>Which BCF is written; null for that of the file that came back, else 3.0.</summary>
    public required BcfVersion? Bcf { get; init; }

    /// <summary>A BCF file that came back with answers; null where there is none.</summary>
    public required BcfFile? Replies { get; init; }

    /// <summary>Whether the model is also written with its openings moved.</summary>
    public bool ApplyOpenings { get; init; }
}
