using System.Collections.Immutable;
using IfcCourser.Units;

namespace IfcCourser.Findings;

/// <summary>Where in a wall's elevation a finding lies; what is null does not apply.</summary>
public sealed record FindingPlace
{
    public Length? S { get; init; }

    public Length? Z { get; init; }

    /// <summary>Course number, from 1; for a pair of courses the upper one.</summary>
    public int? Course { get; init; }

    public string? Piece { get; init; }

    public string? Core { get; init; }

    /// <summary>GlobalIds of the walls, for findings about several.</summary>
    public ImmutableArray<string> Walls { get; init; } = [];

    /// <summary>GlobalId of the opening.</summary>
    public string? Opening { get; init; }
}
