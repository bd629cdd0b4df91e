using System.Collections.Immutable;
using IfcCourser.Rules;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Coursing;

/// <summary>Which junctions a wall takes part in, and how they are built: corners of walls that share course lines are bonded, tees by rule.</summary>
internal sealed class JunctionPlan
{
    private readonly ImmutableArray<WallLines> _walls;
    private readonly ImmutableArray<ImmutableArray<int>> _ofWall;

    public JunctionPlan(ImmutableArray<WallLines> walls, ImmutableArray<Junction> junctions, LayoutRules rules)
    {
        _walls = walls;
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

    /// <summary>How far a wall's course runs on beyond its start and its end, into walls that it is bonded with.</summary>
    public (Length Start, Length End) Beyond(int wall, CourseBand band) => Tees.Beyond(wall, _ofWall[wall], band.Line);

    /// <summary>The place where a junction lies on a wall.</summary>
    public static JunctionPlace PlaceOn(Junction junction, int wall) =>
        junction.First == wall ? junction.FirstPlace : junction.SecondPlace;
}
