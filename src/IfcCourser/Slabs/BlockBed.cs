namespace IfcCourser.Slabs;

/// <summary>The levelling bed under a block, mm; negative where the slab is higher than the underside.</summary>
/// <param name="High">Depth by which the slab is too high for the least bed; zero where it is not.</param>
/// <param name="Low">Depth by which the bed is over its limit; zero where it is not.</param>
/// <param name="IsOutside">Whether part of it lies beyond the readings.</param>
public sealed record BlockBed(FirstCourseBlock Block, double Least, double Most, double Mean, double High, double Low, bool IsOutside);
