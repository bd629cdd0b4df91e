using System.Collections.Immutable;
using IfcCourser.Catalogs;
using IfcCourser.Geometry;
using IfcCourser.Units;

namespace IfcCourser.Modules;

/// <summary>
/// The courses that a lintel lies in. Its underside lies on a course line or, seated on pieces cut in height, in mid-course;
/// so does its top, which pieces cut in height then close.
/// </summary>
/// <param name="First">Index of the course that its underside lies in.</param>
/// <param name="Last">Index of the course that its top lies in.</param>
/// <param name="Seat">Height of the pieces under its bearings in that course; zero on a course line.</param>
/// <param name="Closer">Height of the pieces over it in that course; zero where it ends with the course.</param>
internal readonly record struct LintelRows(int First, int Last, Length Seat, Length Closer)
{
    /// <summary>Where a lintel can be built in among courses; null where no piece is so low as its seat or closer would be.</summary>
    /// <param name="bottom">Its underside.</param>
    /// <param name="top">Its top.</param>
    /// <param name="courses">The wall's courses from the bottom up, each from its underside to its top.</param>
    /// <param name="catalog">Heights of pieces, bed joint.</param>
    public static LintelRows? Of(Length bottom, Length top, ImmutableArray<Interval> courses, Catalog catalog)
    {
        var bed = catalog.BedJoint.Nominal;
        var first = IndexOf(courses, course => course.To > bottom);
        var last = IndexOf(courses, course => course.To >= top);
        if (first < 0 || last < 0 || bottom < courses[first].From || top <= courses[last].From)
        {
            return null;
        }

        var seat = bottom > courses[first].From ? bottom - bed - courses[first].From : Length.Zero;
        var rest = courses[last].To - top;
        var closer = rest > bed ? rest - bed : Length.Zero;
        var isBuilt = (bottom == courses[first].From || catalog.CanBeLaid(seat)) && (rest <= bed || catalog.CanBeLaid(closer));
        return isBuilt && !(first == last && seat > Length.Zero && closer > Length.Zero) ? new LintelRows(first, last, seat, closer) : null;
    }

    private static int IndexOf(ImmutableArray<Interval> courses, Func<Interval, bool> holds)
    {
        for (var i = 0; i < courses.Length; i++)
        {
            if (holds(courses[i]))
            {
                return i;
            }
        }

        return -1;
    }
}
