namespace IfcCourser.Settings;

/// <summary>A value of a TOML file and the line it stands on.</summary>
/// <param name="Content">
/// string, long, double or bool; a list of <see cref="TomlValue"/> for arrays; a dictionary of them for tables.
/// </param>
/// <param name="Line">Line number from 1.</param>
internal sealed record TomlValue(object Content, int Line);
