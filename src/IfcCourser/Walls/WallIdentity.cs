namespace IfcCourser.Walls;

/// <summary>How a wall is named in its model.</summary>
/// <param name="GlobalId">As written in the model; may be malformed or not unique.</param>
/// <param name="StepId">Instance number in the file.</param>
public sealed record WallIdentity(string GlobalId, long StepId, string? Name, string? Storey, string? Type)
{
    /// <summary>What people call it: its name, else its instance number.</summary>
    public string Label => string.IsNullOrWhiteSpace(Name) ? FormattableString.Invariant($"wall #{StepId}") : Name;
}
