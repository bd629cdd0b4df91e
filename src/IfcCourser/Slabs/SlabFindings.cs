using IfcCourser.Findings;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Slabs;

/// <summary>What the crew must know about a slab's readings.</summary>
internal static class SlabFindings
{
    /// <summary>mm: control points off by more are told. Common practice, no source.</summary>
    private const double ControlTold = 10;

    /// <param name="unread">Blocks far from every reading.</param>
    public static IEnumerable<Finding> Of(SlabSurvey survey, ReadingsFile file, int unread)
    {
        var (units, readings) = (survey.Layout.Rules.Catalog.Units, survey.Readings);
        var outOfRange = survey.Beds.Where(bed => bed.High > 0 || bed.Low > 0).ToArray();
        if (survey.Remedies.Length > 1)
        {
            yield return new Finding(FindingCodes.SlabOutOfLevel, Messages.SlabOutOfLevel(survey, units));
        }

        foreach (var bed in outOfRange)
        {
            yield return new Finding(FindingCodes.BedOutOfRange, Messages.BedOut(bed, units), new FindingPlace { S = bed.Block.Piece.From, Course = 1, Piece = bed.Block.Piece.Id });
        }

        foreach (var change in survey.BondChanges)
        {
            yield return new Finding(FindingCodes.BondAroundBars, Messages.BondAroundBars(change));
        }

        foreach (var bar in survey.Bars.Where(bar => bar.Answer == BarAnswer.Left))
        {
            yield return new Finding(FindingCodes.BarOutOfPlace, Messages.BarOut(bar, units), new FindingPlace { S = bar.Core.At, Core = bar.Core.Id });
        }

        foreach (var finding in AboutReadings(survey, file, unread, units))
        {
            yield return finding;
        }

        var tolerances = survey.Layout.Rules.Set.Tolerances;
        if (readings.Heights != ReadingHeights.Bench && tolerances.SlabLevel is { } limit && -survey.Field.Blocks.SelectMany(block => block.Facets.SelectMany(facet => facet.Corners.Select(corner => corner.Value - Bed(block))))
            .Aggregate(0.0, (most, off) => Math.Abs(off) > Math.Abs(most) ? off : most) is var off && Math.Abs(off) > limit.Mm)
        {
            yield return new Finding(FindingCodes.SlabOffLevel, Messages.SlabOffLevel(off, limit, tolerances.SourceOf(SlabTolerancesReader.SlabLevel), units));
        }

        yield return new Finding(FindingCodes.FlatnessNotJudged, Messages.FlatnessNotJudged);
    }

    private static IEnumerable<Finding> AboutReadings(SlabSurvey survey, ReadingsFile file, int unread, UnitSystem units)
    {
        var readings = survey.Readings;
        if (readings.Heights == ReadingHeights.Bench)
        {
            yield return new Finding(FindingCodes.HeightsOfBench, Messages.HeightsOfBench(readings.Zero, units));
        }

        if (survey.Beds.Count(bed => bed.IsOutside) is > 0 and var outside)
        {
            yield return new Finding(FindingCodes.BedBeyondReadings, Messages.BedBeyondReadings(outside));
        }

        if (unread > 0)
        {
            yield return new Finding(FindingCodes.ReadingsSparse, Messages.ReadingsSparse(unread));
        }

        if (readings.Fit?.Residuals.Where(residual => residual.Off.Length > ControlTold).ToArray() is { Length: > 0 } off)
        {
            yield return new Finding(FindingCodes.ControlPointOff, Messages.ControlPointsOff(off, units));
        }

        if (file.NotShot > 0)
        {
            yield return new Finding(FindingCodes.PointsNotShot, Messages.PointsNotShot(file.NotShot));
        }

        if (!file.OtherColumns.IsEmpty)
        {
            yield return new Finding(FindingCodes.ReadingColumnIgnored, Messages.ReadingColumnsIgnored(file.OtherColumns));
        }
    }

    private static double Bed(BlockFacets block) => block.Block.Underside - block.Block.Wall.Frame.Origin.Z;
}
