using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Rules;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Modules;

/// <summary>
/// Puts heads and sills on course lines. The head goes up to the next course's underside where that is no further than the
/// largest shift; further, but never past that line, where nothing can carry it in mid-course. The sill goes to the nearest
/// top of a course (or the wall's base) that leaves the opening as high as wanted, no further than the largest shift.
/// </summary>
/// <param name="wall">The wall.</param>
/// <param name="courses">Its courses from the bottom up, each from its underside to its top.</param>
/// <param name="rules">Largest shift, unit height, lintels.</param>
internal sealed class OpeningHeights(Wall wall, ImmutableArray<Interval> courses, LayoutRules rules)
{
    private readonly ElevationOutline _outline = new(wall.Outline);

    /// <summary>Snaps a wall's openings; of two that stand above each other and would then touch, both keep their heights.</summary>
    /// <param name="designs">The masonry openings wanted.</param>
    /// <param name="isFixed">Which of them stay where they are.</param>
    public ImmutableArray<ElevationRect> SnapAll(ImmutableArray<ElevationRect> designs, ImmutableArray<bool> isFixed)
    {
        var snapped = designs.Select((design, i) => isFixed[i] ? design : Snap(design)).ToArray();
        while (Touching() is { Length: > 0 } touching)
        {
            Array.ForEach(touching, i => snapped[i] = designs[i]);
        }

        return [.. snapped];

        int[] Touching() => [.. Enumerable.Range(0, snapped.Length).Where(i => snapped[i] != designs[i] && Enumerable.Range(0, snapped.Length).Any(j => j != i && Collide(i, j)))];

        bool Collide(int i, int j) => snapped[i].Left < snapped[j].Right && snapped[j].Left < snapped[i].Right
            && snapped[i].StandsBeside(snapped[j]) && !designs[i].StandsBeside(designs[j]);
    }

    /// <summary>The underside of the first course at or above a head; null where none stands there.</summary>
    public static Length? LineOver(Length head, ImmutableArray<Interval> courses)
    {
        foreach (var course in courses)
        {
            if (course.From >= head)
            {
                return course.From;
            }
        }

        return null;
    }

    private ElevationRect Snap(ElevationRect design)
    {
        var head = Head(design);
        return design with { Top = head, Bottom = Sill(design, head) };
    }

    private Length Head(ElevationRect design)
    {
        if (LineOver(design.Top, courses) is not { } line || line >= _outline.HighestWithin(design.Left, design.Right))
        {
            return design.Top;
        }

        var leavesWholeCourse = courses.Any(course => course.From >= line && course.Size >= rules.Catalog.UnitHeight);
        return (line - design.Top <= rules.MaxShift && leavesWholeCourse) || !LintelChoice.HoldsInMidCourse(design, line, courses, wall.Frame.Thickness, rules)
            ? line
            : design.Top;
    }

    private Length Sill(ElevationRect design, Length head)
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

        return best.Move > rules.MaxShift ? design.Bottom : best.Sill;
    }
}
