namespace IfcCourser.Settings;

/// <summary>A settings file without fault.</summary>
/// <param name="Kind">catalog or rule set.</param>
/// <param name="Name">The name it gives itself.</param>
/// <param name="Text">The file's text.</param>
public sealed record VerifiedSettings(string Kind, string Name, string Text);
