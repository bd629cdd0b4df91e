using IfcCourser.Comparing;
using IfcCourser.Layouts;

namespace IfcCourser.Output.Sheets.Walls;

/// <summary>Which walls stand on which sheet: neighbours in number of a storey share one where it holds them at the scale that each would have alone; walls too long to be read on one take several.</summary>
internal static class WallPages
{
    /// <summary>By the number of their first wall.</summary>
    /// <param name="since">What changed since the last issue, or null.</param>
    public static ImmutableArray<WallPage> Of(Layout layout, ImmutableArray<PaperSize> papers, Reissue? since = null)
    {
        WallPage[] alone =
        [
            // In parallel sheets only: no program compiled ahead of time can hold all that SelectMany in parallel may become.
            .. layout.Walls.AsParallel().AsOrdered()
                .Select(wall => WallDivision.Of(WallPage.Alone(new WallFacts(layout, wall, null, since?.For(wall)), papers), papers))
                .AsSequential().SelectMany(pages => pages),
        ];
        return
        [
            .. alone.OrderBy(page => page.Views[0].Facts.Number)
                .GroupBy(page => page.Views[0].Facts.Wall.Identity.Storey, StringComparer.Ordinal)
                .AsParallel().AsOrdered().Select(storey => Shared(storey, papers).ToArray())
                .AsSequential().SelectMany(pages => pages)
                .OrderBy(page => page.Views[0].Facts.Number),
        ];
    }

    private static IEnumerable<WallPage> Shared(IEnumerable<WallPage> alone, ImmutableArray<PaperSize> papers)
    {
        WallPage? open = null;
        foreach (var page in alone)
        {
            var joined = open is null ? page : WallPage.Joined(open, page, papers);
            if (joined is null)
            {
                yield return open!;
            }

            open = joined ?? page;
        }

        if (open is not null)
        {
            yield return open;
        }
    }
}
