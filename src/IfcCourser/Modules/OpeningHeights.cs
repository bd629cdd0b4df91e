using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Modules;

/// <summary>
/// Puts heads and sills on course lines: the head goes up to the next course's underside, the sill to the nearest top of
/// a course (or the wall's base) that leaves the opening as high as wanted; neither further than the largest shift, and no
/// head into the wall's last course where it would leave a lintel no whole course.
/// </summary>
internal static class OpeningHeights
{
    /// <summary>Snaps a wall's openings; of two that stand above each other and would then touch, both keep their heights.</summary>
    /// <param name="designs">The masonry openings wanted.</param>
    /// <param name="courses">The wall's courses from the bottom up, each from its underside to its top.</param>
    /// <param name="rules">Largest shift, unit height.</param>
    public static ImmutableArray<ElevationRect> SnapAll(
        ImmutableArray<ElevationRect> designs, ImmutableArray<Interval> courses, LayoutRules rules)
    {
        var snapped = designs.Select(design => Snap(design, courses, rules)).ToArray();
        var settled = false;
        while (!settled)
        {
            settled = true;
            for (var i = 0; i < snapped.Length; i++)
            {
                if (snapped[i] != designs[i] && Enumerable.Range(0, snapped.Length).Any(j => j != i && Collide(i, j)))
                {
                    snapped[i] = designs[i];
                    settled = false;
                }
            }
        }

        return [.. snapped];

        bool Collide(int i, int j) => snapped[i].Left < snapped[j].Right && snapped[j].Left < snapped[i].Right
            && snapped[i].StandsBeside(snapped[j]) && !designs[i].StandsBeside(designs[j]);
    }

    /// <param name="design">The masonry opening wanted.</param>
    /// <param name="courses">The wall's courses from the bottom up, each from its underside to its top.</param>
    /// <param name="rules">Largest shift, unit height.</param>
    public static ElevationRect Snap(ElevationRect design, ImmutableArray<Interval> courses, LayoutRules rules)
    {
        var line = Head(design.Top, courses);
        var leavesLintel = courses.Any(course => course.From >= line && course.Size >= rules.Catalog.UnitHeight);
        var head = line - design.Top <= rules.MaxShift && leavesLintel ? line : design.Top;
        return design with { Top = head, Bottom = Sill(design, head, courses, rules.MaxShift) };
    }

    /// <summary>The underside of the first course at or above a head; the head itself where no course stands there.</summary>
    public static Length Head(Length wanted, ImmutableArray<Interval> courses)
    {
        foreach (var course in courses)
        {
            if (course.From >= wanted)
            {
                return course.From;
            }
        }

        return wanted;
    }

    private static Length Sill(ElevationRect design, Length head, ImmutableArray<Interval> courses, Length maxShift)
    {
        if (design.Bottom <= Length.Zero)
        {
            return design.Bottom;
        }

        var best = (Sill: Length.Zero, Move: design.Bottom);
        foreach (var top in courses.Select(course => course.To).Where(top => head - top >= design.Height))
        {
            var move = Length.Abs(top - design.Bottom);
            if (move < best.Move)
            {
                best = (top, move);
            }
        }

        return best.Move > maxShift ? design.Bottom : best.Sill;
    }
}
