using IfcCourser.Catalogs;

namespace IfcCourser.Slabs;

/// <summary>Units of other heights in the first course, so that its top is level and every bed within its limits.</summary>
internal static class UnitHeights
{
    private const double Dust = 1e-6;

    /// <summary>
    /// The height of the course that needs the fewest such units, none where the bed takes all; null where no height will do. Each block allows the heights at which one of the units
    /// keeps its bed within the limits; what all allow changes only where one of these ranges begins or ends.
    /// </summary>
    public static SlabRemedy? Of(BedField field, Catalog catalog)
    {
        double[] steps = [0, .. catalog.OtherHeights.Select(height => (height - catalog.UnitHeight).Mm)];
        var blocks = field.Blocks.Select(block => (Block: block, Least: Values(block).Min(), Most: Values(block).Max(), Area: block.Facets.Sum(facet => facet.Area))).ToArray();
        var raised = blocks.SelectMany(block => steps.Select(step => field.Limits.Min.Mm - block.Least + step)).Distinct().Order();
        SlabRemedy? best = null;
        foreach (var at in raised)
        {
            var chosen = blocks.Select(block => (block.Area, Step: Step(block.Least, block.Most, at))).ToArray();
            if (chosen.Any(block => block.Step is null))
            {
                continue;
            }

            var others = chosen.Where(block => block.Step != 0).ToArray();
            if (best is null || others.Length < best.Blocks)
            {
                best = new SlabRemedy(
                    RemedyKind.OtherUnits, at, others.Select(block => Math.Abs(block.Step!.Value)).DefaultIfEmpty(0).Max(), others.Sum(block => block.Area),
                    others.Sum(block => block.Area * Math.Abs(block.Step!.Value)),
                    field.Room(at) - chosen.Sum(block => block.Area * block.Step!.Value), others.Length, IsPossible: true, 0);
            }
        }

        return best;

        double? Step(double least, double most, double at) => steps
            .Where(step => least + at - step >= field.Limits.Min.Mm - Dust && most + at - step <= field.Limits.Max.Mm + Dust)
            .OrderBy(Math.Abs).Select(step => (double?)step).FirstOrDefault();
    }

    private static IEnumerable<double> Values(BlockFacets block) => block.Facets.SelectMany(facet => facet.Corners).Select(corner => corner.Value);
}
