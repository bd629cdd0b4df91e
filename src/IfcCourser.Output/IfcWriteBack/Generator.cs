using IfcCourser.Layouts;
using IfcCourser.Step21;

namespace IfcCourser.Output.IfcWriteBack;

/// <summary>Who writes, as it stands in header, owner history and sets.</summary>
internal static class Generator
{
    public const string Name = "IfcCourser";

    public static string Version => typeof(Layout).Assembly.GetName().Version!.ToString(3);

    /// <summary>Name and version.</summary>
    public static StepValue Full { get; } = StepValue.String($"{Name} {Version}");
}
