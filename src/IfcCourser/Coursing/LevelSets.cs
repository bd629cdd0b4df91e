using System.Collections.Immutable;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>
/// Sets of walls that share course lines: walls whose first courses can all stay whole, whole courses apart and within the
/// play of the bed; and sets of which the smaller one's first courses are cut so that they suit the other's lines.
/// </summary>
internal sealed class LevelSets
{
    private readonly IReadOnlyList<WallHeights> _walls;
    private readonly LayoutRules _rules;
    private readonly FirstCourses _firstCourses;
    private readonly DisjointSets _sets;

    /// <summary>Of each set, by its root: where its walls stand.</summary>
    private readonly ImmutableArray<(Length Base, LengthRange Bed, int Walls)>[] _feet;

    public LevelSets(IReadOnlyList<WallHeights> walls, LayoutRules rules)
    {
        _walls = walls;
        _rules = rules;
        _firstCourses = new FirstCourses(rules);
        _sets = new DisjointSets(walls.Count);
        _feet = [.. walls.Select(wall => _firstCourses.Feet([wall]))];
    }

    /// <summary>Whether both walls are in one set.</summary>
    public bool Share(int a, int b) => _sets.Root(a) == _sets.Root(b);

    /// <summary>The sets, by their first walls; each lists its walls, rising.</summary>
    public IEnumerable<ImmutableArray<int>> All() => Enumerable.Range(0, _walls.Count)
        .GroupBy(_sets.Root)
        .OrderBy(set => set.Key)
        .Select(set => set.ToImmutableArray());

    /// <summary>Joins the sets of two walls where no further first course must be cut for it.</summary>
    public void JoinWhole(int a, int b) => Join(a, b, _ => 0);

    /// <summary>Joins the sets of two walls where no more first courses must be cut for it than the smaller set has.</summary>
    public void JoinByCutting(int a, int b) => Join(a, b, smaller => smaller);

    /// <summary>The steps between two bases nearest to theirs, lower and higher, that lines would suit: whole courses, another unit's height, a rip.</summary>
    public (Length Lower, Length Higher) StepsThatWork(int a, int b)
    {
        var step = Length.Abs(_walls[a].Base - _walls[b].Base);
        var (catalog, play) = (_rules.Catalog, _rules.Catalog.LevellingBed.Max - _rules.Catalog.LevellingBed.Min);
        var whole = step.FloorTo(catalog.CoursePitch);
        var ranges = catalog.OtherHeights
            .Select(height => catalog.UnitHeight - height)
            .Append(Length.Zero)
            .Select(part => (From: part - play, To: part + play))
            .Concat(CourseFit.LeastRip(catalog) is { } rip ? [(Length.Zero, catalog.UnitHeight - rip)] : [])
            .SelectMany(range => new[] { -1, 0, 1 }.Select(courses => (From: whole + (catalog.CoursePitch * courses) + range.From, To: whole + (catalog.CoursePitch * courses) + range.To)))
            .ToList();
        return (
            ranges.Where(range => range.To >= Length.Zero && range.To < step).Select(range => range.To).DefaultIfEmpty(Length.Zero).Max(),
            ranges.Where(range => range.From > step).Min(range => range.From));
    }

    private void Join(int a, int b, Func<int, int> mostCut)
    {
        if (Share(a, b))
        {
            return;
        }

        var (first, second) = (_feet[_sets.Root(a)], _feet[_sets.Root(b)]);
        var both = FirstCourses.Together(first.Concat(second));
        var most = mostCut(Math.Min(first.Sum(foot => foot.Walls), second.Sum(foot => foot.Walls)));
        if (_firstCourses.FewestCut(both) <= _firstCourses.FewestCut(first) + _firstCourses.FewestCut(second) + most)
        {
            _sets.Unite(a, b);
            _feet[_sets.Root(a)] = both;
        }
    }
}
