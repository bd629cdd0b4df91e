using System.Collections.Immutable;
using IfcCourser.Layouts;
using IfcCourser.Output.Sheets;

namespace IfcCourser.Cli.Commands;

/// <summary>Which paper the sheets of a set take.</summary>
/// <param name="Given">The paper that every sheet takes; null where each takes what it needs.</param>
internal sealed record PaperChoice(PaperSize? Given)
{
    /// <summary>Sizes to choose from, smallest first.</summary>
    public ImmutableArray<PaperSize> For(Layout layout) => Given is { } paper ? [paper] : PaperSize.For(layout.Rules.Catalog.Units);
}
