namespace IfcCourser.Findings;

/// <summary>A kind of finding: its fixed kebab-case name, how much it matters, what it means and what to do.</summary>
public sealed record FindingCode(string Id, Severity Severity, string Meaning, string Remedy);
