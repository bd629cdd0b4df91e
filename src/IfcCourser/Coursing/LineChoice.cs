using IfcCourser.Catalogs;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>
/// Chooses the course lines of a group: of all lines, plain or with one make-up course, those whose courses cost least by
/// the rule set's aims. Exact: as the lines rise, each aim's amount changes steadily between the heights tried and is no
/// more at them than beside them, so that the least stands at one of them, or where rips lie on the saw's grid beside one.
/// </summary>
internal sealed class LineChoice(LayoutRules rules)
{
    private readonly Catalog _catalog = rules.Catalog;
    private readonly CourseFit _fit = new(rules);

    /// <param name="walls">The walls that share the lines; some lines must suit all their bases.</param>
    /// <returns>The best lines, numbered from the group's lowest first course, and each wall's courses on them.</returns>
    public (CourseLines Lines, List<CourseStack?> Stacks) Choose(IReadOnlyList<WallHeights> walls)
    {
        var counted = walls.GroupBy(wall => wall).Select(group => (Heights: group.Key, Count: group.Count())).ToList();
        var (best, least) = ((CourseLines?)null, default(HeightCost));
        foreach (var lines in Candidates([.. counted.Select(wall => wall.Heights)]))
        {
            if (CostOn(lines, counted, best is null ? null : least) is { } cost)
            {
                (best, least) = (lines, cost);
            }
        }

        var chosen = best ?? throw new InvalidOperationException("No course lines suit the bases of a group that was formed to share them.");
        var first = walls.Min(wall => _fit.Best(wall, chosen)?.Stack?.First) ?? 0;
        var counting = chosen.CountedFrom(first);
        return (counting, [.. walls.Select(wall => _fit.Best(wall, counting)?.Stack)]);
    }

    /// <summary>What the walls' courses cost on given lines; null where a base does not suit them or it is no less than the least so far.</summary>
    private HeightCost? CostOn(CourseLines lines, List<(WallHeights Heights, int Count)> walls, HeightCost? least)
    {
        var sum = default(HeightCost);
        foreach (var (wall, count) in walls)
        {
            if (_fit.Best(wall, lines) is not { } fit)
            {
                return null;
            }

            sum += fit.Cost * count;
            if (least is { } known && !sum.IsLessThan(known, rules.Set.HeightAims))
            {
                return null;
            }
        }

        return sum;
    }

    /// <summary>Lines to try, the first counts where equal: plain ones first, near the nominal bed first, a high make-up course first.</summary>
    private IEnumerable<CourseLines> Candidates(List<WallHeights> walls)
    {
        var lowest = walls.MinBy(wall => wall.Base)!;
        var nominal = lowest.Base + lowest.Bed.Nominal;
        var half = _catalog.CoursePitch / 2;
        var places = walls.SelectMany(Places).ToHashSet();
        var grid = _catalog.CutGrid;
        var phases = walls.Select(wall => (wall.Base + wall.Bed.Nominal).Modulo(grid)).Distinct().ToList();
        IEnumerable<Length> WithSawn(Length place) => phases
            .SelectMany(phase => new[] { (place - phase).FloorTo(grid) + phase, (place - phase).CeilingTo(grid) + phase })
            .Prepend(place);
        List<Length> Starts(IEnumerable<Length> from) =>
        [
            .. from.SelectMany(WithSawn).Select(place => nominal - half + (place - nominal + half).Modulo(_catalog.CoursePitch))
                .Distinct().OrderBy(start => Length.Abs(start - nominal)).ThenBy(start => start),
        ];

        foreach (var start in Starts(places))
        {
            yield return new CourseLines(start, _catalog);
        }

        var top = walls.Max(wall => wall.Top);
        foreach (var height in _catalog.OtherHeights)
        {
            // What must lie on a line above the make-up course is reached from a start as much higher as that course is lower.
            foreach (var start in Starts(places.Concat(places.Select(place => place + _catalog.UnitHeight - height))))
            {
                var plain = new CourseLines(start, _catalog);
                for (var line = plain.LineBelow(top); plain.Top(line) > lowest.Base; line--)
                {
                    yield return plain with { MakeUp = new MakeUpCourse(line, height) };
                }
            }
        }

        foreach (var wall in walls.Where(wall => wall.HasTopBeam && wall.MeetsHigher && CourseFit.LeastRip(_catalog) is not null))
        {
            foreach (var plain in Starts(places).Select(start => new CourseLines(start, _catalog)))
            {
                if (RipsUnderBeam(plain, wall.Top) is { } rips)
                {
                    yield return plain with { MakeUp = rips };
                }
            }
        }
    }

    /// <summary>One or two rips that go round all walls of the group so that a whole course ends at a wall's top; null where none are needed or fit.</summary>
    private MakeUpCourse? RipsUnderBeam(CourseLines plain, Length top)
    {
        var last = plain.LineBelow(top);
        var rest = (top - plain.Bottom(last)).FloorTo(_catalog.CutGrid);
        if (rest >= _catalog.UnitHeight)
        {
            return null;
        }

        var half = ((rest + _catalog.UnitHeight) / 2).FloorTo(_catalog.CutGrid);
        return rest >= CourseFit.LeastRip(_catalog) ? new MakeUpCourse(last - 1, rest)
            : half >= CourseFit.LeastRip(_catalog) ? new MakeUpCourse(last - 2, half, 2)
            : null;
    }

    /// <summary>Heights at which a line changes what a wall's courses cost.</summary>
    private IEnumerable<Length> Places(WallHeights wall)
    {
        var joint = _catalog.BedJoint.Nominal;
        foreach (var height in _catalog.OtherHeights.Prepend(_catalog.UnitHeight))
        {
            yield return wall.Base + wall.Bed.Min + height + joint;
            yield return wall.Base + wall.Bed.Nominal + height + joint;
            yield return wall.Base + wall.Bed.Max + height + joint;
        }

        var tops = _catalog.OtherHeights.Concat(CourseFit.Pairs(_catalog).Select(pair => pair.Lower + joint + pair.Upper)).ToList();
        foreach (var height in tops.Prepend(_catalog.UnitHeight))
        {
            yield return wall.Top - height;
            yield return wall.Top - CourseFit.PlainJoint(_catalog) - height;
            yield return wall.Top - rules.Set.MortarRest - height;
        }

        if (CourseFit.LeastRip(_catalog) is { } rip)
        {
            yield return wall.Base + wall.Bed.Nominal + rip + joint;
            yield return wall.Top - rip;
            yield return wall.Top - joint - (rip * 2);
        }

        var heads = wall.Heads.SelectMany(head => new[] { head, head + rules.MaxShift }).ToList();
        foreach (var line in heads.Concat(wall.Sills.Select(sill => sill + joint)))
        {
            yield return line;
        }

        // A head may lie under the beam, which stands on what ends the courses.
        foreach (var line in wall.HasTopBeam ? heads : [])
        {
            foreach (var height in tops)
            {
                yield return line - joint - height;
            }
        }
    }
}
