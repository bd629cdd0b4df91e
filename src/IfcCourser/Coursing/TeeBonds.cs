using System.Collections.Immutable;
using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Modules;
using IfcCourser.Rules;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Coursing;

/// <summary>
/// Tees that the rules want bonded: in even courses the abutting wall's units run through the main wall to its far face,
/// where both walls have that course at one height. Where a tee can't be bonded it is tied.
/// </summary>
internal sealed class TeeBonds
{
    private readonly ImmutableArray<WallLines> _walls;
    private readonly ImmutableArray<Junction> _junctions;
    private readonly LayoutRules _rules;
    private readonly ImmutableArray<bool> _isBonded;

    public TeeBonds(ImmutableArray<WallLines> walls, ImmutableArray<Junction> junctions, LayoutRules rules)
    {
        _walls = walls;
        _junctions = junctions;
        _rules = rules;
        _isBonded = [.. Enumerable.Range(0, junctions.Length).Select(j => IsWanted(j) && Obstacle(j) is null)];
    }

    public bool IsBonded(int junction) => _isBonded[junction];

    /// <summary>Of each tee that the rules want bonded and that is tied, why.</summary>
    public ImmutableArray<Finding> Tied =>
    [
        .. Enumerable.Range(0, _junctions.Length).Where(j => IsWanted(j) && IsCoursed(j)).Select(j => (Junction: _junctions[j], Why: Obstacle(j)))
            .Where(tee => tee.Why is not null)
            .Select(tee => new Finding(
                FindingCodes.TeeNotBonded, Messages.TeeNotBonded(Label(tee.Junction.Second), Label(tee.Junction.First), tee.Why!))),
    ];

    /// <summary>Whether the abutting wall's course on a line runs through the main wall.</summary>
    public bool RunsThrough(int junction, int line)
    {
        if (!_isBonded[junction] || line % 2 == 0)
        {
            return false;
        }

        var tee = _junctions[junction];
        var (host, abutting) = (_walls[tee.First], _walls[tee.Second]);
        return host.BandOnLine(line) is { } over && abutting.BandOnLine(line) is { } through
            && host.Base + over.Bottom == abutting.Base + through.Bottom
            && host.Base + over.Top == abutting.Base + through.Top
            && IsWhole(host, over, Beside(tee.FirstPlace))
            && IsWhole(abutting, through, EndOf(tee));
    }

    /// <summary>How far a wall's course runs on beyond its start and its end.</summary>
    /// <param name="wall">The wall's index.</param>
    /// <param name="junctions">Indices of its junctions.</param>
    /// <param name="line">The course's line.</param>
    public (Length Start, Length End) Beyond(int wall, ImmutableArray<int> junctions, int line)
    {
        Length At(JunctionSide side) => junctions
            .Where(j => _junctions[j].Second == wall && _junctions[j].SecondPlace.Side == side && RunsThrough(j, line))
            .Select(j => _walls[_junctions[j].First].Wall.Frame.Thickness)
            .DefaultIfEmpty(Length.Zero)
            .Max();
        return (At(JunctionSide.Start), At(JunctionSide.End));
    }

    private bool IsWanted(int junction) => _rules.Set.Tees == TeeBuild.Bonded && _junctions[junction].Kind == JunctionKind.Tee;

    private bool IsCoursed(int junction) => !_walls[_junctions[junction].First].Bands.IsEmpty && !_walls[_junctions[junction].Second].Bands.IsEmpty;

    private string Label(int wall) => _walls[wall].Wall.Identity.Label;

    private string? Obstacle(int junction)
    {
        var tee = _junctions[junction];
        var (host, abutting) = (_walls[tee.First], _walls[tee.Second]);
        return host.Group != abutting.Group ? Messages.TeeOnOtherLines
            : !tee.IsSquare || host.Wall.Frame.Curve is not null || abutting.Wall.Frame.Curve is not null ? Messages.TeeNotSquare
            : host.Wall.Frame.Thickness - (_rules.Catalog.HeadJoint.Nominal * 2) < _rules.MinPiece ? Messages.TeeInThinWall
            : IsNearOpening(host.Wall, tee.FirstPlace) ? Messages.TeeNearOpening
            : IsNearAnother(junction) ? Messages.TeeNearAnother
            : null;
    }

    /// <summary>Whether an opening, where it may be moved to, or its lintel comes near.</summary>
    private bool IsNearOpening(Wall host, JunctionPlace place) => host.Openings.Where(OpeningPlacement.IsCoursedAround).Any(opening =>
    {
        var design = OpeningPlacement.Design(opening, _rules.Set.Allowances);
        var bearing = LintelChoice.BearingOf(LintelChoice.Serving(design.Width, host.Frame.Thickness, _rules).FirstOrDefault(), _rules);
        var clear = bearing + _rules.Catalog.HeadJoint.Nominal + _rules.MinPiece + _rules.MaxShift;
        return design.Left < place.To + clear && design.Right > place.From - clear;
    });

    /// <summary>Whether the main wall meets another wall, or ends, less than a piece beside the tee; of two tees the first is bonded.</summary>
    private bool IsNearAnother(int junction)
    {
        var (host, place) = (_junctions[junction].First, _junctions[junction].FirstPlace);
        var clear = _rules.MinPiece + _rules.Catalog.HeadJoint.Nominal;
        return place.From < clear || place.To > _walls[host].Wall.Frame.Length - clear
            || Enumerable.Range(0, _junctions.Length)
                .Where(j => j != junction && (_junctions[j].First == host || _junctions[j].Second == host))
                .Where(j => _junctions[j].Kind != JunctionKind.Tee || j < junction || _junctions[j].Second == host)
                .Select(j => JunctionPlan.PlaceOn(_junctions[j], host))
                .Any(other => other.From < place.To + clear && other.To > place.From - clear);
    }

    private static bool IsWhole(WallLines wall, CourseBand band, Interval run) =>
        wall.TopWithin(band, run) == wall.Base + band.Top
        && wall.Outline.Within(new ElevationRect(run.From, run.To, band.Bottom, band.Top)) is [{ Points: null } part]
        && part.Box.Width == run.Size && part.Box.Height == band.Height;

    private Interval Beside(JunctionPlace place)
    {
        var clear = _rules.MinPiece + _rules.Catalog.HeadJoint.Nominal;
        return new Interval(place.From - clear, place.To + clear);
    }

    /// <summary>A piece's length at the abutting wall's end.</summary>
    private Interval EndOf(Junction tee)
    {
        var (least, length) = (_rules.MinPiece, _walls[tee.Second].Wall.Frame.Length);
        return tee.SecondPlace.Side == JunctionSide.Start ? new Interval(Length.Zero, least) : new Interval(length - least, length);
    }
}
