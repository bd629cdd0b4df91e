using System.Collections.Immutable;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>Pieces and head joints in cells of the cut grid.</summary>
internal sealed class CellSizes
{
    public CellSizes(LayoutRules rules)
    {
        var (catalog, aims) = (rules.Catalog, rules.Set.Aims);
        Cell = catalog.CutGrid;
        Unit = Of(catalog.UnitLength);
        Least = UpOf(rules.MinPiece);
        Preferred = Math.Max(Least, UpOf(rules.PreferredPiece));
        Joint = Of(catalog.HeadJoint.Nominal);
        JointMin = UpOf(catalog.HeadJoint.Min);
        JointMax = Of(catalog.HeadJoint.Max);
        Wholes = [Unit, .. catalog.PartLengths.Select(Of)];
        CutClasses =
        [
            new CutClass(Preferred, Unit - 1, aims.Cut),
            new CutClass(Least, Preferred - 1, aims.Cut + aims.Short),
            new CutClass(1, Least - 1, aims.Cut + BondAims.Breach),
        ];
        TightCuts =
        [
            .. from cuts in CutClasses
               where cuts.Longest >= cuts.Shortest
               from joint in Enumerable.Range(JointMin, Joint - JointMin)
               select new TightCut(cuts.Shortest, joint, cuts.Weight + ((Joint - joint) * aims.JointStep)),
        ];
    }

    public Length Cell { get; }

    public int Unit { get; }

    public int Least { get; }

    public int Preferred { get; }

    public int Joint { get; }

    public int JointMin { get; }

    public int JointMax { get; }

    /// <summary>Pieces that need no cut: the unit, and parts that can be bought.</summary>
    public ImmutableArray<int> Wholes { get; }

    public ImmutableArray<CutClass> CutClasses { get; }

    /// <summary>
    /// Cut pieces with another joint after them than the nominal one. A longer or shorter piece does as well but where it is the shortest
    /// of its class before a narrower joint: the longest before a wider one costs more than one of the next class.
    /// </summary>
    public ImmutableArray<TightCut> TightCuts { get; }

    /// <summary>What a cut piece costs; null where none is so long.</summary>
    public long? CutWeight(int length)
    {
        foreach (var cuts in CutClasses)
        {
            if (length >= cuts.Shortest && length <= cuts.Longest)
            {
                return cuts.Weight;
            }
        }

        return null;
    }

    /// <summary>Whole cells in a length.</summary>
    public int Of(Length length) => (int)(length / Cell);

    /// <summary>Cells that cover a length.</summary>
    public int UpOf(Length length) => Of(length.CeilingTo(Cell));

    /// <summary>Cut pieces of one cost.</summary>
    /// <param name="Shortest">In cells.</param>
    /// <param name="Longest">In cells; less than <paramref name="Shortest"/> where there are none.</param>
    /// <param name="Weight">What such a piece costs.</param>
    public readonly record struct CutClass(int Shortest, int Longest, long Weight);

    /// <summary>A cut piece and the joint after it.</summary>
    /// <param name="Length">Of the piece, in cells.</param>
    /// <param name="Joint">In cells.</param>
    /// <param name="Weight">What both cost.</param>
    public readonly record struct TightCut(int Length, int Joint, long Weight);
}
