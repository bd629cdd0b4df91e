using IfcCourser.Findings;
using IfcCourser.Layouts;
using IfcCourser.Modules;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>What is to be told of a lintel: short bearings, a beam to be formed, a place in mid-course.</summary>
internal static class LintelFindings
{
    public static Finding Missing(OpeningLayout opening, string message) => new(FindingCodes.LintelMissing, message, At(opening));

    public static IEnumerable<Finding> Of(LintelFit fit, LintelFitter fitter, LayoutRules rules)
    {
        var units = rules.Catalog.Units;
        var bearing = LintelChoice.BearingOf(fit.Product, rules);
        foreach (var (has, beside) in new[] { (fit.BearingLeft, fit.Carried[0]), (fit.BearingRight, fit.Carried.MaxBy(opening => opening.Placed.Right)!) })
        {
            if (has < bearing)
            {
                yield return new Finding(FindingCodes.BearingShort, Messages.BearingShort(has, bearing, units), At(beside));
            }
        }

        if (fit.Product is null)
        {
            yield return new Finding(
                FindingCodes.LintelFormed,
                fitter.IsServed(fit.Carried)
                    ? Messages.LintelLacksRoom(fit.Heights.Size, units)
                    : Messages.LintelFormed(fitter.Clear(fit.Carried), rules.Set.LintelLoadClass, units),
                At(fit.Carried[0]));
        }

        if (fit.Rows.Seat > Length.Zero || fit.Rows.Closer > Length.Zero)
        {
            yield return new Finding(
                FindingCodes.LintelInMidCourse, Messages.LintelInMidCourse(fit.Rows.Seat, fit.Rows.Closer, units), At(fit.Carried[0]));
        }
    }

    private static FindingPlace At(OpeningLayout opening) => new()
    {
        Opening = opening.Opening.GlobalId,
        S = opening.Placed.Left,
        Z = opening.Placed.Top,
    };
}
