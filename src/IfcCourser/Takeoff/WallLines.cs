using IfcCourser.Catalogs;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Takeoff;

/// <summary>What walls take, wall by wall: each line as often as it occurs, to be summed.</summary>
internal sealed class WallLines
{
    private readonly Layout _layout;
    private readonly ILookup<string, SawnUnit> _sawn;
    private readonly HashSet<WallLayout> _lowest;
    private readonly ILookup<string, BarScheduleRow> _bars;
    private readonly ILookup<string, JunctionLayout> _ties;

    public WallLines(Layout layout, SawList saw)
    {
        _layout = layout;
        _sawn = saw.Units.ToLookup(unit => unit.Pieces[0].Wall, StringComparer.Ordinal);
        _lowest = layout.Storeys.FirstOrDefault()?.ToHashSet<WallLayout>(ReferenceEqualityComparer.Instance) ?? [];
        _bars = layout.BarSchedule.ToLookup(row => row.Wall, StringComparer.Ordinal);
        var coursed = layout.Walls.Select(wall => wall.Identity.GlobalId).ToHashSet(StringComparer.Ordinal);
        _ties = layout.Junctions.Where(junction => !junction.Ties.IsEmpty)
            .ToLookup(junction => coursed.Contains(junction.Walls[^1]) ? junction.Walls[^1] : junction.Walls[0], StringComparer.Ordinal);
    }

    public IEnumerable<OrderLine> Of(WallLayout wall) =>
        Units(wall).Concat(Lintels(wall)).Concat(Fill(wall)).Concat(CastOnSite(wall)).Concat(Steel(wall)).Concat(BuiltIn(wall));

    private IEnumerable<OrderLine> Units(WallLayout wall) => wall.Courses.SelectMany(course => course.Pieces)
        .Where(piece => piece.Cut == Cuts.None)
        .Select(piece => Stock.Of(piece, wall, _layout.Rules.Catalog))
        .Select(stock => new OrderLine(stock.Key(stock.Item), 1))
        .Concat(_sawn[wall.Identity.GlobalId].Select(unit =>
            new OrderLine(new OrderKey(OrderItem.CutUnit, unit.Product, QuantityUnit.Piece, unit.Width, unit.Length, unit.Height), 1)));

    private static IEnumerable<OrderLine> Lintels(WallLayout wall) => wall.Lintels.Select(lintel => new OrderLine(
        new OrderKey(
            lintel.Kind == LintelKind.Formed ? OrderItem.FormedLintel : OrderItem.Lintel, lintel.Product, QuantityUnit.Piece, wall.Frame.Thickness,
            lintel.To - lintel.From, lintel.Top - lintel.Bottom),
        1));

    private IEnumerable<OrderLine> Fill(WallLayout wall)
    {
        var hollows = _layout.Rules.Catalog.TroughFor(wall.Frame.Thickness);
        return Litres(OrderItem.Grout, "cores", wall.Cores.Sum(GroutOf))
            .Concat(Litres(OrderItem.Grout, "bond beams", wall.BondBeams.Where(beam => beam.Kind == BondBeamKind.Trough).Sum(beam => beam.GroutVolume)))
            .Concat(Litres(OrderItem.Grout, "trough lintels", wall.Lintels.Where(lintel => lintel.Kind == LintelKind.Trough).Sum(lintel => TroughLintel(lintel, wall, hollows))))
            .Concat(Litres(OrderItem.Concrete, "formed beams", wall.BondBeams.Where(beam => beam.Kind != BondBeamKind.Trough).Sum(beam => beam.GroutVolume)))
            .Concat(Litres(OrderItem.Concrete, "formed lintels", wall.Lintels.Where(lintel => lintel.Kind == LintelKind.Formed).Sum(lintel => Volume(lintel, wall))));
    }

    private static double GroutOf(Core core) => core.Bars?.GroutVolume ?? Math.PI / 4 * core.Diameter.Mm * core.Diameter.Mm * (core.Top - core.Bottom).Mm / 1e9;

    private static double Volume(Lintel lintel, WallLayout wall) => (lintel.To - lintel.From).Mm * (lintel.Top - lintel.Bottom).Mm * wall.Frame.Thickness.Mm / 1e9;

    /// <summary>The hollow of a trough lintel where no bond beam's grout fills it; where no trough unit is made for the wall's width its whole section, to be on the safe side.</summary>
    private static double TroughLintel(Lintel lintel, WallLayout wall, TroughUnit? hollow)
    {
        var whole = Volume(lintel, wall);
        if (hollow is null)
        {
            return whole;
        }

        var height = (lintel.Top - lintel.Bottom).Mm;
        var filled = wall.BondBeams.Where(beam => beam.Kind == BondBeamKind.Trough && beam.Bottom < lintel.Top && beam.Top > lintel.Bottom)
            .Sum(beam => Math.Max(0, (Length.Min(beam.To, lintel.To) - Length.Max(beam.From, lintel.From)).Mm) * (Length.Min(beam.Top, lintel.Top) - Length.Max(beam.Bottom, lintel.Bottom)).Mm);
        var share = 1 - (filled / ((lintel.To - lintel.From).Mm * height));
        return share * hollow.HollowArea(wall.Frame.Thickness, lintel.Top - lintel.Bottom) * (lintel.To - lintel.From).Mm / 1000;
    }

