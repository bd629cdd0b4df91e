using System.Collections.Immutable;
using IfcCourser.Layouts;
using IfcCourser.Units;

namespace IfcCourser.Takeoff;

/// <summary>
/// Saws pieces out of the fewest units. A unit is first ripped into strips, if pieces in it are lower than the unit, then each strip is cut to length; a strip
/// holds pieces of one height. Every cut takes the kerf. A raked or notched piece takes the rectangle around it.
/// </summary>
internal static class SawLists
{
    /// <summary>
    /// The list of a layout; units are numbered as the walls go up, delivery by delivery, storey by storey: a unit comes with the first piece that is sawn from it.
    /// </summary>
    public static SawList Of(Layout layout, OffcutReuse reuse, ImmutableArray<DeliveryPhase> phases)
    {
        var catalog = layout.Rules.Catalog;
        var cuts = LayingOrder.Of(layout, phases)
            .SelectMany(wall => wall.Courses.SelectMany(course => course.Pieces.Select(piece => (Wall: wall, Course: course, Piece: piece))))
            .Where(cut => cut.Piece.Cut != Cuts.None)
            .Select((cut, place) => new Cut(
                place, cut.Wall, Stock.Of(cut.Piece, cut.Wall, catalog), new SawnPiece(cut.Wall.Identity.GlobalId, cut.Course.Number, cut.Piece.Id, cut.Piece.Length, cut.Piece.Height)))
            .ToList();
        var (units, least) = (new List<(Stock Stock, ImmutableArray<Cut> Cuts)>(), 0);
        foreach (var group in cuts.GroupBy(cut => (Scope(cut.Wall, reuse), cut.Stock)))
        {
            var (filled, bound) = Nested([.. group], group.Key.Stock, catalog.Kerf);
            units.AddRange(filled.Select(unit => (group.Key.Stock, unit)));
            least += bound;
        }

        return new SawList(
            reuse,
            [
                .. units.OrderBy(unit => unit.Cuts[0].Place).Select((unit, i) => new SawnUnit(
                    i + 1, unit.Stock.Product, unit.Stock.Width, unit.Stock.Length, unit.Stock.Height, [.. unit.Cuts.Select(cut => cut.Piece)])),
            ],
            least);
    }

    /// <summary>What offcuts may not leave.</summary>
    private static string Scope(WallLayout wall, OffcutReuse reuse) => reuse switch
    {
        OffcutReuse.Wall => "wall " + wall.Identity.GlobalId,
        OffcutReuse.Storey => "storey " + wall.Identity.Storey,
        _ => string.Empty,
    };

    private static (ImmutableArray<ImmutableArray<Cut>> Units, int Least) Nested(ImmutableArray<Cut> cuts, Stock stock, Length kerf)
    {
        var strips = new List<ImmutableArray<Cut>>();
        var leastStrips = new List<long>();
        long High(Cut cut) => Math.Min((cut.Piece.Height + kerf).Nanometres, (stock.Height + kerf).Nanometres);
        foreach (var height in cuts.GroupBy(High))
        {
            long Long(Cut cut) => Math.Min((cut.Piece.Length + kerf).Nanometres, (stock.Length + kerf).Nanometres);
            var plan = BinPacking.Fill(height.Select(Long), (stock.Length + kerf).Nanometres);
            strips.AddRange(BinContents.Of(plan, [.. height], Long));
            leastStrips.AddRange(Enumerable.Repeat(height.Key, plan.Least));
        }

        var capacity = (stock.Height + kerf).Nanometres;
        var ordered = strips.OrderBy(strip => strip[0].Place).ToList();
        var units = BinContents.Of(BinPacking.Fill(ordered.Select(strip => High(strip[0])), capacity), ordered, strip => High(strip[0]));
        return ([.. units.Select(unit => unit.SelectMany(strip => strip).OrderBy(cut => cut.Place).ToImmutableArray())], BinPacking.Fill(leastStrips, capacity).Least);
    }

    /// <param name="Place">In the order of laying.</param>
    private sealed record Cut(int Place, WallLayout Wall, Stock Stock, SawnPiece Piece);
}
