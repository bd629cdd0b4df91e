using System.Collections.Immutable;

namespace ReferenceOptimum.Bars;

/// <summary>Where the bars of a bonded wall have to stand.</summary>
/// <param name="Options">Every bar that best bars can be made of, from left to right.</param>
/// <param name="Needs">What the rules ask for.</param>
/// <param name="Rows">Masonry that asks for bars at the largest spacing, height by height.</param>
/// <param name="Spacing2">Twice the largest spacing, nanometres.</param>
/// <param name="Given">The layout's own bars.</param>
internal sealed record BarTask(
    ImmutableArray<BarOption> Options, ImmutableArray<BarNeed> Needs, ImmutableArray<BarRow> Rows, long Spacing2, ImmutableArray<BarOption> Given);
