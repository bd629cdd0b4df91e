using IfcCourser.Catalogs;
using IfcCourser.Layouts;
using IfcCourser.Output.Ordering;
using IfcCourser.Output.Sheets.Plans;

namespace IfcCourser.Output.Sheets.Staging;

/// <summary>The packs of a storey with what their plan needs of the layout.</summary>
internal sealed class StagingFacts
{
    private readonly ImmutableArray<OrderKey> _products;
    private readonly OrderText _order;

    public StagingFacts(Layout layout, string? storey)
    {
        Plan = new PlanFacts(layout, storey, 0);
        _order = new OrderText(layout.Rules);
        _products = [.. layout.Order!.Staging.Select(pack => pack.Product).Distinct()];
        Packs = [.. layout.Order.Staging.Where(pack => string.Equals(pack.Storey, storey, StringComparison.Ordinal))];
        Data = layout.Rules.Catalog.Ordering.Staging!;
    }

    public PlanFacts Plan { get; }

    public StagingData Data { get; }

    /// <summary>By number.</summary>
    public ImmutableArray<StagedPack> Packs { get; }

    public bool HasDeliveries => Packs.Any(pack => pack.Delivery.Length > 0);

    /// <summary>Products on this storey, with their letters and how many packs there are of each.</summary>
    public IEnumerable<(string Letter, string What, string Width, int Packs)> Products => Packs.GroupBy(pack => pack.Product)
        .Select(group => (Letter(group.Key), _order.Size(group.Key), Plan.Text.Piece(group.Key.Width!.Value), group.Count()))
        .OrderBy(product => product.Item1.Length).ThenBy(product => product.Item1, StringComparer.Ordinal);

    /// <summary>As on the plan: number and letter of the product, 12 A.</summary>
    public string Mark(StagedPack pack) => FormattableString.Invariant($"{pack.Number} {Letter(pack.Product)}");

    public string Wall(string globalId) => Plan.Layout.Walls.First(wall => wall.Identity.GlobalId == globalId) is var wall ? Plan.NumberOf(wall) : string.Empty;

    public ImmutableArray<Point> Loop(StagedPlace place) => [.. place.Loop(Data).Select(Plan.At)];

    /// <summary>A to Z, then AA; the same over all storeys.</summary>
    private string Letter(OrderKey product)
    {
        const int Letters = 26;
        var (place, text) = (_products.IndexOf(product), string.Empty);
        for (; place >= 0; place = (place / Letters) - 1)
        {
            text = (char)('A' + (place % Letters)) + text;
        }

        return text;
    }
}
