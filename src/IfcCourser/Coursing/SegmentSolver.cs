using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>
/// Fills one segment of a course exactly: the cheapest sequence of pieces and head joints. Full units take any joint width within
/// the limits, cut pieces the nominal one, which any length before it does as well with, but where a joint stands between others that leave it
/// less than a cell or two: where cuts are left, joints of all widths after them are tried. What the rest of a segment costs at least is known from tables, so that only those
/// beginnings are followed that can end below a limit; the limit is raised until something does.
/// Not for use by several threads at once.
/// </summary>
/// <remarks>
/// A segment that is no whole number of cells long puts its remainder into the last joint, or, where joints have no
/// play, into the last piece, which is then cut; a segment of one piece is cut to its exact length.
/// </remarks>
internal sealed class SegmentSolver
{
    private readonly LayoutRules _rules;
    private readonly RestTables _tables;
    private readonly PieceCosts _costs;
    private readonly CellSizes _sizes;
    private readonly BondAims _aims;
    private readonly SegmentSearch _search;
    private readonly BondEffort _effort;

    /// <summary>What was found for a segment, and below which cost it was sought.</summary>
    private readonly Dictionary<SegmentTask, (ImmutableArray<Interval>? Pieces, long Limit)> _found = [];

    /// <param name="rules">Catalog and rules.</param>
    /// <param name="tables">Shared with the solvers of other walls of the run.</param>
    /// <param name="effort">Counts what the searches do.</param>
    public SegmentSolver(LayoutRules rules, RestTables tables, BondEffort effort)
    {
        (_rules, _tables, _effort, _aims) = (rules, tables, effort, rules.Set.Aims);
        (_costs, _sizes) = (new PieceCosts(rules), new CellSizes(rules));
        _search = new SegmentSearch(_sizes, _aims);
    }

    /// <summary>The pieces of a cheapest filling, from the segment's start; null where none is cheaper than a known one.</summary>
    /// <param name="task">The segment.</param>
    /// <param name="known">Cost of a filling that is known; what can't come below it is not searched.</param>
    public ImmutableArray<Interval>? Solve(SegmentTask task, long known = RestCosts.Unreachable)
    {
        // Other attempts at the wall ask for the same segments again.
        if (!_found.TryGetValue(task, out var found) || (found.Pieces is null && found.Limit < known))
        {
            found = (Sought(task, known), known);
            _found[task] = found;
        }

        return found.Pieces is { } pieces && (known <= found.Limit && _costs.Of(pieces, task) >= known) ? null : found.Pieces;
    }

    private ImmutableArray<Interval>? Sought(SegmentTask task, long known)
    {
        var whole = new Interval(Length.Zero, task.Size);
        var single = _costs.IsTooLong(whole) ? RestCosts.Unreachable : _costs.Of(whole, task);
        return Several(task, Math.Min(known, single)) ?? (single < known || known == RestCosts.Unreachable ? [whole] : null);
    }

    /// <summary>The cheapest filling of several pieces that costs less than a limit.</summary>
    private ImmutableArray<Interval>? Several(SegmentTask task, long limit)
    {
        var grid = SegmentGrid.Of(task.Size, _sizes);
        if (grid.Target < 2)
        {
            return null;
        }

        var rest = _tables.Of(_rules, _sizes, task.End, grid).UpTo(grid.Target);
        var least = rest.More[grid.Target];
        _search.Prepare(task, grid, rest);
        var nominal = Cheapest(limit, least);
        var saving = (nominal is { } known ? _costs.Of(known, task) : limit) - (_aims.Cut / 2);
        if (least >= saving || !_effort.MayWiden || (nominal is null && limit == RestCosts.Unreachable))
        {
            return nominal;
        }

        _search.Prepare(task, grid, rest, isWide: true);
        var wide = Cheapest(saving, least);
        _effort.SpendWide(_search.Laid);
        return wide ?? nominal;
    }

    private ImmutableArray<Interval>? Cheapest(long limit, long least)
    {
        foreach (var slack in (ReadOnlySpan<long>)[_aims.Short, 2 * _aims.Cut, BondAims.Breach, RestCosts.Unreachable])
        {
            var tried = Math.Min(limit, least + slack);
            var found = _search.Cheapest(tried);
            _effort.SpendPieces(_search.Laid);
            if (found is { } pieces)
            {
                return pieces;
            }

            if (tried == limit)
            {
                break;
            }
        }

        return null;
    }
}
