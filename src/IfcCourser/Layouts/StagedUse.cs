namespace IfcCourser.Layouts;

/// <summary>What a wall takes from a pack.</summary>
/// <param name="Wall">GlobalId.</param>
public readonly record struct StagedUse(string Wall, int Units);
