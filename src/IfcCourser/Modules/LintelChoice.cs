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
    /// Whether an opening is best carried with its head where it is, in mid-course: by a lintel of the catalog seated there,
    /// or by a formed beam where no lintel of the catalog finds room on the course line over it.
    /// </summary>
    /// <param name="opening">The masonry opening.</param>
    /// <param name="line">The course line over its head.</param>
    /// <param name="courses">The wall's courses from the bottom up, each from its underside to its top.</param>
    /// <param name="thickness">The wall's.</param>
    /// <param name="rules">The catalog's lintels, the load class asked for.</param>
    public static bool HoldsInMidCourse(ElevationRect opening, Length line, ImmutableArray<Interval> courses, Length thickness, LayoutRules rules)
    {
        var heights = Serving(opening.Width, thickness, rules).Select(lintel => lintel.Height).ToList();
        bool IsBuiltIn(Length from, Length to) => LintelRows.Of(from, to, courses, rules.Catalog) is not null;
        return heights.Exists(height => IsBuiltIn(opening.Top, opening.Top + height))
            || (!heights.Exists(height => IsBuiltIn(line, line + height)) && courses.Any(course => IsBuiltIn(opening.Top, course.To)));
    }

    private static bool IsMadeFor(LintelProduct lintel, Length thickness, Catalog catalog) => lintel.Widths.IsEmpty
        || lintel.Widths.Any(width => catalog.IsWidth(width, thickness));
}
