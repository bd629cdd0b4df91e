using System.Collections.Immutable;
using IfcCourser.Findings;
using IfcCourser.Layouts;
using IfcCourser.Modules;
using IfcCourser.Rules;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Runs;

/// <summary>What is to be told of a wall's openings along its run: moved ones, and ones off the module with the nearest cure.</summary>
internal static class OpeningFindings
{
    public static IEnumerable<Finding> Of(Wall wall, ImmutableArray<OpeningLayout> openings, ModuleLines lines, LayoutRules rules)
    {
        var refused = new RefusedMoves(wall, openings, lines, rules);
        return openings.Where(opening => opening.Interrupts && !opening.Opening.IsFixed)
            .SelectMany(opening => Moved(opening, rules).Concat(OffModule(opening, refused, rules)));
    }

    /// <summary>What a designer calls an opening.</summary>
    public static string NameOf(OpeningLayout opening) => opening.Opening.Label;

    public static FindingPlace PlaceOf(OpeningLayout opening) => new()
    {
        S = opening.Placed.Left,
        Z = opening.Placed.Bottom,
        Opening = opening.Opening.GlobalId,
    };

    private static IEnumerable<Finding> Moved(OpeningLayout opening, LayoutRules rules)
    {
        var (design, placed) = (opening.Design, opening.Placed);
        if (design == placed)
        {
            yield break;
        }

        var units = rules.Catalog.Units;
        var (sill, head) = (placed.Bottom - design.Bottom, placed.Top - design.Top);
        yield return new Finding(
            FindingCodes.OpeningMoved,
            placed.Width == design.Width
                ? Messages.OpeningMoved(NameOf(opening), placed.Left - design.Left, sill, head, units)
                : Messages.OpeningResized(NameOf(opening), placed.Left - design.Left, placed.Right - design.Right, sill, head, units),
            PlaceOf(opening));
    }

    private static IEnumerable<Finding> OffModule(OpeningLayout opening, RefusedMoves refused, LayoutRules rules)
    {
        if (opening.OnModule)
        {
            yield break;
        }

        var units = rules.Catalog.Units;
        var both = refused.BothJambs(opening);
        var widening = Length.Abs(both.Widening) > rules.ModuleTolerance ? both.Widening : Length.Zero;
        var cure = Messages.OffModule(NameOf(opening), both.Shift.Left, widening, RefusedMoves.Said(both, rules), units);
        yield return new Finding(
            FindingCodes.OpeningOffModule,
            both.Why == Refusal.Widens && refused.OneJamb(opening) is { } one
                ? cure + Messages.OneJambOffModule(one.Shift.Left == Length.Zero ? one.Shift.Right : one.Shift.Left, RefusedMoves.Said(one, rules), units)
                : cure,
            PlaceOf(opening));
    }
}
