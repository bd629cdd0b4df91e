using IfcCourser.Units;

namespace IfcCourser.Catalogs;

/// <summary>A wall thickness that units are made for: what designers call it and what it measures.</summary>
public readonly record struct UnitWidth(Length Nominal, Length Actual);
