using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>
/// What of their courses two walls give way with at a bonded corner. Courses of the two that share height are decided together, for where
/// one runs through the other must stop: mostly one of each on a line, and more where one wall's top or foot is divided
/// otherwise than the other's. A wall whose opening reaches into the corner gives way, so that the other's blocks stand around the corner's
/// middle; the wall that stands higher over the whole corner, or reaches under the other's base, runs through; else they take turns.
/// </summary>
/// <param name="OfFirst">By line, at what heights the first wall's courses stop at the second wall.</param>
/// <param name="OfSecond">By line, at what heights the second wall's courses stop at the first wall.</param>
internal sealed record CornerCourses(ImmutableDictionary<int, Interval> OfFirst, ImmutableDictionary<int, Interval> OfSecond)
{
    /// <param name="first">The first wall's courses at the corner.</param>
    /// <param name="second">The second wall's.</param>
    /// <param name="turn">Which of them runs through on odd courses.</param>
    /// <param name="joint">The bed joint; courses that share no more height than this are apart.</param>
    public static CornerCourses That(IEnumerable<CornerCourse> first, IEnumerable<CornerCourse> second, CornerTurn turn, Length joint)
    {
        var (ofFirst, ofSecond) = (ImmutableDictionary.CreateBuilder<int, Interval>(), ImmutableDictionary.CreateBuilder<int, Interval>());
        foreach (var together in Together(first.Select(course => (course, true)).Concat(second.Select(course => (course, false))), joint))
        {
            var (a, b) = (Of(together, isFirst: true), Of(together, isFirst: false));
            if (a.Count > 0 && b.Count > 0)
            {
                var (through, stopped, lines) = FirstRunsThrough(a, b, turn) ? (a, b, ofSecond) : (b, a, ofFirst);
                var taken = new Interval(through.Min(course => course.Foot), through.Max(course => course.Top) + joint);
                lines.AddRange(stopped.Select(course => KeyValuePair.Create(course.Line, taken)));
            }
        }

        return new CornerCourses(ofFirst.ToImmutable(), ofSecond.ToImmutable());
    }

    private static List<CornerCourse> Of(List<(CornerCourse Course, bool IsFirst)> together, bool isFirst) =>
        [.. together.Where(course => course.IsFirst == isFirst).Select(course => course.Course)];

    private static IEnumerable<List<(CornerCourse Course, bool IsFirst)>> Together(IEnumerable<(CornerCourse Course, bool IsFirst)> courses, Length joint)
    {
        var together = new List<(CornerCourse Course, bool IsFirst)>();
        foreach (var next in courses.OrderBy(course => course.Course.Bottom).ThenBy(course => course.Course.Top))
        {
            if (together.Count > 0 && next.Course.Bottom >= together.Max(course => course.Course.Top) - joint)
            {
                yield return together;
                together = [];
            }

            together.Add(next);
        }

        if (together.Count > 0)
        {
            yield return together;
        }
    }

    private static bool FirstRunsThrough(List<CornerCourse> first, List<CornerCourse> second, CornerTurn turn)
    {
        var (open, otherOpen) = (first.Exists(course => course.IsOpen), second.Exists(course => course.IsOpen));
        if (open != otherOpen)
        {
            return otherOpen;
        }

        var (top, otherTop) = (Top(first), Top(second));
        if (top != otherTop)
        {
            return top.CompareTo(otherTop) > 0;
        }

        // Over a step of the slab the lower wall's first course would leave a hole under the higher wall's.
        var (under, otherUnder) = (StandUnder(first, second), StandUnder(second, first));
        return under != otherUnder ? under : (turn == CornerTurn.FirstInOdd) == IsOdd(first.Concat(second).Min(course => course.Line));
    }

    private static (Length Whole, Length Highest) Top(List<CornerCourse> courses) => (courses.Max(course => course.Whole), courses.Max(course => course.Top));

    private static bool StandUnder(List<CornerCourse> courses, List<CornerCourse> others) =>
        courses.Min(course => course.Bottom) < others.Min(course => course.Foot);

    /// <summary>Line 0 carries the first course, number 1.</summary>
    private static bool IsOdd(int line) => line % 2 == 0;
}
