namespace IfcCourser.Layouts;

/// <summary>How a piece was cut from a unit.</summary>
[Flags]
public enum Cuts
{
    None = 0,
    Length = 1,
    Height = 2,

    /// <summary>Cut to a slope.</summary>
    Rake = 4,
    Notch = 8,
}
