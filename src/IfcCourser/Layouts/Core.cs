using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Units;

namespace IfcCourser.Layouts;

/// <summary>A reinforcement core: where a bar stands and its grout goes.</summary>
/// <param name="At">Centre along the run.</param>
/// <param name="Across">Centre from the left face.</param>
/// <param name="Why">Reasons: end, corner, jamb, tee, spacing.</param>
/// <param name="Point">Foot of the bar in model axes, mm.</param>
/// <param name="PlayMinus">How far it may move towards the start before it comes too near a joint.</param>
/// <param name="PlayPlus">How far it may move towards the end.</param>
/// <param name="SharedWith">GlobalIds of the other walls that the bar belongs to; it is listed in one wall only.</param>
public sealed record Core(
    string Id,
    Length At,
    Length Across,
    Length Bottom,
    Length Top,
    Length Diameter,
    string Bar,
    ImmutableArray<string> Why,
    Vector2 Point,
    Length PlayMinus,
    Length PlayPlus,
    ImmutableArray<string> SharedWith)
{
    /// <summary>How its bars are built; null in layouts that were made without.</summary>
    public CoreBars? Bars { get; init; }
}
