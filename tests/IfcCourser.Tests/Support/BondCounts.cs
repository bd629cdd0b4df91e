using IfcCourser.Layouts;
using IfcCourser.Rules;

namespace IfcCourser.Tests.Support;

/// <summary>Counts of a wall's bond, from its pieces alone: broken rules of the bond and pieces whose length is neither a unit's nor a part's.</summary>
internal static class BondCounts
{
    /// <summary>Laps are compared to 5 micrometres, as the drawings are.</summary>
    private const double Dust = 0.005;

    public static (int Breaches, int Cuts) Of(WallLayout wall, LayoutRules rules)
    {
        var (breaches, cuts) = (0, 0);
        var below = new List<double>();
        foreach (var course in wall.Courses)
        {
            var pieces = course.Pieces.OrderBy(piece => piece.From).ToList();
            breaches += pieces.Count(piece => piece.To - piece.From < rules.MinPiece);
            cuts += pieces.Count(piece => piece.To - piece.From != rules.Catalog.UnitLength && !rules.Catalog.PartLengths.Contains(piece.To - piece.From));
            var joints = pieces.Zip(pieces.Skip(1))
                .Where(pair => pair.Second.From - pair.First.To <= rules.Catalog.HeadJoint.Max)
                .Select(pair => (pair.First.To + pair.Second.From).Mm / 2)
                .ToList();
            breaches += joints.Sum(joint => below.Count(other => Math.Abs(other - joint) < rules.MinOverlap.Mm - Dust));
            below = joints;
        }

        return (breaches, cuts);
    }
}
