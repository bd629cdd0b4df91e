using IfcCourser.Units;

namespace IfcCourser.Output.Sheets;

/// <summary>A drawing scale, one to <paramref name="Denominator"/>.</summary>
/// <param name="Label">As printed in the title block.</param>
public sealed record DrawingScale(int Denominator, string Label)
{
    /// <summary>Largest first. ISO 5455: 1:20, 1:50, 1:100, 1:200; larger ones are for details.</summary>
    public static ImmutableArray<DrawingScale> Metric { get; } =
        [new(20, "1:20"), new(50, "1:50"), new(100, "1:100"), new(200, "1:200"), new(500, "1:500")];

    /// <summary>Largest first; common architectural scales.</summary>
    public static ImmutableArray<DrawingScale> Inch { get; } =
    [
        new(16, "3/4\" = 1'-0\""), new(24, "1/2\" = 1'-0\""), new(48, "1/4\" = 1'-0\""), new(96, "1/8\" = 1'-0\""),
        new(192, "1/16\" = 1'-0\""), new(384, "1/32\" = 1'-0\""),
    ];

    /// <summary>Ten times smaller, as on maps.</summary>
    public DrawingScale Tenth => new(Denominator * 10, FormattableString.Invariant($"1:{Denominator * 10}"));

    /// <summary>Largest first, for details and storey poles (ISO 5455; common architectural scales).</summary>
    public static ImmutableArray<DrawingScale> LargeFor(UnitSystem units) => units == UnitSystem.Inch
        ? [new(8, "1 1/2\" = 1'-0\""), .. Inch]
        : [new(10, "1:10"), .. Metric];

    public static ImmutableArray<DrawingScale> For(UnitSystem units) => units == UnitSystem.Inch ? Inch : Metric;
}
