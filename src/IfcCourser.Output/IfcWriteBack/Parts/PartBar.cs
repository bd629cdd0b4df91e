using IfcCourser.Units;

namespace IfcCourser.Output.IfcWriteBack.Parts;

/// <summary>What a bar is called in the parts file.</summary>
/// <param name="Mark">In the schedule; may be empty.</param>
/// <param name="Size">As bought.</param>
/// <param name="Tag">Core or bond beam.</param>
/// <param name="Type">Of IfcReinforcingBarTypeEnum.</param>
internal sealed record PartBar(string Mark, string Size, string Tag, string Type, Length Diameter);
