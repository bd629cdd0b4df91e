using IfcCourser.Rules;

namespace IfcCourser.Coursing;

/// <summary>How good a bonded wall is: breaches of hard rules first, then cuts, then short pieces.</summary>
internal readonly record struct BondScore(int Breaches, int Cuts, int Short) : IComparable<BondScore>
{
    public static BondScore Of(IReadOnlyList<LaidCourse> courses, IReadOnlyCollection<Bar> bars, LayoutRules rules)
    {
        var (breaches, cuts, shorts) = (0, 0, 0);
        for (var i = 0; i < courses.Count; i++)
        {
            foreach (var piece in courses[i].Rows.SelectMany(row => row))
            {
                var isCut = piece.Size != rules.Catalog.UnitLength && !rules.Catalog.PartLengths.Contains(piece.Size);
                cuts += isCut ? 1 : 0;
                shorts += piece.Size < rules.PreferredPiece ? 1 : 0;
                breaches += piece.Size < rules.MinPiece ? 1 : 0;
            }

            breaches += i == 0 ? 0 : LapCheck.ShortLaps(courses[i - 1], courses[i], rules.MinOverlap).Count();
            breaches += bars.Count(bar => bar.Passes(courses[i].Shape.Band)
                && LapCheck.Nearest(courses[i].Joints, bar.At) < rules.CoreClearance);
        }

        return new BondScore(breaches, cuts, shorts);
    }

    public int CompareTo(BondScore other) => (Breaches, Cuts, Short).CompareTo((other.Breaches, other.Cuts, other.Short));
}