    private static IEnumerable<OrderLine> CastOnSite(WallLayout wall)
    {
        double Boards(Length height, Length length) => ((height.Mm * 2) + wall.Frame.Thickness.Mm) * length.Mm / 1e6;
        var formed = wall.Lintels.Where(lintel => lintel.Kind == LintelKind.Formed).ToList();
        var beams = wall.BondBeams.Where(beam => beam.Kind != BondBeamKind.Trough)
            .Sum(beam => 2 * beam.GroutVolume / (wall.Frame.Thickness.Mm / 1000));
        return Some(OrderItem.Form, "formed lintels", QuantityUnit.SquareMetre, formed.Sum(lintel => Boards(lintel.Top - lintel.Bottom, lintel.To - lintel.From)))
            .Concat(Some(OrderItem.Form, "formed beams", QuantityUnit.SquareMetre, beams))
            .Concat(Some(OrderItem.Shoring, "formed lintels", QuantityUnit.Metre, formed.Sum(lintel => (lintel.To - lintel.From - lintel.BearingLeft - lintel.BearingRight).Mm / 1000)));
    }

    private IEnumerable<OrderLine> Steel(WallLayout wall)
    {
        var rows = _bars[wall.Identity.GlobalId].Select(row => new OrderLine(
            new OrderKey(Item(row.Use), $"{row.Size.Name}, {row.Steel}, {(row.Shape == "straight" ? row.Shape : $"shape {row.Shape}")}", QuantityUnit.Piece, Length: row.Length, Mark: row.Mark), row.Number)
        {
            MassEach = row.Size.Mass(row.Length),
        });
        var couplers = wall.Cores.Select(core => core.Bars).OfType<CoreBars>().Where(bars => bars.IsCoupled)
            .Select(bars => new OrderLine(new OrderKey(OrderItem.Coupler, _layout.Rules.Set.Bars?.Bar.Name ?? string.Empty, QuantityUnit.Piece), bars.Count * bars.Splices.Length));
        return rows.Concat(couplers).Where(line => line.Net > 0);
    }

    private static OrderItem Item(BarUse use) => use switch
    {
        BarUse.Vertical => OrderItem.Bar,
        BarUse.Beam => OrderItem.BeamBar,
        _ => OrderItem.CornerBar,
    };

    private IEnumerable<OrderLine> BuiltIn(WallLayout wall) =>
        _ties[wall.Identity.GlobalId].Select(junction => new OrderLine(new OrderKey(OrderItem.Tie, "flat tie", QuantityUnit.Piece), junction.Ties.Length))
            .Concat(wall.Courses.SelectMany(course => course.Pieces).Where(piece => piece.Notch is not null)
                .Select(_ => new OrderLine(new OrderKey(OrderItem.NotchPiece, "inspection notch", QuantityUnit.Piece), 1)))
            .Concat(CoreHoles(wall))
            .Concat(Membrane(wall))
            .Concat(wall.Embeds.Select(embed => new OrderLine(new OrderKey(OrderItem.Embed, embed.Product, QuantityUnit.Piece), 1)));

    /// <summary>Under each run of the first course, with a lap at its end.</summary>
    private IEnumerable<OrderLine> Membrane(WallLayout wall)
    {
        if (_layout.Rules.Set.Membrane is not { } rule || wall.Courses is not [var first, ..] || (rule.Storeys == MembraneStoreys.Lowest && !_lowest.Contains(wall)))
        {
            return [];
        }

        var runs = first.Spans.Select(span => (span.Run.To - span.Run.From).Mm / 1000).ToList();
        return [new OrderLine(new OrderKey(OrderItem.Membrane, "damp-proof membrane", QuantityUnit.Metre, wall.Frame.Thickness), runs.Sum()) { Waste = runs.Count * rule.Lap.Mm / 1000 }];
    }

    /// <summary>Bored on site: of sawn pieces also where cored units are bought; none where units have cells.</summary>
    private IEnumerable<OrderLine> CoreHoles(WallLayout wall)
    {
        if (_layout.Rules.Catalog.Ordering.Cored == CoredUnits.Cells)
        {
            return [];
        }

        var diameters = wall.Cores.Select(core => (core.Id, core.Diameter)).Concat(wall.CornerCores.Select(core => (core.Id, core.Diameter)))
            .ToDictionary(core => core.Id, core => core.Diameter, StringComparer.Ordinal);
        return wall.Courses.SelectMany(course => course.Pieces).Where(piece => !Stock.IsCored(piece, _layout.Rules.Catalog))
            .SelectMany(piece => piece.Cores.Concat(piece.CornerCores).Select(core => new OrderLine(
                new OrderKey(OrderItem.CoreHole, piece.IsTrough ? piece.Product : OrderingData.Unit, QuantityUnit.Piece, Length: diameters[core]), 1)));
    }

    private static IEnumerable<OrderLine> Litres(OrderItem item, string fills, double cubicMetres) => Some(item, fills, QuantityUnit.Litre, cubicMetres * 1000);

    private static IEnumerable<OrderLine> Some(OrderItem item, string product, QuantityUnit unit, double amount) =>
        amount > 0 ? [new OrderLine(new OrderKey(item, product, unit), amount)] : [];
}
