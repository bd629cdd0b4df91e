using System.Collections.Immutable;
using IfcCourser.Findings;
using IfcCourser.Layouts;
using IfcCourser.Rules;

namespace IfcCourser.Coursing;

/// <summary>Names head joints too near the end of a lintel that is let into their course.</summary>
internal static class LintelLaps
{
    public static IEnumerable<Finding> Of(ImmutableArray<LaidCourse> laid, ImmutableArray<Lintel> lintels, LayoutRules rules)
    {
        foreach (var course in laid)
        {
            var band = course.Shape.Band;
            foreach (var end in LetInLintel.EndJoints(lintels, band, rules).Where(end => course.Shape.Spans.Any(span => span.Run.Contains(end))))
            {
                var lap = LapCheck.Nearest(course.PieceJoints, end);
                if (lap.Nanometres < rules.MinOverlap.Nanometres - PieceCosts.DustNanometres)
                {
                    yield return new Finding(
                        FindingCodes.OverlapShort,
                        Messages.OverlapShortAtLintel(band.Number, lap, rules.MinOverlap, rules.Catalog.Units),
                        new FindingPlace { S = end, Z = band.Bottom, Course = band.Number });
                }
            }
        }
    }
}
