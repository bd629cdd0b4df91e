using IfcCourser.Units;

namespace IfcCourser.Catalogs;

/// <summary>A reinforcement core: its diameter, the least wall it fits in, and its least distance, centre to centre, from a head joint.</summary>
public readonly record struct CoreOption(Length Diameter, Length LeastWall, Length Clearance);
