using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>The searches of one wall's bond, for all attempts at it. Not for use by several threads at once.</summary>
internal sealed class BondSolvers
{
    /// <param name="thickness">The wall's.</param>
    /// <param name="rules">Catalog and rules.</param>
    /// <param name="tables">Shared with other walls of the run.</param>
    public BondSolvers(Length thickness, LayoutRules rules, RestTables tables)
    {
        (Rules, Costs, Laps) = (rules, new PieceCosts(rules), new RowLaps(thickness, rules));
        Segments = new SegmentSolver(rules, tables, Effort);
        Pairs = new PairSolver(Laps, Effort, rules);
    }

    public LayoutRules Rules { get; }

    public PieceCosts Costs { get; }

    public RowLaps Laps { get; }

    public SegmentSolver Segments { get; }

    public PairSolver Pairs { get; }

    /// <summary>What the searches may do, all attempts together.</summary>
    public BondEffort Effort { get; } = new();
}
