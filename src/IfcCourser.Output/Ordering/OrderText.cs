using System.Globalization;
using IfcCourser.Layouts;
using IfcCourser.Output.Sheets;
using IfcCourser.Output.Workbooks;
using IfcCourser.Rules;
using IfcCourser.Units;
using static System.FormattableString;

namespace IfcCourser.Output.Ordering;

/// <summary>Every word and figure of an order: in millimetres, litres and kilograms, or in inches, feet and pounds.</summary>
internal sealed class OrderText(LayoutRules rules)
{
    private const double KilogramsPerPound = 0.45359237;
    private const double LitresPerCubicFoot = 28.316846592;
    private const double LitresPerCubicYard = LitresPerCubicFoot * 27;
    private const double MetresPerFoot = 0.3048;

    private static readonly Order _noOrder = new()
    {
        Lines = [],
        Joints = default,
        BagsByPallets = null,
        Storeys = [],
        Walls = [],
        Saw = new SawList(OffcutReuse.Wall, [], 0),
    };

    private readonly bool _isInch = rules.Catalog.Units == UnitSystem.Inch;
    private readonly SheetLengths _lengths = new(rules.Catalog.Units);

    public string MassUnit => _isInch ? "lb" : "kg";

    public string LengthUnit => _isInch ? "in" : "mm";

    /// <summary>The number of a length in tables: mm or inches.</summary>
    public double Number(Length length) => _isInch ? length.Inches : length.Mm;

    /// <summary>The same as it can be measured: to a tenth of a millimetre or a sixteenth of an inch.</summary>
    public double Measurable(Length length) => _isInch ? Math.Round(length.Inches * 16) / 16 : Math.Round(length.Mm, 1);

    public double Mass(double kilograms) => _isInch ? kilograms / KilogramsPerPound : kilograms;

    public string Unit(OrderKey key) => key.Unit switch
    {
        QuantityUnit.Piece => "pcs",
        QuantityUnit.Pallet => "pallet",
        QuantityUnit.Metre => _isInch ? "ft" : "m",
        QuantityUnit.SquareMetre => _isInch ? "ft2" : "m2",
        _ => !_isInch ? "l" : IsPoured(key) ? "yd3" : "ft3",
    };

    /// <summary>An amount in the unit of its line.</summary>
    public double Amount(OrderKey key, double amount) => !_isInch ? amount : key.Unit switch
    {
        QuantityUnit.Metre => amount / MetresPerFoot,
        QuantityUnit.SquareMetre => amount / (MetresPerFoot * MetresPerFoot),
        QuantityUnit.Litre => amount / (IsPoured(key) ? LitresPerCubicYard : LitresPerCubicFoot),
        _ => amount,
    };

    /// <summary>An amount in the unit of its line, freed of floating-point dust; cells show fewer decimals, but sums are of these.</summary>
    public double? Exact(OrderKey key, double? amount) => amount is { } value ? Math.Round(Amount(key, value), 6) : null;

    /// <summary>Decimals of an amount: none of what is counted.</summary>
    public int Decimals(OrderKey key) => key.Unit is QuantityUnit.Piece or QuantityUnit.Pallet ? 0 : Unit(key) == "yd3" ? 2 : 1;

    /// <summary>How an amount is shown in a workbook.</summary>
    public CellFormat Format(OrderKey key) => Decimals(key) switch { 0 => CellFormat.Whole, 1 => CellFormat.OneDecimal, _ => CellFormat.TwoDecimals };

    /// <summary>How a length is shown in a workbook.</summary>
    public CellFormat LengthFormat => _isInch ? CellFormat.Fraction : CellFormat.Plain;

    /// <summary>What a line is, without amounts of the job.</summary>
    public string Short(OrderLine line) => line.Key.Item switch
    {
        OrderItem.CutUnit => $"{Size(line.Key)}, to saw",
        OrderItem.JointMortar => $"{MortarName} in bed and head joints",
        OrderItem.LevellingMortar => "levelling mortar under first courses",
        OrderItem.Membrane => line.Key.Product,
        _ => Description(line, _noOrder),
    };

