using IfcCourser.Units;

namespace IfcCourser.Output.Dxf;

/// <summary>The unit of a drawing: millimetres, or inches for sets in feet and inches.</summary>
internal sealed record DxfUnits(UnitSystem System)
{
    public bool IsInch => System == UnitSystem.Inch;

    /// <summary>Drawing units in a millimetre.</summary>
    public double PerMm => IsInch ? 1 / 25.4 : 1;

    /// <summary>$INSUNITS: 1 inches, 4 millimetres.</summary>
    public int InsUnits => IsInch ? 1 : 4;

    /// <summary>$MEASUREMENT: 0 imperial, 1 metric hatch patterns and line types.</summary>
    public int Measurement => IsInch ? 0 : 1;

    /// <summary>$LUNITS and DIMLUNIT: 4 feet and inches with fractions, 2 decimal.</summary>
    public int LinearUnits => IsInch ? 4 : 2;

    /// <summary>Sixteenths (2 to the power 4) or one decimal.</summary>
    public int Precision => IsInch ? 4 : 1;

    /// <summary>DIMRND: sixteenths; the metric precision rounds by itself.</summary>
    public double Rounding => IsInch ? 1.0 / 16 : 0;

    /// <summary>DIMZIN: 3 suppresses zero feet and keeps zero inches; 8 suppresses trailing zeros.</summary>
    public int Zeros => IsInch ? 3 : 8;
}
