using System.Collections.Immutable;
using IfcCourser.Catalogs;
using IfcCourser.Rules;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Coursing;

/// <summary>
/// Sets of touching walls that share course lines. Two touching walls share them where the levelling bed can take up the
/// difference of their bases, whole courses apart; else each keeps its own lines and the junction is butted.
/// </summary>
internal static class LevelGroups
{
    public static ImmutableArray<LevelGroup> Of(WallModel model, LayoutRules rules)
    {
        var sets = new Sets(model.Walls, rules.Catalog);
        foreach (var junction in model.Junctions)
        {
            sets.Join(junction.First, junction.Second);
        }

        return
        [
            .. Enumerable.Range(0, model.Walls.Length)
                .GroupBy(sets.Root)
                .OrderBy(group => group.Min())
                .Select((group, i) => new LevelGroup(
                    FormattableString.Invariant($"G{i + 1}"), [.. group.Order()], sets.FirstLine(group.Key, [.. group.Order()], rules))),
        ];
    }

    private sealed class Sets
    {
        private readonly ImmutableArray<Wall> _walls;
        private readonly Catalog _catalog;
        private readonly int[] _parent;

        /// <summary>Of each set, by its root: its walls' bases above the root wall's, reduced by whole courses: least and largest.</summary>
        private readonly (Length Low, Length High)[] _steps;

        /// <summary>Of each wall: its base above its parent's, reduced by whole courses.</summary>
        private readonly Length[] _aboveParent;

        public Sets(ImmutableArray<Wall> walls, Catalog catalog)
        {
            _walls = walls;
            _catalog = catalog;
            _parent = [.. Enumerable.Range(0, walls.Length)];
            _steps = new (Length, Length)[walls.Length];
            _aboveParent = new Length[walls.Length];
        }

        private Length Play => _catalog.LevellingBed.Max - _catalog.LevellingBed.Min;

        public int Root(int wall)
        {
            while (_parent[wall] != wall)
            {
                wall = _parent[wall];
            }

            return wall;
        }

        public void Join(int a, int b)
        {
            var (rootA, rootB) = (Root(a), Root(b));
            if (rootA == rootB)
            {
                return;
            }

            var (low, high) = (Math.Min(rootA, rootB), Math.Max(rootA, rootB));
            var step = Reduced(Base(high) - Base(low));
            var least = Length.Min(_steps[low].Low, _steps[high].Low + step);
            var largest = Length.Max(_steps[low].High, _steps[high].High + step);
            if (largest - least <= Play)
            {
                _parent[high] = low;
                _aboveParent[high] = step;
                _steps[low] = (least, largest);
            }
        }

        /// <summary>The line that keeps all beds in their limits, leaves the fewest ripped courses, then the heads of openings least
        /// below course lines, and is nearest the nominal bed. Half of the bed's play is kept for the slab.
        /// </summary>
        public Length FirstLine(int root, ImmutableArray<int> walls, LayoutRules rules)
        {
            var bed = _catalog.LevellingBed;
            var (least, largest) = (bed.Min + _steps[root].High, bed.Max + _steps[root].Low);
            var nominal = Length.Min(Length.Max(bed.Nominal, least), largest);
            var kept = new LengthRange(
                Length.Max(least, (bed.Min + bed.Nominal) / 2), nominal, Length.Min(largest, (bed.Nominal + bed.Max) / 2));
            var candidates = walls
                .SelectMany(wall => CourseLines.BedsUnderHeads(_walls[wall], rules)
                    .Append(CourseLines.BedWithoutRip(_walls[wall], rules))
                    .Select(bed => bed + StepOf(wall)))
                .Where(kept.Contains)
                .Append(nominal)
                .Distinct();
            var best = candidates
                .OrderBy(candidate => walls.Sum(wall => CourseLines.CostOfTop(_walls[wall], rules, candidate - StepOf(wall))))
                .ThenBy(candidate => walls.Sum(wall => CourseLines.HeadsBelowLines(_walls[wall], rules, candidate - StepOf(wall)).Nanometres))
                .ThenBy(candidate => Length.Abs(candidate - nominal))
                .ThenBy(candidate => candidate)
                .First();
            return Base(root) + best;
        }

        private Length StepOf(int wall)
        {
            var step = Length.Zero;
            for (; _parent[wall] != wall; wall = _parent[wall])
            {
                step += _aboveParent[wall];
            }

            return step;
        }

        private Length Base(int wall) => Length.FromModelMm(_walls[wall].Frame.Origin.Z);

        private Length Reduced(Length difference)
        {
            var pitch = _catalog.CoursePitch;
            var rest = difference.Modulo(pitch);
            return rest > pitch / 2 ? rest - pitch : rest;
        }
    }
}
