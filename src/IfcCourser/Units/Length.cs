using System.Globalization;

namespace IfcCourser.Units;

/// <summary>
/// A length as a whole number of nanometres, so that inches (1/64 in = 396 875 nm) and millimetres add up
/// without drift: sums of lengths are equalities, never comparisons within a tolerance.
/// </summary>
public readonly record struct Length(long Nanometres) : IComparable<Length>
{
    /// <summary>Nanometres in a millimetre.</summary>
    public const long NanometresPerMm = 1_000_000;

    /// <summary>Nanometres in an inch: exactly 25.4 mm.</summary>
    public const long NanometresPerInch = 25_400_000;

    public static readonly Length Zero;

    /// <summary>The value in millimetres; exact to six decimals in print.</summary>
    public double Mm => Nanometres / (double)NanometresPerMm;

    /// <summary>The value in inches.</summary>
    public double Inches => Nanometres / (double)NanometresPerInch;

    public static Length FromMm(double mm) => new(checked((long)Math.Round(mm * NanometresPerMm)));

    public static Length FromInches(double inches) => new(checked((long)Math.Round(inches * NanometresPerInch)));

    /// <summary>
    /// A coordinate of the model, rounded once: to the nearest 0.1 mm or 1/64 in where it lies within 0.005 mm of
    /// one, so that floating-point dust of the authoring program vanishes, else to a whole micrometre.
    /// </summary>
    public static Length FromModelMm(double mm)
    {
        const double Dust = 0.005;
        const long Tenth = NanometresPerMm / 10;
        const long SixtyFourth = NanometresPerInch / 64;
        foreach (var step in (ReadOnlySpan<long>)[Tenth, SixtyFourth])
        {
            var nearest = checked((long)Math.Round(mm * NanometresPerMm / step) * step);
            if (Math.Abs((nearest / (double)NanometresPerMm) - mm) <= Dust)
            {
                return new Length(nearest);
            }
        }

        return new Length(checked((long)Math.Round(mm * 1000) * 1000));
    }

    public static Length operator +(Length a, Length b) => new(a.Nanometres + b.Nanometres);

    public static Length operator -(Length a, Length b) => new(a.Nanometres - b.Nanometres);

    public static Length operator -(Length a) => new(-a.Nanometres);

    public static Length operator *(Length a, long n) => new(a.Nanometres * n);

    public static Length operator *(long n, Length a) => new(a.Nanometres * n);

    /// <summary>Half or another whole share; rounds towards zero to a nanometre.</summary>
    public static Length operator /(Length a, long n) => new(a.Nanometres / n);

    /// <summary>How many whole times <paramref name="b"/> goes into <paramref name="a"/> (towards zero).</summary>
    public static long operator /(Length a, Length b) => a.Nanometres / b.Nanometres;

    public static bool operator <(Length a, Length b) => a.Nanometres < b.Nanometres;

    public static bool operator >(Length a, Length b) => a.Nanometres > b.Nanometres;

    public static bool operator <=(Length a, Length b) => a.Nanometres <= b.Nanometres;

    public static bool operator >=(Length a, Length b) => a.Nanometres >= b.Nanometres;

    public static Length Min(Length a, Length b) => a <= b ? a : b;

    public static Length Max(Length a, Length b) => a >= b ? a : b;

    public static Length Abs(Length a) => a.Nanometres < 0 ? -a : a;

    /// <summary>The remainder in [0, pitch), also for negative values.</summary>
    public Length Modulo(Length pitch)
    {
        var rest = Nanometres % pitch.Nanometres;
        return new Length(rest < 0 ? rest + pitch.Nanometres : rest);
    }

    /// <summary>Down to the next whole multiple of <paramref name="grid"/>.</summary>
    public Length FloorTo(Length grid) => this - Modulo(grid);

    /// <summary>Up to the next whole multiple of <paramref name="grid"/>.</summary>
    public Length CeilingTo(Length grid) => -(-this).FloorTo(grid);

    /// <summary>To the nearest multiple of <paramref name="grid"/>, halves upwards.</summary>
    public Length RoundTo(Length grid) => (this + (grid / 2)).FloorTo(grid);

    public int CompareTo(Length other) => Nanometres.CompareTo(other.Nanometres);

    /// <summary>Millimetres with a point, without trailing zeros, for messages and keys.</summary>
    public override string ToString() => Mm.ToString("0.######", CultureInfo.InvariantCulture) + " mm";
}
