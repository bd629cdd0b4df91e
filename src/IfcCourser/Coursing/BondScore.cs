using System.Collections.Immutable;
using IfcCourser.Layouts;
using IfcCourser.Rules;

namespace IfcCourser.Coursing;

/// <summary>How good a bonded wall is: breaches of hard rules first, then bearings with a joint under them, then cuts, then short pieces.</summary>
internal readonly record struct BondScore(int Breaches, int Bearings, int Cuts, int Short) : IComparable<BondScore>
{
    public static BondScore Of(IReadOnlyList<LaidCourse> courses, IReadOnlyCollection<Bar> bars, ImmutableArray<Lintel> lintels, LayoutRules rules)
    {
        var (breaches, bearings, cuts, shorts) = (0, 0, 0, 0);
        for (var i = 0; i < courses.Count; i++)
        {
            foreach (var piece in courses[i].Rows.SelectMany(row => row))
            {
                var isCut = piece.Size != rules.Catalog.UnitLength && !rules.Catalog.PartLengths.Contains(piece.Size);
                cuts += isCut ? 1 : 0;
                shorts += piece.Size < rules.PreferredPiece ? 1 : 0;
                breaches += piece.Size < rules.MinPiece ? 1 : 0;
            }

            var (joints, band) = (courses[i].PieceJoints, courses[i].Shape.Band);
            breaches += i == 0 ? 0 : LapCheck.ShortLaps(courses[i - 1], courses[i], rules.MinOverlap).Count();
            breaches += bars.Count(bar => bar.Passes(band) && LapCheck.Nearest(courses[i].Joints, bar.At) < rules.CoreClearance);
            bearings += LintelZones.Of(lintels, band, rules)
                .Count(zone => zone.Cost < BondAims.Breach && joints.Any(joint => PieceCosts.AtJoint(joint, [zone]) > 0));
        }

        return new BondScore(breaches, bearings, cuts, shorts);
    }

    public int CompareTo(BondScore other) =>
        (Breaches, Bearings, Cuts, Short).CompareTo((other.Breaches, other.Bearings, other.Cuts, other.Short));
}
