using System.Collections.Immutable;
using IfcCourser.Units;

namespace IfcCourser.Layouts;

/// <summary>Bent bars around a corner.</summary>
/// <param name="With">GlobalId of the other wall.</param>
/// <param name="At">The corner's middle along the run.</param>
/// <param name="Count">As many as the beam has bars.</param>
/// <param name="Leg">Length of each of the two legs, from the corner's middle.</param>
public sealed record BeamCorner(string With, Length At, int Count, Length Leg)
{
    /// <summary>Where each lies.</summary>
    public ImmutableArray<BeamCornerBar> Bars { get; init; } = [];
}
