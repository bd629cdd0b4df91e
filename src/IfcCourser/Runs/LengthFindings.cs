using IfcCourser.Findings;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Runs;

/// <summary>A wall whose length is off the module by more than its head joints take.</summary>
internal static class LengthFindings
{
    public static IEnumerable<Finding> Of(LengthCheck? check, LayoutRules rules)
    {
        if (check is { IsTaken: false } && check.Way != Length.Zero)
        {
            var joint = rules.Catalog.HeadJoint.Nominal;
            yield return new Finding(
                FindingCodes.WallLengthOffModule,
                check.Length - check.Under == joint
                    ? Messages.LengthNominal(check, joint, rules.Catalog.Units)
                    : Messages.LengthOffModule(check, rules.Catalog.Units),
                new FindingPlace { S = check.Length });
        }
    }
}
