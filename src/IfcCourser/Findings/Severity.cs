namespace IfcCourser.Findings;

/// <summary>How much a finding matters; the order is used by --fail-on.</summary>
public enum Severity
{
    /// <summary>Worth knowing.</summary>
    Note,

    /// <summary>Someone should decide before the walls are built.</summary>
    Warning,

    /// <summary>Can't be built as it stands.</summary>
    Error,
}
