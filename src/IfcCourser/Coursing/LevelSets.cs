using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>
/// Sets of walls whose bases some course lines suit together: whole courses apart, within the play of the bed, or with a
/// first course of another height or a rip where a base differs by more.
/// </summary>
internal sealed class LevelSets
{
    private readonly IReadOnlyList<WallHeights> _walls;
    private readonly LayoutRules _rules;
    private readonly CourseFit _fit;
    private readonly DisjointSets _sets;

    /// <summary>Of each set, by its root: the different bases of its walls, whole courses left out, and their beds.</summary>
    private readonly List<(Length Base, LengthRange Bed)>[] _feet;

    public LevelSets(IReadOnlyList<WallHeights> walls, LayoutRules rules)
    {
        _walls = walls;
        _rules = rules;
        _fit = new CourseFit(rules);
        _sets = new DisjointSets(walls.Count);
        _feet = [.. walls.Select(wall => new List<(Length Base, LengthRange Bed)> { (wall.Base.Modulo(rules.Catalog.CoursePitch), wall.Bed) })];
    }

    public int Root(int wall) => _sets.Root(wall);

    /// <summary>Joins the sets of two walls where some lines suit all their bases.</summary>
    /// <returns>Whether they are in one set.</returns>
    public bool Join(int a, int b)
    {
        var (rootA, rootB) = (Root(a), Root(b));
        if (rootA == rootB)
        {
            return true;
        }

        var feet = _feet[rootA].Union(_feet[rootB]).ToList();
        if (feet.Count > 1 && !feet.SelectMany(StartsOver).Any(start => SuitAll(start, feet)))
        {
            return false;
        }

        _sets.Unite(rootA, rootB);
        _feet[Root(a)] = feet;
        return true;
    }

    /// <summary>The steps between two bases nearest to theirs, lower and higher, that lines would suit.</summary>
    public (Length Lower, Length Higher) StepsThatWork(int a, int b)
    {
        var step = Length.Abs(_walls[a].Base - _walls[b].Base);
        var (pitch, play) = (_rules.Catalog.CoursePitch, _rules.Catalog.LevellingBed.Max - _rules.Catalog.LevellingBed.Min);
        var whole = step.FloorTo(pitch);
        var steps = _rules.Catalog.OtherHeights
            .Select(height => _rules.Catalog.UnitHeight - height)
            .Append(Length.Zero)
            .SelectMany(part => new[] { whole - pitch + part, whole + part, whole + pitch + part })
            .ToList();
        return (
            steps.Select(middle => middle + play).Where(edge => edge >= Length.Zero && edge < step).DefaultIfEmpty(Length.Zero).Max(),
            steps.Select(middle => middle - play).Where(edge => edge > step).Min());
    }

    private bool SuitAll(Length start, List<(Length Base, LengthRange Bed)> feet)
    {
        var lines = new CourseLines(start, _rules.Catalog);
        return feet.All(foot => _fit.Feet(foot.Base, foot.Bed, lines).Any());
    }

    /// <summary>Lines at which a base begins or ceases to allow a first course.</summary>
    private IEnumerable<Length> StartsOver((Length Base, LengthRange Bed) foot)
    {
        var joint = _rules.Catalog.BedJoint.Nominal;
        return _rules.Catalog.OtherHeights
            .Prepend(_rules.Catalog.UnitHeight)
            .SelectMany(height => new[] { foot.Bed.Min, foot.Bed.Nominal, foot.Bed.Max }.Select(bed => foot.Base + bed + height + joint))
            .Concat(CourseFit.LeastRip(_rules.Catalog) is { } rip ? [foot.Base + foot.Bed.Nominal + rip + joint] : []);
    }
}
