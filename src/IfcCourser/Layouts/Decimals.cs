namespace IfcCourser.Layouts;

/// <summary>How finely a finished layout's numbers that are no lengths are kept.</summary>
public static class Decimals
{
    /// <summary>Of mm, m2 and m3.</summary>
    public const int OfMm = 6;

    /// <summary>Of unit vectors: a hundredth of a millimetre must not be lost over a long wall.</summary>
    public const int OfDirections = 12;

    /// <summary>As a decimal, so that neither exponents nor negative zeros are written.</summary>
    public static decimal Rounded(double value, int decimals)
    {
        var rounded = Math.Round((decimal)value, decimals);
        return rounded == 0 ? 0 : rounded;
    }
}
