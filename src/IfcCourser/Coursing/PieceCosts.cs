using System.Collections.Immutable;
using IfcCourser.Catalogs;
using IfcCourser.Geometry;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>What pieces and joints cost, by the rule set's aims.</summary>
internal sealed class PieceCosts(LayoutRules rules)
{
    /// <summary>Distances are compared with this dust: a joint exactly at a limit is allowed.</summary>
    public const long DustNanometres = 5_000;

    private readonly Catalog _catalog = rules.Catalog;
    private readonly BondAims _aims = rules.Set.Aims;

    public bool IsTooLong(Interval piece) => piece.Size > _catalog.UnitLength;

    public bool IsCutInLength(Interval piece) => piece.Size != _catalog.UnitLength && !_catalog.PartLengths.Contains(piece.Size);

    /// <summary>Cost of a row of pieces that fills a segment, joints included.</summary>
    public long Of(ImmutableArray<Interval> pieces, SegmentTask task)
    {
        var cost = pieces.Sum(piece => Of(piece, task));
        for (var i = 1; i < pieces.Length; i++)
        {
            var (from, to) = (pieces[i - 1].To, pieces[i].From);
            var step = Length.Abs(to - from - _catalog.HeadJoint.Nominal).Nanometres / _catalog.CutGrid.Nanometres;
            cost += (step * _aims.JointStep) + AtJoint((from + to) / 2, task.Zones);
        }

        return cost;
    }

    /// <summary>Cost of a piece of a segment by its length and place.</summary>
    public long Of(Interval piece, SegmentTask task)
    {
        var (isFirst, isLast) = (piece.From == Length.Zero, piece.To == task.Size);
        var cost = 0L;
        if (IsCutInLength(piece))
        {
            cost += _aims.Cut + (piece.Size < rules.MinPiece ? BondAims.Breach : piece.Size < rules.PreferredPiece ? _aims.Short : 0);
            cost += (isFirst ? task.Start.CutCost : 0) + (isLast ? task.End.CutCost : 0);
        }
        else if (piece.From < task.Start.Raked || piece.To > task.Size - task.End.Raked)
        {
            cost += _aims.Cut;
        }

        return cost
            + (isFirst && piece.Size < task.Start.Least ? _aims.ShortAtRake : 0)
            + (isLast && piece.Size < task.End.Least ? _aims.ShortAtRake : 0);
    }

    /// <summary>What a joint's place costs.</summary>
    public static long AtJoint(Length centre, ImmutableArray<JointZone> zones)
    {
        var cost = 0L;
        foreach (var zone in zones)
        {
            var dust = zone.Cost < 0 ? 0 : DustNanometres;
            cost += Length.Abs(centre - zone.Centre).Nanometres < zone.Reach.Nanometres - dust ? zone.Cost : 0;
        }

        return cost;
    }
}
