using System.Collections.Immutable;
using ReferenceOptimum.Problems;

namespace ReferenceOptimum.Solving;

/// <summary>Pieces in every stretch of a block and twice the place of every bar.</summary>
internal sealed record BlockBond(ImmutableArray<ImmutableArray<Stretch>> Runs, ImmutableArray<long> Bars2)
{
    /// <summary>A wall's bond where it fills the block.</summary>
    public static BlockBond Of(Block block, Bond bond) => new(
        [.. block.Stretches.Select(stretch => bond.Courses[stretch.Course][stretch.Index])],
        [.. block.Bars.Select(bar => bond.Bars2[bar.Number])]);

    /// <summary>What of a block's bond lies within a window of it.</summary>
    public BlockBond Within(Block block, Block window) => new(
        [.. Runs.Where((_, i) => block.Stretches[i].Course >= window.FirstCourse && block.Stretches[i].Course <= window.LastCourse)],
        [.. window.Bars.Select(bar => Bars2[block.Bars.IndexOf(block.Bars.First(other => other.Number == bar.Number))])]);

    /// <summary>The same bond in another place.</summary>
    public BlockBond Shifted(long by) => new(
        [.. Runs.Select(run => run.Select(piece => new Stretch(piece.From + by, piece.To + by)).ToImmutableArray())],
        [.. Bars2.Select(place => place + (2 * by))]);
}