    /// <summary>What a line is, so that the same words mean the same thing in every lot.</summary>
    public string Plain(OrderLine line) => line.Key.Item switch
    {
        OrderItem.Pallet => Size(line.Key),
        OrderItem.Bar or OrderItem.BeamBar or OrderItem.CornerBar => $"{line.Key.Product}, {Long(line.Key.Length!.Value)}{Weight(line)}",
        _ => Short(line),
    };

    /// <summary>What a line is, with what a buyer must know of it.</summary>
    public string Description(OrderLine line, Order order) => line.Key.Item switch
    {
        OrderItem.FullUnit or OrderItem.PartUnit or OrderItem.TroughUnit or OrderItem.CoredUnit => $"{Size(line.Key)}, laid whole{Weight(line)}",
        OrderItem.CutUnit => $"{Size(line.Key)}, to saw {Sawn(line.Key, order)} pieces from{Weight(line)}",
        OrderItem.UnitWaste => Invariant($"{Size(line.Key)}, waste and breakage ({rules.Catalog.Ordering.UnitWastePercent} %)"),
        OrderItem.Pallet => Pallets(line, order),
        OrderItem.Lintel or OrderItem.FormedLintel => $"{line.Key.Product}, {Long(line.Key.Length!.Value)}, {_lengths.WithUnit(line.Key.Height!.Value)} high",
        OrderItem.JointMortar => $"{MortarName} for {Area(order.Joints.BedArea)} of bed and {Area(order.Joints.HeadArea)} of head joints{Bags(line)}{HalfPallets(line, order)}",
        OrderItem.LevellingMortar => $"levelling mortar under {Area(order.Joints.LevellingArea)} of first courses, as laid out: readings of the slab change it{Bags(line)}",
        OrderItem.Membrane => $"{line.Key.Product}{Rolls(line)}",
        OrderItem.Grout => $"grout of {line.Key.Product}",
        OrderItem.Concrete => $"concrete of {line.Key.Product}",
        OrderItem.Form => $"forms, sides and underside, of {line.Key.Product}",
        OrderItem.Shoring => $"shoring under {line.Key.Product}",
        OrderItem.Bar => $"{line.Key.Mark}: {line.Key.Product}, {Long(line.Key.Length!.Value)}{Weight(line)}",
        OrderItem.BeamBar => $"{line.Key.Mark}: {line.Key.Product}, along bond beams, {Long(line.Key.Length!.Value)}{Weight(line)}",
        OrderItem.CornerBar => $"{line.Key.Mark}: {line.Key.Product}, around corners of bond beams, {Long(line.Key.Length!.Value)}{Weight(line)}",
        OrderItem.Coupler => $"coupler for {line.Key.Product}",
        OrderItem.Tie => "flat tie at tied tees, one a bed",
        OrderItem.NotchPiece => "piece cut out of an inspection notch, kept to close it",
        OrderItem.CoreHole => $"hole of {_lengths.WithUnit(line.Key.Length!.Value)} for a bar, to bore on site through a {line.Key.Product}",
        _ => line.Key.Product,
    };

    /// <summary>Bars of a size: the stock that holds them, what is left, and whether fewer would do.</summary>
    public string Nested(BarsOfStock bars)
    {
        var tooLong = bars.TooLong.IsEmpty ? string.Empty : $" {string.Join(", ", bars.TooLong)}: longer than any stock length.";
        if (bars.Cuts.IsEmpty)
        {
            return $"{bars.Size.Name}, {bars.Steel}: {(tooLong.Length > 0 ? tooLong.TrimStart() : "stock lengths are not known.")}";
        }

        var share = Figure(100 * bars.Offcuts.Mm / (bars.Stock.Mm * bars.Count), 1);
        var gap = bars.Gap == 0 ? "no fewer of that length would do" : Invariant($"{bars.Least} at least are needed, fewer than {bars.Count} were not found");
        return Invariant($"{bars.Size.Name}, {bars.Steel}: {bars.Count} bars, {Long(bars.Stock)}; {gap}; offcuts {share} %.") + tooLong;
    }

