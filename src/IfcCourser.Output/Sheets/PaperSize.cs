using IfcCourser.Units;

namespace IfcCourser.Output.Sheets;

/// <summary>A sheet size, trimmed, in millimetres: lying, the smallest ones upright (ISO 5457 has A4 upright only, from memory), for a title block is as wide as they are.</summary>
public sealed record PaperSize(string Name, double Width, double Height)
{
    /// <summary>Left edge of the frame: filing margin of ISO 5457.</summary>
    public const double FilingMargin = 20;

    /// <summary>Other edges of the frame.</summary>
    public const double Margin = 10;

    /// <summary>ISO 216, smallest first.</summary>
    public static ImmutableArray<PaperSize> Iso { get; } =
        [new("A3", 420, 297), new("A2", 594, 420), new("A1", 841, 594), new("A0", 1189, 841)];

    /// <summary>US architectural sizes (12 x 18 in to 36 x 48 in), smallest first.</summary>
    public static ImmutableArray<PaperSize> Arch { get; } =
    [
        new("ARCH B", 18 * 25.4, 12 * 25.4), new("ARCH C", 24 * 25.4, 18 * 25.4), new("ARCH D", 36 * 25.4, 24 * 25.4),
        new("ARCH E", 48 * 25.4, 36 * 25.4),
    ];

    /// <summary>ANSI sizes (ASME Y14.1: 8.5 x 11 in to 34 x 44 in, from memory), smallest first.</summary>
    public static ImmutableArray<PaperSize> Ansi { get; } =
    [
        new("ANSI A", 8.5 * 25.4, 11 * 25.4), new("ANSI B", 17 * 25.4, 11 * 25.4), new("ANSI C", 22 * 25.4, 17 * 25.4),
        new("ANSI D", 34 * 25.4, 22 * 25.4), new("ANSI E", 44 * 25.4, 34 * 25.4),
    ];

    /// <summary>Every size that can be asked for.</summary>
    public static ImmutableArray<PaperSize> All { get; } = [new("A4", 210, 297), .. Iso, .. Ansi, new("ARCH A", 9 * 25.4, 12 * 25.4), .. Arch];

    /// <summary>The size of a name such as A3, ANSI D or arch-d; null where there is none.</summary>
    public static PaperSize? Named(string name) => All.FirstOrDefault(size => string.Equals(Plain(size.Name), Plain(name), StringComparison.OrdinalIgnoreCase));

    /// <summary>The drawing space inside the frame.</summary>
    public Box Frame => new(FilingMargin, Margin, Width - Margin, Height - Margin);

    /// <summary>Where views and panels may lie: clear of the frame, and no closer than two panels take beside each other on an upright A4.</summary>
    public Box Space => Frame.Grown(Frame.Width < 184 ? -2 : -4);

    public static ImmutableArray<PaperSize> For(UnitSystem units) => units == UnitSystem.Inch ? Arch : Iso;

    /// <summary>Larger sizes of the same series, smallest first.</summary>
    public IEnumerable<PaperSize> Larger() => All.Where(size => size.Series == Series && size.Height * size.Width > Height * Width);

    /// <summary>
    /// Rolls for what is too large for this size, in the order to try them: its own width and up to 40 times its length, then as wide as common plotters are
    /// (841 mm; 36 in for sizes in inches; common practice, no source), then several such strips beside each other. Without end.
    /// </summary>
    public IEnumerable<PaperSize> Rolls()
    {
        const int MostLengths = 40;
        var plotter = IsInch ? 36 * 25.4 : 841;
        var strips = Enumerable.Range(1, int.MaxValue - 1).Select(count => plotter * count).Where(width => width > Height);
        return strips.Prepend(Height).SelectMany(width => Enumerable.Range(width == Height ? 2 : 1, MostLengths).Select(times => Roll(Width * times, width)));
    }

    /// <summary>A, ARCH or ANSI.</summary>
    private string Series => Name.Split(' ') is [var series, _] ? series : "A";

    private bool IsInch => !Iso.Concat([All[0]]).Contains(this);

    private PaperSize Roll(double length, double width) => IsInch
        ? new(FormattableString.Invariant($"{width / 25.4:0.#} x {length / 25.4:0.#} in"), length, width)
        : new(FormattableString.Invariant($"{width:0} x {length:0}"), length, width);

    private static string Plain(string name) => name.Replace(" ", string.Empty, StringComparison.Ordinal).Replace("-", string.Empty, StringComparison.Ordinal);
}
