using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Reinforcement;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Coursing;

/// <summary>A wall with its course bands on its group's lines; without any where it is too low for one.</summary>
/// <param name="Wall">The wall.</param>
/// <param name="Group">Whose course lines it shares.</param>
/// <param name="Outline">Of what is laid of it.</param>
/// <param name="Heights">What decides where its courses lie.</param>
/// <param name="Bands">From the bottom up.</param>
internal sealed record WallLines(Wall Wall, LevelGroup Group, ElevationOutline Outline, WallHeights Heights, ImmutableArray<CourseBand> Bands)
{
    /// <summary>Bond beams formed along its sloping tops, which its outline leaves out.</summary>
    public ImmutableArray<RakedBeam> RakedBeams { get; init; } = [];

    /// <summary>The courses that are bond beams over the wall's length, rising.</summary>
    public ImmutableArray<BeamCourse> Beams { get; init; } = [];

    /// <summary>The wall's base in model heights.</summary>
    public Length Base => Heights.Base;

    public CourseBand? BandOnLine(int line)
    {
        var index = Bands.IsEmpty ? -1 : line - Bands[0].Line;
        return index >= 0 && index < Bands.Length ? Bands[index] : null;
    }

    /// <summary>How high the wall stands within a course, over a stretch of its run, in model heights; null where it does not.</summary>
    public Length? TopWithin(CourseBand band, Interval run)
    {
        var highest = Length.Min(Outline.HighestWithin(run.From, run.To), band.Top);
        return highest > band.Bottom ? Base + highest : null;
    }
}
