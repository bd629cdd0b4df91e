using IfcCourser.Catalogs;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>
/// Fits a wall onto course lines: whole courses, and at its foot and its top, where its height asks for it, a course of
/// another unit height or two, a rip, two rips that share what is too thin for one, or a rest left to mortar.
/// </summary>
internal sealed class CourseFit(LayoutRules rules)
{
    private readonly Catalog _catalog = rules.Catalog;

    /// <summary>How far heads may be lifted to a line.</summary>
    private readonly Length _largestLift = rules.Openings == OpeningPolicy.Keep ? Length.Zero : rules.MaxShift;

    /// <summary>The widest joint at the top that asks for no word: a bed joint, or what the saw's grid leaves.</summary>
    private readonly Length _plainJoint = PlainJoint(rules.Catalog);

    /// <summary>The least rip that can be sawn; null where units are never ripped.</summary>
    private readonly Length? _leastRip = LeastRip(rules.Catalog);

    public static Length PlainJoint(Catalog catalog) => Length.Max(catalog.BedJoint.Nominal, catalog.CutGrid);

    public static Length? LeastRip(Catalog catalog) => catalog.LeastRip?.CeilingTo(catalog.CutGrid);

    /// <summary>Two units of other heights that may end a wall on top of each other.</summary>
    public static IEnumerable<(Length Lower, Length Upper)> Pairs(Catalog catalog) =>
        catalog.OtherHeights.SelectMany(lower => catalog.OtherHeights.Select(upper => (lower, upper)));

    /// <summary>The best courses of a wall on given lines, without any where it is too low for one.</summary>
    /// <returns>Null where no first course fits the lines.</returns>
    public (CourseStack? Stack, HeightCost Cost)? Best(WallHeights wall, CourseLines lines)
    {
        (CourseStack? Stack, HeightCost Cost)? best = null;
        foreach (var foot in Feet(wall.Base, wall.Bed, lines))
        {
            best ??= (null, new HeightCost { Open = (wall.Top - wall.Base).Nanometres });
            foreach (var stack in WithBeam(wall, lines, foot).Concat(Stacks(wall, lines, foot)).Where(stack => IsSound(stack, wall)))
            {
                var cost = Cost(wall, stack);
                if (cost.IsLessThan(best.Value.Cost, rules.Set.HeightAims))
                {
                    best = (stack, cost);
                }
            }
        }

        return best;
    }

    /// <summary>The first courses that a base allows on given lines: whole, of another height, or ripped over a nominal bed.</summary>
    /// <returns>The line, and where the course starts.</returns>
    public IEnumerable<(int Line, Length Bottom, bool IsCut)> Feet(Length wallBase, LengthRange bed, CourseLines lines)
    {
        var below = lines.LineBelow(wallBase + bed.Nominal);
        foreach (var line in new[] { below, below + 1 })
        {
            var top = lines.Top(line);
            foreach (var height in Heights(lines.Height(line)).Where(height => bed.Contains(top - height - wallBase)))
            {
                yield return (line, top - height, false);
            }

            var rip = (top - wallBase - bed.Nominal).FloorTo(_catalog.CutGrid);
            if (rip >= _leastRip && rip < lines.Height(line))
            {
                yield return (line, top - rip, true);
            }
        }
    }

    /// <summary>A course's own height, and lower units.</summary>
    private IEnumerable<Length> Heights(Length own) => _catalog.OtherHeights.Where(height => height < own).Prepend(own);

    /// <summary>What a wall lower by a course may have, and a bond beam on top of it: so rips lie under the beam.</summary>
    private IEnumerable<CourseStack> WithBeam(WallHeights wall, CourseLines lines, (int Line, Length Bottom, bool IsCut) foot) => wall.HasTopBeam
        ? Stacks(wall with { Top = wall.Top - _catalog.CoursePitch }, lines, foot).Select(stack => stack with { EndsInBeam = true })
        : [];

