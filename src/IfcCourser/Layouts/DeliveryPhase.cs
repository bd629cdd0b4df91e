using System.Collections.Immutable;

namespace IfcCourser.Layouts;

/// <summary>Walls whose material comes in one delivery.</summary>
/// <param name="Name">Unique in a layout.</param>
/// <param name="Walls">GlobalIds; each coursed wall is in one phase.</param>
public sealed record DeliveryPhase(string Name, ImmutableArray<string> Walls);
