namespace IfcCourser.Slabs;

/// <summary>How much of a slab is too high, or too low, for the bed.</summary>
/// <param name="Area">mm2.</param>
/// <param name="Volume">mm3.</param>
/// <param name="Depth">At most, mm.</param>
public readonly record struct BedShortfall(double Area, double Volume, double Depth);
