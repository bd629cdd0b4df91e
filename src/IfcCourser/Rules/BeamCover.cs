using IfcCourser.Units;

namespace IfcCourser.Rules;

/// <summary>What lies between bars of bond beams and the nearest face.</summary>
/// <param name="End">From a beam's end to the bars' ends.</param>
/// <param name="Grout">Between a bar and the trough's sides and bottom.</param>
/// <param name="Concrete">Of beams that are formed, to their faces.</param>
public sealed record BeamCover(Length End, Length Grout, Length Concrete);
