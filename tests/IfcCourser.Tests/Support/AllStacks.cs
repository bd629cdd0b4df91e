using System.Collections.Immutable;
using IfcCourser.Catalogs;
using IfcCourser.Coursing;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Tests.Support;

/// <summary>
/// Every stack of courses that a wall alone may have, from the bed up, and what is wrong with each: the rules of coursing.md
/// stated a second time, without course lines. Beds lie on half millimetres, rips on the saw's grid.
/// </summary>
internal static class AllStacks
{
    private static readonly Length _half = Length.FromMm(0.5);

    /// <summary>The least cost of all stacks, in the order of the built-in aims.</summary>
    public static (long Open, int Beams, int Cut, int Corners, int Heads, int Lift, int Mortar, int Sills, int First, int Others, long Bed) Least(WallHeights wall, LayoutRules rules) =>
        Stacks(wall, rules).Select(stack => Cost(wall, stack.Courses, stack.SharesRest, endsInBeam: false, rules))
            .Concat(UnderBeam(wall, rules).Select(stack => Cost(wall, stack.Courses, stack.SharesRest, endsInBeam: true, rules)))
            .Append(Cost(wall, [], sharesRest: false, endsInBeam: false, rules))
            .Min();

    /// <summary>Every stack with a bond beam of a unit's height on it, where one is asked for.</summary>
    private static IEnumerable<(ImmutableArray<(Length Bottom, Length Top)> Courses, bool SharesRest)> UnderBeam(WallHeights wall, LayoutRules rules)
    {
        var beam = rules.Catalog.UnitHeight;
        var joint = rules.Catalog.BedJoint.Nominal;
        return wall.HasTopBeam
            ? Stacks(wall with { Top = wall.Top - beam - joint }, rules)
                .Select(stack => (stack.Courses.Add((stack.Courses[^1].Top + joint, stack.Courses[^1].Top + joint + beam)), stack.SharesRest))
            : [];
    }

    public static (long Open, int Beams, int Cut, int Corners, int Heads, int Lift, int Mortar, int Sills, int First, int Others, long Bed) Cost(
        WallHeights wall, ImmutableArray<(Length Bottom, Length Top)> courses, bool sharesRest, bool endsInBeam, LayoutRules rules)
    {
        if (courses.IsEmpty)
        {
            return ((wall.Top - wall.Base).Nanometres, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0);
        }

        var catalog = rules.Catalog;
        var heights = courses.Select(course => course.Top - course.Bottom).ToList();
        var gap = wall.Top - courses[^1].Top;
        var lifts = wall.Heads.Select(head => Lift(head, courses, catalog)).ToList();
        return (
            Math.Max(0, (gap - rules.Set.MortarRest).Nanometres),
            wall.HasTopBeam && !endsInBeam ? 1 : 0,
            heights.Count(height => IsCut(height, catalog)),
            wall.MeetsAnotherTop && sharesRest ? 1 : 0,
            lifts.Count(lift => lift is null || (lift > Length.Zero && (rules.Openings == OpeningPolicy.Keep || lift > rules.MaxShift))),
            lifts.Count(lift => lift != Length.Zero),
            gap > Length.Max(catalog.BedJoint.Nominal, catalog.CutGrid) ? 1 : 0,
            wall.Sills.Count(sill => sill > courses[0].Bottom && !courses.Any(course => course.Top == sill)),
            heights[0] == catalog.UnitHeight ? 0 : 1,
            heights.Count(catalog.OtherHeights.Contains),
            IsCut(heights[0], catalog) ? 0 : Length.Abs(courses[0].Bottom - wall.Base - wall.Bed.Nominal).Nanometres);
    }

    private static Length? Lift(Length head, ImmutableArray<(Length Bottom, Length Top)> courses, Catalog catalog)
    {
        var next = courses.Skip(1).Where(course => course.Bottom >= head).Take(1).ToList();
        return next is [var course] && course.Top - course.Bottom == catalog.UnitHeight ? course.Bottom - head : null;
    }

