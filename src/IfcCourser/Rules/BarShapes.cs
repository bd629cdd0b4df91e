using IfcCourser.Units;

namespace IfcCourser.Rules;

/// <summary>Bends and cut lengths of bars, dimensions to their outsides.</summary>
public static class BarShapes
{
    private static readonly Length _metricStep = Length.FromMm(25);
    private static readonly Length _inchStep = Length.FromInches(1);

    /// <summary>
    /// Inside radius of a bend. Bars of ISO 6935 in lists of BS 8666: 2 d up to 16 mm, else 3.5 d (table 2, from memory). All others, bars by ASTM numbers in any list,
    /// ACI 318-19 table 25.3.1: a bend's diameter is 6 db up to No. 8, 8 db up to No. 11, else 10 db (from memory).
    /// </summary>
    public static Length Radius(BarSize bar, BarListForm form) => form == BarListForm.Bs8666 && bar.Kind == BarKind.Metric
        ? bar.Diameter.Mm <= 16 ? bar.Diameter * 2 : bar.Diameter * 7 / 2
        : bar.Diameter.Inches <= 1 ? bar.Diameter * 3 : bar.Diameter.Inches < 1.5 ? bar.Diameter * 4 : bar.Diameter * 5;

    /// <summary>Outside length of a hook of 90 degrees with so many diameters of straight bar behind the bend.</summary>
    public static Length HookLeg(BarSize bar, BarListForm form, int extension) => Radius(bar, form) + (bar.Diameter * (extension + 1));

    /// <summary>A straight bar is cut to the step of the list, not longer than asked for: BS 8666 25 mm; an inch, common practice, no source.</summary>
    public static Length Straight(Length length, BarListForm form) => length.FloorTo(Step(form));

    /// <summary>
    /// A bar with one bend. BS 8666:2020 shape 11: A + B - 0.5 r - d, up to the next 25 mm (rounding from memory); ACI 315: the sum of the dimensions
    /// (from memory), up to the next inch.
    /// </summary>
    public static Length Bent(Length a, Length b, BarSize bar, BarListForm form) => (form == BarListForm.Bs8666
        ? a + b - (Radius(bar, form) / 2) - bar.Diameter
        : a + b).CeilingTo(Step(form));

    /// <summary>
    /// Leg of a bar around a corner, to its outside: not shorter than asked for. In steps of 5 mm, BS 8666 4.2 (from memory), or 1/2 in, common practice, no source.
    /// </summary>
    public static Length Leg(Length length, BarListForm form) => length.CeilingTo(form == BarListForm.Bs8666 ? Length.FromMm(5) : Length.FromInches(0.5));

    /// <summary>A straight bar that laps with the next: not shorter than asked for.</summary>
    public static Length Lapped(Length length, BarListForm form) => length.CeilingTo(Step(form));

    /// <summary>A straight bar that may be longer than asked for, as where it laps, but not than the stock.</summary>
    public static Length Lapped(Length length, Length stock, BarListForm form) => Length.Min(length.CeilingTo(Step(form)), Length.Max(length, stock));

    private static Length Step(BarListForm form) => form == BarListForm.Bs8666 ? _metricStep : _inchStep;
}
