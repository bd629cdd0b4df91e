using IfcCourser.Layouts;
using IfcCourser.Step21;

namespace IfcCourser.Output.IfcWriteBack.Parts;

/// <summary>Ties parts to their wall.</summary>
internal static class Aggregate
{
    public static void Add(Addition addition, WallLayout wall, IReadOnlyCollection<StepValue> parts)
    {
        if (parts.Count > 0)
        {
            addition.Appender.Add(
                "IFCRELAGGREGATES",
                StepValue.String(addition.Guids.For(wall.Identity.GlobalId, "parts")),
                addition.Owner,
                StepValue.Omitted,
                StepValue.Omitted,
                StepValue.Reference(wall.Identity.StepId),
                StepValue.List([.. parts]));
        }
    }
}
