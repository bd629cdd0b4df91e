using System.Collections.Immutable;
using FixtureMaker.Design;

namespace FixtureMaker.Cases.Junctions;

/// <summary>Two or three walls each, by every way in which walls meet.</summary>
internal static class JunctionCases
{
    public static ImmutableArray<House> All => [.. Corners.All, .. Meetings.All];
}