    private static bool IsCut(Length height, Catalog catalog) => height != catalog.UnitHeight && !catalog.OtherHeights.Contains(height);

    private static IEnumerable<(ImmutableArray<(Length Bottom, Length Top)> Courses, bool SharesRest)> Stacks(WallHeights wall, LayoutRules rules)
    {
        var catalog = rules.Catalog;
        var whole = catalog.OtherHeights.Append(catalog.UnitHeight);
        foreach (var height in whole)
        {
            for (var bed = wall.Bed.Min; bed <= wall.Bed.Max; bed += _half)
            {
                foreach (var stack in Above([(wall.Base + bed, wall.Base + bed + height)], mayMakeUp: true, wall, rules))
                {
                    yield return stack;
                }
            }
        }

        foreach (var rip in Rips(catalog))
        {
            foreach (var bed in new[] { wall.Bed.Nominal, wall.Bed.Nominal + _half })
            {
                foreach (var stack in Above([(wall.Base + bed, wall.Base + bed + rip)], mayMakeUp: true, wall, rules))
                {
                    yield return stack;
                }
            }

            // A first course that is the last one but for a beam is cut at its top, whatever its bed.
            for (var bed = wall.Bed.Min; bed <= wall.Bed.Max && wall.Base + bed + rip <= wall.Top; bed += _half)
            {
                yield return ([(wall.Base + bed, wall.Base + bed + rip)], false);
            }
        }
    }

    /// <summary>A stack that may end here, and all stacks on top of it: uncut courses of which one may have another height, then a last one or two.</summary>
    private static IEnumerable<(ImmutableArray<(Length Bottom, Length Top)> Courses, bool SharesRest)> Above(
        ImmutableArray<(Length Bottom, Length Top)> courses, bool mayMakeUp, WallHeights wall, LayoutRules rules)
    {
        var catalog = rules.Catalog;
        if (courses[^1].Top > wall.Top)
        {
            yield break;
        }

        yield return (courses, false);
        var bottom = courses[^1].Top + catalog.BedJoint.Nominal;
        var rest = wall.Top - bottom;
        foreach (var last in catalog.OtherHeights.Concat(Rips(catalog).Where(rip => rip == rest.FloorTo(catalog.CutGrid))).Where(last => last <= rest))
        {
            yield return (courses.Add((bottom, bottom + last)), false);
        }

        foreach (var (lowerUnit, upperUnit) in catalog.OtherHeights.SelectMany(lowerUnit => catalog.OtherHeights.Select(upperUnit => (lowerUnit, upperUnit))))
        {
            var between = bottom + lowerUnit + catalog.BedJoint.Nominal;
            if (between + upperUnit <= wall.Top)
            {
                yield return (courses.AddRange((bottom, bottom + lowerUnit), (between, between + upperUnit)), true);
            }
        }

        var shared = rest - catalog.BedJoint.Nominal;
        var lower = (shared / 2).FloorTo(catalog.CutGrid);
        var upper = (shared - lower).FloorTo(catalog.CutGrid);
        if (Rips(catalog).Contains(lower) && Rips(catalog).Contains(upper))
        {
            var middle = bottom + lower + catalog.BedJoint.Nominal;
            yield return (courses.AddRange((bottom, bottom + lower), (middle, middle + upper)), true);
        }

        foreach (var height in mayMakeUp ? catalog.OtherHeights.Append(catalog.UnitHeight) : [catalog.UnitHeight])
        {
            foreach (var stack in Above(courses.Add((bottom, bottom + height)), mayMakeUp && height == catalog.UnitHeight, wall, rules))
            {
                yield return stack;
            }
        }
    }

    private static IEnumerable<Length> Rips(Catalog catalog)
    {
        for (var rip = catalog.LeastRip; rip < catalog.UnitHeight; rip += catalog.CutGrid)
        {
            yield return rip.Value;
        }
    }
}
