using ReferenceOptimum.Problems;

namespace ReferenceOptimum.Solving;

/// <summary>The cells of the cut grid over a block.</summary>
/// <param name="Origin">Place of cell 0, in nanometres.</param>
/// <param name="Cells">Cells in the block's run.</param>
/// <param name="Slack">By how much less than so many cells rounding moves a doubled centre down: 0 where all of the block is on the grid.</param>
internal readonly record struct CellGrid(long Origin, int Cells, int Slack)
{
    public static CellGrid Of(Block block) => new(
        block.Origin,
        (int)((block.Stretches.Max(stretch => stretch.To) - block.Origin) / block.Sizes.Grid),
        Scale.Of(block).Unit == block.Sizes.Grid ? 0 : 2);
}
