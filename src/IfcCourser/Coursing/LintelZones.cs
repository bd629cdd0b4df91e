using System.Collections.Immutable;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>What head joints cost near lintels.</summary>
internal static class LintelZones
{
    /// <param name="lintels">The wall's lintels.</param>
    /// <param name="band">The course whose joints are weighed.</param>
    /// <param name="rules">Least piece, least overlap.</param>
    public static IEnumerable<JointZone> Of(ImmutableArray<Lintel> lintels, CourseBand band, LayoutRules rules)
    {
        var reach = Length.Max(rules.MinPiece, rules.MinOverlap);
        return lintels.Where(lintel => Carries(band, lintel, rules)).SelectMany(lintel => UnderBearings(lintel, rules))
            .Concat(LetInLintel.EndJoints(lintels, band, rules).Select(end => new JointZone(end, reach, BondAims.Breach)));
    }

    private static bool Carries(CourseBand band, Lintel lintel, LayoutRules rules) =>
        lintel.Bottom - band.Top == rules.Catalog.BedJoint.Nominal || (lintel.Bottom > band.Bottom && lintel.Bottom < band.Top);

    /// <summary>Under a lintel's bearing lies a full unit, or a piece of the bearing's length and the least piece.</summary>
    private static IEnumerable<JointZone> UnderBearings(Lintel lintel, LayoutRules rules)
    {
        foreach (var (bearing, jamb, inward) in new[]
        {
            (lintel.BearingLeft, lintel.From + lintel.BearingLeft, -1),
            (lintel.BearingRight, lintel.To - lintel.BearingRight, 1),
        })
        {
            var reach = Length.Min(bearing + rules.MinPiece, rules.Catalog.UnitLength) / 2;
            yield return new JointZone(jamb + (reach * inward), reach, rules.Set.Aims.Bearing);
        }
    }
}