    /// <summary>Marks cut from a bar: 2 V1 + V4.</summary>
    public static string Marks(BarCut cut) => string.Join(
        " + ", cut.Marks.GroupBy(mark => mark, StringComparer.Ordinal).Select(mark => mark.Count() == 1 ? mark.Key : Invariant($"{mark.Count()} {mark.Key}")));

    /// <summary>Size and product: trough unit 624 x 249 mm.</summary>
    public string Size(OrderKey key) => $"{key.Product} {_lengths.Piece(key.Length!.Value)} x {_lengths.WithUnit(key.Height!.Value)}";

    private string MortarName => rules.Catalog.BedJoint.Max <= Length.FromInches(0.125) ? "thin-bed mortar" : "mortar";

    private static bool IsPoured(OrderKey key) => key.Item is OrderItem.Grout or OrderItem.Concrete;

    private static int Sawn(OrderKey key, Order order) => order.Saw.Units
        .Where(unit => unit.Product == key.Product && unit.Width == key.Width && unit.Length == key.Length && unit.Height == key.Height)
        .Sum(unit => unit.Pieces.Length);

    private string Long(Length length) => (_isInch ? _lengths.Dimension(length) : _lengths.WithUnit(length)) + " long";

    private string Weight(OrderLine line) => line.MassEach is not { } mass ? string.Empty
        : $", {Figure(Mass(mass), 1)} {MassUnit} each{(line.IsOverLiftLimit ? $" - over the {Figure(Mass(rules.Catalog.Ordering.LiftLimit!.Value), 0)} {MassUnit} for lifting by hand" : string.Empty)}";

    private string Pallets(OrderLine line, Order order)
    {
        var units = order.Lines.Where(other => other.Key.Unit == QuantityUnit.Piece && (other.Key with { Item = OrderItem.Pallet, Unit = QuantityUnit.Pallet }) == line.Key).Sum(other => other.Gross);
        return line.Packs is { } packs
            ? Invariant($"{Size(line.Key)}, {packs.Count} whole {(packs.Count == 1 ? "pallet" : "pallets")} of {packs.Content} for {units}, {packs.LeftOver} left over") + (line.MassEach is { } mass ? $", {Figure(Mass(mass), 0)} {MassUnit} a pallet" : string.Empty)
            : Invariant($"{Size(line.Key)}, {units} to order: the catalog does not say how many are on a pallet");
    }

    private string Bags(OrderLine line)
    {
        var mortar = line.Key.Item == OrderItem.JointMortar ? rules.Catalog.Ordering.JointMortar : rules.Catalog.Ordering.LevellingMortar;
        return line.Packs is { } packs
            ? Invariant($"; {packs.Count} {(packs.Count == 1 ? "bag" : "bags")} of {Figure(Mass(mortar.Bag!.Value), 0)} {MassUnit}, {Figure(Amount(line.Key, packs.Content), 1 + (_isInch ? 1 : 0))} {Unit(line.Key)} each, loss {mortar.LossPercent} %")
            : Invariant($"; loss {mortar.LossPercent} %, bags not known: the catalog gives no bag or powder");
    }

    private string Rolls(OrderLine line) => rules.Set.Membrane is not { } rule ? string.Empty
        : $", laps of {_lengths.WithUnit(rule.Lap)}" + (rule.Roll is { } roll && line.Packs is { } packs ? Invariant($"; {packs.Count} {(packs.Count == 1 ? "roll" : "rolls")} of {Figure(Amount(line.Key, roll.Mm / 1000), 1)} {Unit(line.Key)}") : string.Empty);

    private static string HalfPallets(OrderLine line, Order order) => order.BagsByPallets is not { } bags ? string.Empty
        : Invariant($"; by the rule of half a pallet a bag (common practice, no source): {bags}")
            + (line.Packs is not { } packs ? string.Empty : packs.Count == bags ? ", the same" : Invariant($", {Math.Abs(packs.Count - bags)} {(bags > packs.Count ? "more" : "fewer")}"));

    private string Area(double squareMetres) => _isInch
        ? $"{Figure(squareMetres / (MetresPerFoot * MetresPerFoot), 0)} ft2"
        : $"{Figure(squareMetres, 1)} m2";

    private static string Figure(double value, int decimals) => Math.Round(value, decimals).ToString(CultureInfo.InvariantCulture);
}
