using System.Globalization;
using System.Numerics;
using IfcCourser.Units;

namespace IfcCourser.Output.Sheets;

/// <summary>Lengths as a drawing set prints them: millimetres, or feet and inches with sixteenths.</summary>
public sealed record SheetLengths(UnitSystem Units)
{
    /// <summary>A dimension: 1250; or 4'-1 1/2".</summary>
    public string Dimension(Length length) => LengthText.Format(length, Units);

    /// <summary>A dimension measured in a view, real millimetres.</summary>
    public string Dimension(double mm) => Dimension(Length.FromMm(mm));

    /// <summary>A height with its sign: +250, -20, 0.</summary>
    public string Height(Length length) => length > Length.Zero ? "+" + Dimension(length) : Dimension(length);

    /// <summary>A length of a piece: 311.5; or, never in feet and without a mark of the unit, 15 7/8.</summary>
    public string Piece(Length length) => Units == UnitSystem.Inch ? Inches(length) : Dimension(length);

    /// <summary>A length measured on a slope or between lines of the model, to the saw's grid.</summary>
    public string Piece(Length length, Length grid) => Piece(length.RoundTo(grid));

    /// <summary>A joint, bed or shift with its unit.</summary>
    public string WithUnit(Length length) => Piece(length) + (Units == UnitSystem.Inch ? " in" : " mm");

    /// <summary>A mean joint with its unit: in inches to a thirty-second, half of what joints are laid to.</summary>
    public string Joint(Length length) => Units == UnitSystem.Inch ? Inches(length, 32) + " in" : WithUnit(length);

    private static string Inches(Length length, long parts = 16)
    {
        var step = Length.NanometresPerInch / parts;
        var count = (Length.Abs(length).Nanometres + (step / 2)) / step;
        var (whole, part) = Math.DivRem(count, parts);
        var sign = length < Length.Zero && count > 0 ? "-" : string.Empty;
        if (part == 0)
        {
            return string.Create(CultureInfo.InvariantCulture, $"{sign}{whole}");
        }

        var shift = BitOperations.TrailingZeroCount(part);
        var fraction = string.Create(CultureInfo.InvariantCulture, $"{part >> shift}/{parts >> shift}");
        return whole == 0 ? sign + fraction : string.Create(CultureInfo.InvariantCulture, $"{sign}{whole} {fraction}");
    }
}
