using IfcCourser.Units;

namespace IfcCourser.Rules;

/// <summary>Damp-proof membrane under first courses.</summary>
/// <param name="Lap">Where lengths meet; one for each run of a first course.</param>
/// <param name="Roll">Length of a roll; null where that is not known.</param>
public sealed record MembraneRule(MembraneStoreys Storeys, Length Lap, Length? Roll);
