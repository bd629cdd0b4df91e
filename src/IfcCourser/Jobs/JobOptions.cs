using System.Collections.Immutable;
using IfcCourser.Findings;
using IfcCourser.Rules;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Jobs;

/// <summary>Options of a run; null where the file says nothing.</summary>
public sealed record JobOptions
{
    /// <summary>Built-in name or file.</summary>
    public string? Catalog { get; init; }

    /// <summary>Built-in name or file.</summary>
    public string? Rules { get; init; }

    public OpeningPolicy? Openings { get; init; }

    public Length? MaxShift { get; init; }

    public WallChoice? Walls { get; init; }

    public WidthMatch? Width { get; init; }

    public ImmutableArray<string>? Only { get; init; }

    public ImmutableArray<string>? Exclude { get; init; }

    public ImmutableArray<string>? Storeys { get; init; }

    public ImmutableArray<string>? Formats { get; init; }

    /// <summary>Name of a paper size.</summary>
    public string? Sheet { get; init; }

    public bool? DxfPerSheet { get; init; }

    /// <summary>error, warning, note or none.</summary>
    public string? FailOn { get; init; }

    public static IReadOnlyList<string> FailOnNames { get; } = [.. Enum.GetNames<Severity>().Select(name => name.ToLowerInvariant()).Reverse(), "none"];
}
