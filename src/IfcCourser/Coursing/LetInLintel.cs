using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>
/// A lintel that lies in a part of a course's height: its bearings on pieces cut in height, or such pieces over it. Beside
/// its ends they stand in full height, so that they are notched.
/// </summary>
internal static class LetInLintel
{
    /// <summary>Whether a lintel takes only a part of a course's height and leaves more than a bed joint of it.</summary>
    public static bool IsIn(Lintel lintel, CourseBand band, LayoutRules rules) =>
        lintel.Bottom < band.Top && lintel.Top > band.Bottom
        && (lintel.Bottom > band.Bottom || band.Top - lintel.Top > rules.Catalog.BedJoint.Nominal);

    /// <summary>What pieces must leave free for a lintel: itself and the joints around it.</summary>
    public static ElevationRect WithJoints(Lintel lintel, LayoutRules rules)
    {
        var (head, bed) = (rules.Catalog.HeadJoint.Nominal, rules.Catalog.BedJoint.Nominal);
        return new ElevationRect(lintel.From - head, lintel.To + head, lintel.Bottom - bed, lintel.Top + bed);
    }

    /// <summary>Centres of the joints at the ends of the lintels let into a course.</summary>
    public static IEnumerable<Length> EndJoints(ImmutableArray<Lintel> lintels, CourseBand band, LayoutRules rules) => lintels
        .Where(lintel => IsIn(lintel, band, rules))
        .SelectMany(lintel => new[] { lintel.From - (rules.Catalog.HeadJoint.Nominal / 2), lintel.To + (rules.Catalog.HeadJoint.Nominal / 2) });
}
