using System.Collections.Immutable;
using System.IO.Enumeration;

namespace IfcCourser.Walls;

/// <summary>The walls that a run is asked for.</summary>
public sealed record WallSelection
{
    public WallChoice Walls { get; init; } = WallChoice.Masonry;

    public WidthMatch Width { get; init; } = WidthMatch.Exact;

    /// <summary>GlobalIds, or names with * and ?; empty: all.</summary>
    public ImmutableArray<string> Only { get; init; } = [];

    /// <summary>GlobalIds, or names with * and ?.</summary>
    public ImmutableArray<string> Exclude { get; init; } = [];

    /// <summary>Names of storeys, with * and ?; empty: all.</summary>
    public ImmutableArray<string> Storeys { get; init; } = [];

    public bool Includes(WallIdentity wall) =>
        (Only.IsEmpty || Only.Any(pattern => Names(pattern, wall)))
        && !Exclude.Any(pattern => Names(pattern, wall))
        && (Storeys.IsEmpty || (wall.Storey is { } storey && Storeys.Any(pattern => Matches(pattern, storey))));

    // GlobalIds differ by case; names are compared as people write them.
    private static bool Names(string pattern, WallIdentity wall) =>
        string.Equals(pattern, wall.GlobalId, StringComparison.Ordinal) || (wall.Name is { } name && Matches(pattern, name));

    private static bool Matches(string pattern, string name) => FileSystemName.MatchesSimpleExpression(pattern, name, ignoreCase: true);
}
