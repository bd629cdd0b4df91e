using System.Collections.Immutable;
using IfcCourser.Findings;
using IfcCourser.Layouts;
using IfcCourser.Rules;

namespace IfcCourser.Coursing;

/// <summary>Names every place of a bonded wall where a hard rule of the bond does not hold.</summary>
internal static class BondFindings
{
    public static IEnumerable<Finding> Of(ImmutableArray<LaidCourse> laid, ImmutableArray<Course> courses, ImmutableArray<Core> cores, LayoutRules rules)
    {
        var units = rules.Catalog.Units;
        for (var i = 0; i < laid.Length; i++)
        {
            var number = courses[i].Number;
            if (i > 0)
            {
                foreach (var (joint, lap) in LapCheck.ShortLaps(laid[i - 1], laid[i], rules.MinOverlap))
                {
                    yield return new Finding(
                        FindingCodes.OverlapShort,
                        Messages.OverlapShort(number, lap, rules.MinOverlap, units),
                        new FindingPlace { S = joint, Z = courses[i].Bottom, Course = number });
                }
            }

            foreach (var finding in OfPieces(courses[i], rules))
            {
                yield return finding;
            }

            foreach (var core in cores.Where(core => core.Top > courses[i].Bottom && core.Bottom < courses[i].Top))
            {
                var distance = LapCheck.Nearest(laid[i].Joints, core.At);
                if (distance < rules.CoreClearance)
                {
                    yield return new Finding(
                        FindingCodes.CoreOnJoint,
                        Messages.CoreOnJoint(core.Id, number, distance, rules.CoreClearance, units),
                        new FindingPlace { S = core.At, Z = courses[i].Bottom, Course = number, Core = core.Id });
                }
            }
        }
    }

    private static IEnumerable<Finding> OfPieces(Course course, LayoutRules rules)
    {
        foreach (var piece in course.Pieces)
        {
            var place = new FindingPlace { S = piece.From, Z = piece.Bottom, Course = course.Number, Piece = piece.Id };
            if (piece.Length < rules.MinPiece)
            {
                yield return new Finding(
                    FindingCodes.PieceShort, Messages.PieceShort(piece.Id, piece.Length, rules.MinPiece, rules.Catalog.Units), place);
            }

            if (piece.Outline is null && rules.Catalog.LeastRip is { } least && piece.Height < least)
            {
                yield return new Finding(
                    FindingCodes.RipThin, Messages.RipThin(piece.Id, piece.Height, least, rules.Catalog.Units), place);
            }
        }
    }
}
