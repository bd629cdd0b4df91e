using System.Collections.Immutable;
using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Units;

namespace IfcCourser.Walls;

/// <summary>A wall ready to be coursed: its masonry layer's elevation, trimmed or extended at its junctions.</summary>
public sealed record Wall
{
    public required WallIdentity Identity { get; init; }

    public required WallFrame Frame { get; init; }

    public required BodyFacts Body { get; init; }

    /// <summary>Masonry elevation before openings, counter-clockwise from its lower left point, base at z = 0.</summary>
    public required ImmutableArray<ElevationPoint> Outline { get; init; }

    /// <summary>From left to right.</summary>
    public required ImmutableArray<WallOpening> Openings { get; init; }

    public required WallEnd Start { get; init; }

    public required WallEnd End { get; init; }

    /// <summary>Whether the model says that the wall carries load; null where it says nothing.</summary>
    public bool? LoadBearing { get; init; }

    public required ImmutableArray<Finding> Findings { get; init; }

    /// <summary>Where the user gives movement joints, along the run to their middles.</summary>
    public ImmutableArray<Length> MovementJoints { get; init; } = [];

    /// <summary>What the user has built in for others.</summary>
    public ImmutableArray<GivenEmbed> Embeds { get; init; } = [];

    /// <summary>What was taken for its masonry, and why; null for walls of no model.</summary>
    public MasonryChoice? Choice { get; init; }

    /// <summary>Whether the run asks for this wall; others only take their part at the junctions.</summary>
    public bool IsSelected { get; init; } = true;

    /// <summary>Where the left face begins and ends along the run: less than the run where an end is on a slant.</summary>
    public Interval LeftFace => new(Length.Max(-Start.Slant, Length.Zero), Frame.Length - Length.Max(End.Slant, Length.Zero));

    /// <summary>Where the right face begins and ends along the run.</summary>
    public Interval RightFace => new(Length.Max(Start.Slant, Length.Zero), Frame.Length - Length.Max(-End.Slant, Length.Zero));

    /// <summary>The masonry layer in plan, along the right face from the start and back along the left one; curves in chords. Model axes, mm.</summary>
    public ImmutableArray<Vector2> Footprint() =>
    [
        .. Along(RightFace).Select(s => Frame.PointAt(s, Frame.Thickness, Length.Zero).Plan),
        .. Along(LeftFace).Reverse().Select(s => Frame.PointAt(s, Length.Zero, Length.Zero).Plan),
    ];

    private Length[] Along(Interval face)
    {
        const int ChordsOfCurve = 24;
        var chords = Frame.Curve is null ? 1 : ChordsOfCurve;
        return [.. Enumerable.Range(0, chords + 1).Select(i => i == chords ? face.To : face.From + (face.Size / chords * i))];
    }
}
