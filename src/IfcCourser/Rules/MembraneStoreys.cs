namespace IfcCourser.Rules;

/// <summary>Under which first courses membrane lies.</summary>
public enum MembraneStoreys
{
    /// <summary>Those of the lowest storey.</summary>
    Lowest,

    Every,
}
