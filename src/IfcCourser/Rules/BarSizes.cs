using System.Collections.Immutable;
using IfcCourser.Units;

namespace IfcCourser.Rules;

/// <summary>The sizes that bars and rods are bought in.</summary>
public static class BarSizes
{
    private const double KilogramsPerPound = 0.45359237;
    private const double MetresPerFoot = 0.3048;
    private const double Mm2PerSquareInch = 645.16;

    /// <summary>kg/m3, as ISO 6935-2 computes masses.</summary>
    private const double SteelDensity = 7850;

    /// <summary>ASTM A615 table 1, read in a trade text: number, diameter (in), area (in2), mass (lb/ft). A706 has the same sizes (from memory).</summary>
    private static readonly (int Number, double Inches, double SquareInches, double PoundsPerFoot)[] _numbers =
    [
        (3, 0.375, 0.11, 0.376), (4, 0.500, 0.20, 0.668), (5, 0.625, 0.31, 1.043), (6, 0.750, 0.44, 1.502), (7, 0.875, 0.60, 2.044), (8, 1.000, 0.79, 2.670),
        (9, 1.128, 1.00, 3.400), (10, 1.270, 1.27, 4.303), (11, 1.410, 1.56, 5.313), (14, 1.693, 2.25, 7.650), (18, 2.257, 4.00, 13.600),
    ];

    /// <summary>ISO 6935-2 nominal diameters, mm; 14 and 28 from memory. Area is pi d2 / 4, mass 7850 kg/m3 times it.</summary>
    private static readonly int[] _diameters = [6, 8, 10, 12, 14, 16, 20, 25, 28, 32, 40, 50];

    /// <summary>
    /// ASTM F1554-18 table 2, read: diameter, threads per inch (UNC), tensile stress area (in2), and the mass of the plain shank (lb/ft). A rod that
    /// is threaded over its whole length weighs less; no table of that was seen, so the shank's mass stands for it and an order is on the safe side.
    /// </summary>
    private static readonly (string Name, double Inches, double StressArea, double PoundsPerFoot)[] _rods =
    [
        ("1/2 in", 0.5, 0.1419, 0.668), ("5/8 in", 0.625, 0.226, 1.043), ("3/4 in", 0.75, 0.334, 1.502), ("7/8 in", 0.875, 0.462, 2.044),
        ("1 in", 1, 0.606, 2.670), ("1 1/8 in", 1.125, 0.763, 3.379),
    ];

    /// <summary>Table by table, from the thinnest to the thickest.</summary>
    public static ImmutableArray<BarSize> All { get; } =
    [
        .. _numbers.Select(bar => new BarSize(
            FormattableString.Invariant($"No. {bar.Number}"), BarKind.Number, Length.FromInches(bar.Inches), bar.SquareInches * Mm2PerSquareInch, Metric(bar.PoundsPerFoot))),
        .. _diameters.Select(mm => new BarSize(
            FormattableString.Invariant($"{mm} mm"), BarKind.Metric, Length.FromMm(mm), Circle(mm), SteelDensity * Circle(mm) / 1e6)),
        .. _rods.Select(rod => new BarSize(
            $"{rod.Name} plain rod", BarKind.PlainRod, Length.FromInches(rod.Inches), Circle(rod.Inches) * Mm2PerSquareInch, Metric(rod.PoundsPerFoot))),
        .. _rods.Select(rod => new BarSize(
            $"{rod.Name} threaded rod", BarKind.ThreadedRod, Length.FromInches(rod.Inches), rod.StressArea * Mm2PerSquareInch, Metric(rod.PoundsPerFoot))),
    ];

    /// <summary>The size of that name; null where there is none.</summary>
    public static BarSize? Find(string name) => All.FirstOrDefault(size => string.Equals(size.Name, name, StringComparison.Ordinal));

    private static double Metric(double poundsPerFoot) => poundsPerFoot * KilogramsPerPound / MetresPerFoot;

    private static double Circle(double diameter) => Math.PI * diameter * diameter / 4;
}