    private IEnumerable<CourseStack> Stacks(WallHeights wall, CourseLines lines, (int Line, Length Bottom, bool IsCut) foot)
    {
        CourseStack EndingAt(int last, Length top, Length? split = null) => new(lines, foot.Line, foot.Bottom, last, top, split);

        Length BottomOf(int line) => line == foot.Line ? foot.Bottom : lines.Bottom(line);

        var last = lines.LineBelow(wall.Top);
        if (!wall.IsLevel || wall.Top >= lines.Top(last))
        {
            yield return EndingAt(last, Length.Min(wall.Top, lines.Top(last)));
            yield break;
        }

        yield return EndingAt(last - 1, lines.Top(last - 1));
        var bottom = BottomOf(last);
        foreach (var height in _catalog.OtherHeights.Where(height => bottom + height <= wall.Top))
        {
            yield return EndingAt(last, bottom + height);
        }

        foreach (var (lower, upper) in last > foot.Line ? Pairs(_catalog) : [])
        {
            var split = BottomOf(last - 1) + lower;
            if (split + lines.Joint + upper <= wall.Top)
            {
                yield return EndingAt(last, split + lines.Joint + upper, split);
            }
        }

        if (_leastRip is null)
        {
            yield break;
        }

        yield return EndingAt(last, bottom + (wall.Top - bottom).FloorTo(_catalog.CutGrid));
        if (wall.Top - bottom < _leastRip && last > foot.Line)
        {
            var both = wall.Top - BottomOf(last - 1) - lines.Joint;
            var lower = (both / 2).FloorTo(_catalog.CutGrid);
            var split = BottomOf(last - 1) + lower;
            yield return EndingAt(last, split + lines.Joint + (both - lower).FloorTo(_catalog.CutGrid), split);
        }
    }

    /// <summary>Whether there is a course at all, and none that is cut is lower than the least rip; under a rake they are as they come.</summary>
    private bool IsSound(CourseStack stack, WallHeights wall) => stack.LastUnder >= stack.First
        && (!wall.IsLevel ? stack.Top > stack.Bottom : CutAtEnds(stack).All(line => stack.HeightOf(line) >= _leastRip && stack.HeightOf(line) < _catalog.UnitHeight));

    /// <summary>The cut courses of a wall's own: only the first and the last two, under a beam, can be.</summary>
    private IEnumerable<int> CutAtEnds(CourseStack stack) => new[] { stack.First, stack.LastUnder - 1, stack.LastUnder }
        .Where(line => line >= stack.First)
        .Distinct()
        .Where(line => IsCut(stack.HeightOf(line)));

    private bool IsCut(Length height) => height != _catalog.UnitHeight && !_catalog.OtherHeights.Contains(height);

    private HeightCost Cost(WallHeights wall, CourseStack stack)
    {
        var gap = wall.IsLevel ? wall.Top - stack.Top : Length.Zero;
        var lifts = wall.Heads.Select(head => LiftToLine(stack, head)).ToList();
        return new HeightCost
        {
            Open = Length.Max(gap - rules.Set.MortarRest, Length.Zero).Nanometres,
            Beams = wall.HasTopBeam && (!stack.EndsInBeam || (wall.MeetsHigher && stack.IsBeamOffLine)) ? 1 : 0,
            CutCourses = Enumerable.Range(stack.First, stack.Last - stack.First + 1)
                .Count(line => IsCut(stack.HeightOf(line)) && (wall.IsLevel || line == stack.First || IsCut(stack.Lines.Height(line)))),
            Corners = stack.Split is not null && wall.MeetsAnotherTop ? 1 : 0,
            Heads = lifts.Count(lift => lift is null || lift > _largestLift),
            Lift = lifts.Count(lift => lift != Length.Zero),
            Mortar = gap > _plainJoint ? 1 : 0,
            Sills = wall.Sills.Count(sill => sill > stack.Bottom && !EndsACourse(stack, sill)),
            FirstCourse = stack.HeightOf(stack.First) == _catalog.UnitHeight ? 0 : 1,
            OtherHeights = Enumerable.Range(stack.First, stack.Last - stack.First + 1).Count(line => _catalog.OtherHeights.Contains(stack.HeightOf(line))),
            Bed = CutAtEnds(stack).Contains(stack.First) ? 0 : Length.Abs(stack.Bottom - wall.Base - wall.Bed.Nominal).Nanometres,
        };
    }

    /// <summary>How far a head lies below the next line; null where no whole course stands there, as a lintel asks for.</summary>
    private Length? LiftToLine(CourseStack stack, Length head)
    {
        var line = stack.Lines.LineBelow(head) + 1;
        return line > stack.First && line <= stack.Last && stack.HeightOf(line) == _catalog.UnitHeight && stack.BottomOf(line) >= head
            ? stack.BottomOf(line) - head
            : null;
    }

    private static bool EndsACourse(CourseStack stack, Length sill)
    {
        var line = stack.Lines.LineBelow(sill);
        return line >= stack.First && line <= stack.Last && stack.Lines.Top(line) == sill && stack.TopOf(line) == sill;
    }
}
