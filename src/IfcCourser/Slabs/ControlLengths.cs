using IfcCourser.Rules;

namespace IfcCourser.Slabs;

/// <summary>Distances between control points as measured beside those of the plan: they tell a slab or a point that is not where it was drawn, whichever fit is taken.</summary>
internal static class ControlLengths
{
    /// <summary>The pair that comes nearest to its limit or passes it most; null without control points, or where the rule set has no limit.</summary>
    public static ToleranceCheck? Of(ControlFit? fit, SlabTolerances tolerances)
    {
        if (fit is null || tolerances.PlanLengths is not { } limits)
        {
            return null;
        }

        var source = tolerances.SourceOf(SlabTolerancesReader.PlanLengths);
        var pairs =
            from first in fit.Residuals.Select((control, i) => (control, i))
            from second in fit.Residuals.Skip(first.i + 1)
            let planned = second.Place - first.control.Place
            let limit = limits.RowOf(planned.Length)
            where limit is not null
            select new ToleranceCheck(
                Messages.ControlApart(first.control.Point, second.Point), Math.Abs((planned + second.Off - first.control.Off).Length - planned.Length), limit!.Value.Limit.Mm, source);
        return pairs.MaxBy(pair => pair.Value / pair.Limit);
    }
}
