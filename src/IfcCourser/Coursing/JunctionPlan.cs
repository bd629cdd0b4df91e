using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Rules;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Coursing;

/// <summary>
/// Shares the masonry out where walls meet: at a bonded corner the walls run through in turn, course by course; a corner
/// of two level groups is butted, its first wall running through; a tee's or crossing's second wall stops at the first, or
/// at a bonded tee runs through it in even courses.
/// Where one wall stands higher than the other within a course, or reaches under the other's base, it runs through.
/// </summary>
internal sealed class JunctionPlan
{
    private readonly ImmutableArray<WallLines> _walls;
    private readonly ImmutableArray<Junction> _junctions;
    private readonly ImmutableArray<ImmutableArray<int>> _ofWall;
    private readonly Length _joint;

    public JunctionPlan(ImmutableArray<WallLines> walls, ImmutableArray<Junction> junctions, LayoutRules rules)
    {
        _walls = walls;
        _junctions = junctions;
        _joint = rules.Catalog.HeadJoint.Nominal;
        Tees = new TeeBonds(walls, junctions, rules);
        _ofWall =
        [
            .. Enumerable.Range(0, walls.Length).Select(wall => Enumerable.Range(0, junctions.Length)
                .Where(j => junctions[j].First == wall || junctions[j].Second == wall)
                .ToImmutableArray()),
        ];
    }

    public TeeBonds Tees { get; }

    /// <summary>Whether the walls of a corner run through in turn.</summary>
    public bool IsBondedCorner(Junction junction) =>
        junction.Kind == JunctionKind.Corner && _walls[junction.First].Group == _walls[junction.Second].Group;

    /// <summary>Indices of the junctions that a wall takes part in.</summary>
    public ImmutableArray<int> JunctionsOf(int wall) => _ofWall[wall];

    /// <summary>What the neighbours of a wall take of a course, the joints against them included.</summary>
    public IEnumerable<Interval> TakenFrom(int wall, CourseBand band, ImmutableArray<CornerTurn> turns)
    {
        foreach (var index in _ofWall[wall])
        {
            var junction = _junctions[index];
            var isFirst = junction.First == wall;
            var place = isFirst ? junction.FirstPlace : junction.SecondPlace;
            if (junction.Kind == JunctionKind.Tee && Tees.RunsThrough(index, band.Line) ? isFirst : Yields(junction, isFirst, band, turns[index]))
            {
                var box = _walls[wall].Outline.Box;
                yield return new Interval(
                    (place.Side == JunctionSide.Start ? Length.Min(place.From, box.Left) : place.From) - _joint,
                    (place.Side == JunctionSide.End ? Length.Max(place.To, box.Right) : place.To) + _joint);
            }
        }
    }

    /// <summary>How far a wall's course runs on beyond its start and its end, into walls that it is bonded with.</summary>
    public (Length Start, Length End) Beyond(int wall, CourseBand band) => Tees.Beyond(wall, _ofWall[wall], band.Line);

    /// <summary>The place where a junction lies on a wall.</summary>
    public static JunctionPlace PlaceOn(Junction junction, int wall) =>
        junction.First == wall ? junction.FirstPlace : junction.SecondPlace;

    private bool Yields(Junction junction, bool isFirst, CourseBand band, CornerTurn turn)
    {
        var (mine, other) = isFirst ? (junction.First, junction.Second) : (junction.Second, junction.First);
        var (myPlace, otherPlace) = isFirst ? (junction.FirstPlace, junction.SecondPlace) : (junction.SecondPlace, junction.FirstPlace);
        if (junction.Kind != JunctionKind.Corner)
        {
            return !isFirst && Stands(other, otherPlace, _walls[mine].Base + band.Middle);
        }

        if (!IsBondedCorner(junction))
        {
            return !isFirst && Stands(other, otherPlace, _walls[mine].Base + band.Middle);
        }

        if (_walls[other].BandOnLine(band.Line) is not { } otherBand
            || _walls[other].TopWithin(otherBand, Run(otherPlace)) is not { } otherTop)
        {
            return false;
        }

        var myTop = _walls[mine].TopWithin(band, Run(myPlace));
        if (myTop != otherTop)
        {
            return myTop is null || otherTop > myTop;
        }

        // Over a step of the slab the lower wall's first course would leave a hole under the higher wall's.
        if (_walls[mine].StandsUnder(_walls[other].Base, band, Run(myPlace)) != _walls[other].StandsUnder(_walls[mine].Base, otherBand, Run(otherPlace)))
        {
            return _walls[other].StandsUnder(_walls[mine].Base, otherBand, Run(otherPlace));
        }

        var firstRunsThrough = (turn == CornerTurn.FirstInOdd) == IsOdd(band.Line);
        return firstRunsThrough != isFirst;
    }

    /// <summary>Line 0 carries the first course, number 1.</summary>
    private static bool IsOdd(int line) => line % 2 == 0;

    private bool Stands(int wall, JunctionPlace place, Length height)
    {
        var lines = _walls[wall];
        var z = height - lines.Base;
        var run = Run(place);
        return z >= Length.Zero && z < lines.Outline.HighestWithin(run.From, run.To);
    }

    private static Interval Run(JunctionPlace place) =>
        place.From < place.To ? new Interval(place.From, place.To) : new Interval(place.From - Length.FromMm(1), place.From + Length.FromMm(1));
}
