namespace IfcCourser.Output.Page;

/// <summary>An option that a run was given.</summary>
/// <param name="Name">Such as --walls.</param>
/// <param name="Value">As it was understood; without folders of the machine.</param>
public sealed record GivenOption(string Name, string Value);
