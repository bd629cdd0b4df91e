using System.Collections.Immutable;
using IfcCourser.Catalogs;
using IfcCourser.Coursing;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Runs;

/// <summary>Which courses of a wall are asked to be bond beams: those chosen with the course lines, and those over and under openings.</summary>
internal sealed class BeamRequests(WallLines lines, ImmutableArray<OpeningLayout> openings, ImmutableArray<Lintel> lintels, LayoutRules rules)
{
    private readonly ImmutableArray<CourseBand> _bands = lines.Bands;

    public IEnumerable<BeamRequest> Of(BondBeamRule rule)
    {
        foreach (var beam in lines.Beams)
        {
            foreach (var why in beam.Why)
            {
                yield return new BeamRequest(beam.Line - _bands[0].Line, why, null);
            }
        }

        if (rule.Openings is not { } asked)
        {
            yield break;
        }

        foreach (var opening in openings.Where(opening => opening.Interrupts && opening.Placed.Width >= asked.From && opening.Placed.Height >= asked.From))
        {
            if (asked.Over)
            {
                yield return new BeamRequest(Over(opening), "over-opening", opening);
            }

            if (asked.Under && opening.Placed.Bottom > _bands[0].Bottom)
            {
                yield return new BeamRequest(Under(opening.Placed.Bottom), "under-opening", opening);
            }
        }
    }

    /// <summary>The course of the trough lintel or formed beam, or the next whole course over the head or its solid lintel.</summary>
    private int? Over(OpeningLayout opening)
    {
        var head = opening.Placed;
        var lintel = lintels.Where(lintel => lintel.From <= head.Left && lintel.To >= head.Right && lintel.Bottom >= head.Top).MinBy(lintel => lintel.Bottom);
        if (lintel is { Kind: not LintelKind.Solid } && First(band => band.Bottom == lintel.Bottom && IsWhole(band)) is { } own)
        {
            return own;
        }

        var from = lintel?.Top ?? head.Top;
        return First(band => band.Bottom >= from) is { } next && IsWhole(_bands[next]) ? next : null;
    }

    /// <summary>The highest whole course under a sill; pieces of less height may lie between.</summary>
    private int? Under(Length sill)
    {
        var under = Enumerable.Range(0, _bands.Length).Where(i => _bands[i].Top <= sill + rules.Catalog.BedJoint.Nominal && IsWhole(_bands[i])).ToList();
        return under.Count > 0 && sill - _bands[under[^1]].Top < rules.Catalog.CoursePitch ? under[^1] : null;
    }

    private int? First(Func<CourseBand, bool> where) => Enumerable.Range(0, _bands.Length).Where(i => where(_bands[i])).Select(i => (int?)i).FirstOrDefault();

    private bool IsWhole(CourseBand band) => band.Height == rules.Catalog.UnitHeight;
}
