using System.Collections.Immutable;
using IfcCourser.Coursing;
using IfcCourser.Layouts;

namespace IfcCourser.Runs;

/// <summary>How a wall's bond beams meet the courses of another at a corner.</summary>
/// <param name="Met">Lines of those that go on in a beam of the other wall.</param>
/// <param name="Parted">Lines of those beside which the other wall's courses lie at other heights.</param>
internal sealed record CornerBeams(ImmutableArray<int> Met, ImmutableArray<int> Parted)
{
    /// <param name="wall">A wall.</param>
    /// <param name="other">One that it is bonded with at a corner.</param>
    public static CornerBeams Of(WallLines wall, WallLines other) => new(
        [.. wall.Beams.Select(beam => beam.Line).Where(line => other.Beams.Any(beam => beam.Line == line) && IsLevelWith(line, wall, other))],
        [.. wall.Beams.Select(beam => beam.Line).Where(line => !IsLevelWith(line, wall, other) && StandsBeside(line, wall, other))]);

    private static bool IsLevelWith(int line, WallLines wall, WallLines other) =>
        other.BandOnLine(line) is { } beside && wall.BandOnLine(line) is { } own
        && other.Base + beside.Bottom == wall.Base + own.Bottom && other.Base + beside.Top == wall.Base + own.Top;

    /// <summary>The first course of a wall lies on its bed and is no beam.</summary>
    private static bool StandsBeside(int line, WallLines wall, WallLines other) =>
        wall.BandOnLine(line) is { } own && other.Bands.Any(band => band.Kind != CourseKind.Levelling
            && other.Base + band.Bottom < wall.Base + own.Top && other.Base + band.Top > wall.Base + own.Bottom);
}
