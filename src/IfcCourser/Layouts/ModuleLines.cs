using IfcCourser.Units;

namespace IfcCourser.Layouts;

/// <summary>Masonry starts on start + k * pitch and ends one head joint before such a line.</summary>
public readonly record struct ModuleLines(Length Start, Length Pitch);
