namespace IfcCourser.Layouts;

/// <summary>An issue of the drawings.</summary>
/// <param name="Mark">Such as A or 2.</param>
/// <param name="Date">ISO 8601.</param>
/// <param name="What">What changed.</param>
/// <param name="By">Who issued it; may be empty.</param>
public sealed record Revision(string Mark, string Date, string What, string By);
