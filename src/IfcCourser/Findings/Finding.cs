namespace IfcCourser.Findings;

/// <summary>A fault or oddity of the user's model, with its place; never an exception.</summary>
public sealed record Finding(FindingCode Code, string Message, FindingPlace? At = null)
{
    /// <summary>The code's, unless this one matters less.</summary>
    public Severity Severity { get; init; } = Code.Severity;
}
