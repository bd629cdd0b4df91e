namespace FixtureMaker.Design;

/// <summary>The units a house's file is written in: millimetres with m2 and m3, metres, feet or inches with their square and cubic feet.</summary>
internal enum HouseUnits
{
    Millimetre,
    Metre,
    Foot,
    Inch,
}
