using System.Collections.Immutable;
using IfcCourser.Findings;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Slabs;

/// <summary>Turns readings of a slab into a datum, the bed under each block of the first course, and what to do about highs and lows.</summary>
public static class SlabSurveys
{
    /// <summary>mm: further than this from every reading the slab is guessed; readings are asked for every 8 ft or 2.5 m.</summary>
    private const double Sparse = 1800;

    /// <param name="layout">Of the model.</param>
    /// <param name="file">Readings of one storey's slab.</param>
    /// <param name="storey">Its name; null for the lowest with blocks.</param>
    /// <param name="thickest">The bed at most; null where the catalog's limit counts.</param>
    /// <param name="around">Measured bars and what the bond does about them, where that is known; null where bars are only held to the layout.</param>
    public static Outcome<SlabSurvey> Of(Layout layout, ReadingsFile file, string? storey, Length? thickest, (ImmutableArray<BarAsBuilt> Bars, ImmutableArray<BondChange> Changes)? around = null)
    {
        var found = StoreyBlocks.Of(layout, storey);
        if (!found.IsOk)
        {
            return found.Fault;
        }

        var (name, blocks) = (found.Value.Storey, found.Value.Blocks);
        var placed = new ReadingPlacer(file, layout, blocks).Place(ReadingCode.Slab);
        if (!placed.IsOk)
        {
            return placed.Fault;
        }

        var readings = placed.Value;
        var bars = BarsAsBuilt.Of(readings, layout, file.File);
        if (!bars.IsOk)
        {
            return bars.Fault;
        }

        if (SlabSurface.Of([.. readings.Levels.Select(reading => reading with { Height = reading.Height - readings.Zero })]) is not { } surface)
        {
            return Messages.ReadingsTooFew(file.File, readings.Levels.Length, file.NotShot);
        }

        var limits = layout.Rules.Catalog.LevellingBed;
        if (thickest < limits.Min)
        {
            return Messages.BedMaxTooThin(limits.Min, layout.Rules.Catalog.Units);
        }

        limits = limits with { Max = thickest ?? limits.Max };
        var field = new BedField([.. blocks.Select(block => BlockFacets.Of(block, surface))], limits);
        var remedies = SlabRemedies.Of(field, layout.Rules.Catalog);
        var beds = field.Blocks.Select(block => Bed(block, limits, remedies[0].Raised)).ToImmutableArray();
        var survey = new SlabSurvey
        {
            Layout = layout,
            Storey = name,
            Readings = readings,
            Surface = surface,
            Field = field,
            Remedies = remedies,
            Beds = beds,
            Bars = around?.Bars ?? bars.Value.Bars,
            BondChanges = around?.Changes ?? [],
            Tolerances = [.. Tolerances(blocks, readings, around?.Bars ?? bars.Value.Bars, layout.Rules)],
            Findings = [],
        };
        return survey with { Findings = [.. SlabFindings.Of(survey, file, Unread(blocks, readings))] };
    }

    private static IEnumerable<ToleranceCheck> Tolerances(ImmutableArray<FirstCourseBlock> blocks, PlacedReadings readings, ImmutableArray<BarAsBuilt> bars, LayoutRules rules) =>
        new[] { ControlLengths.Of(readings.Fit, rules.Set.Tolerances), SlabFlatness.Of([.. blocks.Select(block => block.Wall).Distinct()], readings, rules.Set.Tolerances, rules.Catalog.Units), BarsAsBuilt.Tolerance(bars, rules.Set.Tolerances) }.OfType<ToleranceCheck>();

    private static BlockBed Bed(BlockFacets block, LengthRange limits, double raised)
    {
        var corners = block.Facets.SelectMany(facet => facet.Corners).ToArray();
        var (least, most) = (corners.Min(corner => corner.Value) + raised, corners.Max(corner => corner.Value) + raised);
        const double Dust = 1e-6;
        return new BlockBed(
            block.Block, least, most, raised + (block.Facets.Sum(facet => facet.Volume) / block.Facets.Sum(facet => facet.Area)),
            limits.Min.Mm - least > Dust ? limits.Min.Mm - least : 0, most - limits.Max.Mm > Dust ? most - limits.Max.Mm : 0, block.Outside > 0);
    }

    private static int Unread(ImmutableArray<FirstCourseBlock> blocks, PlacedReadings readings) =>
        blocks.Count(block => readings.Levels.All(reading => (reading.Plan - block.Middle).Length > Sparse));
}
