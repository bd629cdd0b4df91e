using IfcCourser.Units;

namespace IfcCourser.Layouts;

/// <summary>A core that another wall lists, where it stands in this one: the bar of a corner that both share.</summary>
/// <param name="Id">In this wall, such as N1.</param>
/// <param name="Wall">GlobalId of the wall that lists it.</param>
/// <param name="Core">Its id there.</param>
/// <param name="At">Centre along this wall's run.</param>
/// <param name="Across">Centre from this wall's left face.</param>
public sealed record CornerCore(string Id, string Wall, string Core, Length At, Length Across, Length Bottom, Length Top, Length Diameter);
