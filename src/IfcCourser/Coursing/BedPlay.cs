using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>
/// How far the levelling beds of a group may be from the nominal bed when its lines are chosen: half of the way to their
/// limits, the other half is kept for the slab; further, where that puts more first courses whole over a stepped slab.
/// </summary>
internal sealed class BedPlay(LayoutRules rules)
{
    private readonly CourseFit _fit = new(rules);
    private readonly LengthRange _bed = rules.Catalog.LevellingBed;

    /// <summary>The limits of the levelling beds over the bases of walls that share lines.</summary>
    public LengthRange LimitsOver(IReadOnlyCollection<Length> bases)
    {
        var play = _bed.Max - _bed.Min;
        var spread = SpreadOver(bases);
        return spread * 2 <= play
            ? _bed with { Min = _bed.Nominal - ((_bed.Nominal - _bed.Min) / 2), Max = _bed.Nominal + ((_bed.Max - _bed.Nominal) / 2) }
            : _bed with { Min = _bed.Nominal - Share(_bed.Nominal - _bed.Min, spread, play), Max = _bed.Nominal + Share(_bed.Max - _bed.Nominal, spread, play) };
    }

    /// <summary>By how much the beds differ where as many walls as possible have an uncut first course.</summary>
    private Length SpreadOver(IReadOnlyCollection<Length> bases)
    {
        var (most, least) = (0, Length.Zero);
        foreach (var start in bases.SelectMany(StartsOver).Distinct())
        {
            var lines = new CourseLines(start, rules.Catalog);
            var beds = bases.SelectMany(wallBase => _fit.Feet(wallBase, _bed, lines).Where(foot => !foot.IsCut).Take(1).Select(foot => foot.Bottom - wallBase)).ToList();
            var spread = beds.Count == 0 ? Length.Zero : beds.Max() - beds.Min();
            if (beds.Count > most || (beds.Count == most && spread < least))
            {
                (most, least) = (beds.Count, spread);
            }
        }

        return least;
    }

    /// <summary>Lines at which a base begins or ceases to allow an uncut first course.</summary>
    private IEnumerable<Length> StartsOver(Length wallBase) => rules.Catalog.OtherHeights
        .Prepend(rules.Catalog.UnitHeight)
        .SelectMany(height => new[] { _bed.Min, _bed.Max }.Select(bed => wallBase + bed + height + rules.Catalog.BedJoint.Nominal));

    /// <summary>A share of a length, rounded up so that the spread fits.</summary>
    private static Length Share(Length side, Length spread, Length play) =>
        new((long)decimal.Ceiling((decimal)side.Nanometres * spread.Nanometres / play.Nanometres));
}
