using System.Collections.Immutable;
using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Runs;

/// <summary>
/// Where the embeds stand that the user gives for a wall: as given, or moved by as little as keeps them clear of upright bars and of laps in beams; one that stands in
/// no masonry or has no beam is left out and named.
/// </summary>
internal sealed class EmbedPlaces
{
    private static readonly Length _step = Length.FromMm(1);

    private readonly WallLayout _wall;
    private readonly ElevationOutline _outline;
    private readonly UnitSystem _units;
    private readonly List<Embed> _embeds = [];
    private readonly List<Finding> _findings = [];

    private EmbedPlaces(WallLayout wall, UnitSystem units) => (_wall, _outline, _units) = (wall, new ElevationOutline(wall.Outline), units);

    /// <summary>The wall with its embeds.</summary>
    public static WallLayout Fill(WallLayout wall, UnitSystem units)
    {
        var places = new EmbedPlaces(wall, units);
        foreach (var given in wall.Wall.Embeds)
        {
            places.Add(given);
        }

        return wall with { Embeds = [.. places._embeds], Findings = [.. wall.Findings, .. places._findings] };
    }

    private void Add(GivenEmbed given)
    {
        var end = given.Every is null ? given.At : Length.Min(given.To ?? _wall.Frame.Length, _wall.Frame.Length);
        for (var at = given.At; at <= end || at == given.At; at += given.Every ?? (end - at + Length.FromMm(1)))
        {
            Add(given, at);
        }
    }

    private void Add(GivenEmbed given, Length at)
    {
        var beam = _wall.BondBeams.Where(beam => beam.Course is not null && beam.From <= at && beam.To >= at).MaxBy(beam => beam.Top);
        if (given.Height is null && beam is null)
        {
            Note(FindingCodes.EmbedNotPlaced, Messages.EmbedWithoutBeam(given.Kind, at, _units), at, Length.Zero);
            return;
        }

        var z = given.Height ?? ((beam!.Bottom + beam.Top) / 2);
        if (!IsInWall(at, z))
        {
            Note(FindingCodes.EmbedNotPlaced, Messages.EmbedOffMasonry(given.Kind, at, z, _units), at, z);
            return;
        }

        var place = Clear(given, at, z);
        if (place is null)
        {
            Note(FindingCodes.EmbedNearBar, Messages.EmbedNearBar(given.Kind, at, z, given.Clear, _units), at, z);
        }

        _embeds.Add(new Embed(given.Kind, place ?? at, z, given.Note, given.Size));
    }

    /// <summary>The nearest place within the play that is clear; null where there is none.</summary>
    private Length? Clear(GivenEmbed given, Length at, Length z)
    {
        ImmutableArray<Interval> kept =
        [
            .. _wall.Cores.Where(core => core.Bottom <= z && core.Top >= z).Select(core => new Interval(core.At - given.Clear, core.At + given.Clear)),
            .. _wall.CornerCores.Where(core => core.Bottom <= z && core.Top >= z).Select(core => new Interval(core.At - given.Clear, core.At + given.Clear)),
            .. _wall.BondBeams.Where(beam => beam.Bottom <= z && beam.Top >= z).SelectMany(beam => beam.Laps).Select(lap => new Interval(lap.From - given.Clear, lap.To + given.Clear)),
        ];
        return kept.SelectMany(interval => new[] { interval.From, interval.To }).Prepend(at)
            .Where(place => Length.Abs(place - at) <= given.Play && IsInWall(place, z) && !kept.Any(interval => interval.From < place && interval.To > place))
            .OrderBy(place => Length.Abs(place - at)).ThenBy(place => place)
            .Select(place => (Length?)place).FirstOrDefault();
    }

    /// <summary>In masonry or a lintel, in no opening and no movement joint.</summary>
    private bool IsInWall(Length at, Length z) =>
        _outline.AreaWithin(new ElevationRect(at - _step, at + _step, z - _step, z + _step)) > 0
        && !_wall.Openings.Any(opening => opening.Interrupts && opening.Placed.Left < at && opening.Placed.Right > at && opening.Placed.Bottom < z && opening.Placed.Top > z)
        && !_wall.MovementJoints.Any(joint => joint.Rect.Left < at && joint.Rect.Right > at && joint.Bottom <= z && joint.Top >= z);

    private void Note(FindingCode code, string message, Length at, Length z) => _findings.Add(new Finding(code, message, new FindingPlace { S = at, Z = z }));
}
