using IfcCourser.Units;

namespace IfcCourser.Rules;

/// <summary>A bar that the user asks for.</summary>
/// <param name="Wall">GlobalId or name of the wall.</param>
/// <param name="At">Along the run.</param>
/// <param name="Play">How far it may stand from there to either side.</param>
/// <param name="Why">girder, for one; said with the bar.</param>
public sealed record GivenBar(string Wall, Length At, Length Play, string Why);
