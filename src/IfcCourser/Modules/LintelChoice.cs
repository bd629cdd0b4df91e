using System.Collections.Immutable;
using IfcCourser.Catalogs;
using IfcCourser.Geometry;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Modules;

/// <summary>Which lintels of the catalog serve an opening of a wall, in the catalog's order: the first that fits is taken.</summary>
internal static class LintelChoice
{
    /// <param name="clear">The clear width to be spanned.</param>
    /// <param name="thickness">The wall's.</param>
    /// <param name="rules">The catalog's lintels, the load class asked for.</param>
    public static IEnumerable<LintelProduct> Serving(Length clear, Length thickness, LayoutRules rules) => rules.Catalog.Lintels
        .Where(lintel => lintel.MaxClearSpan >= clear && lintel.LoadClass >= rules.Set.LintelLoadClass && IsMadeFor(lintel, thickness, rules.Catalog));

    /// <summary>Least bearing each side: the catalog's or the lintel's own, and what the rules ask for.</summary>
    public static Length BearingOf(LintelProduct? lintel, LayoutRules rules) =>
        Length.Max(lintel?.Bearing ?? rules.Catalog.LintelBearing, rules.Set.LeastBearing);

    /// <summary>
    /// Whether something can carry an opening with its head where it is, in mid-course: a lintel of the catalog seated
    /// there, or a formed beam where none spans it.
    /// </summary>
    /// <param name="opening">The masonry opening.</param>
    /// <param name="courses">The wall's courses from the bottom up, each from its underside to its top.</param>
    /// <param name="thickness">The wall's.</param>
    /// <param name="rules">The catalog's lintels, the load class asked for.</param>
    public static bool HoldsInMidCourse(ElevationRect opening, ImmutableArray<Interval> courses, Length thickness, LayoutRules rules)
    {
        var serving = Serving(opening.Width, thickness, rules).ToList();
        return serving.Count == 0
            ? courses.Any(course => LintelRows.Of(opening.Top, course.To, courses, rules.Catalog) is not null)
            : serving.Exists(lintel => LintelRows.Of(opening.Top, opening.Top + lintel.Height, courses, rules.Catalog) is not null);
    }

    private static bool IsMadeFor(LintelProduct lintel, Length thickness, Catalog catalog) => lintel.Widths.IsEmpty
        || lintel.Widths.Any(width => width == thickness || catalog.Widths.Any(unit =>
            (unit.Actual == width || unit.Nominal == width) && (unit.Actual == thickness || unit.Nominal == thickness)));
}
