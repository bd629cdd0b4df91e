using IfcCourser.Units;

namespace IfcCourser.Layouts;

/// <summary>Something to be built in that others design: printed, not designed here.</summary>
public sealed record Embed(string Kind, Length At, Length Z, string Note);
