using System.Collections.Immutable;
using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>Walls that touch and share one set of course lines.</summary>
/// <param name="Name">G1, G2, ... in the order of their first walls.</param>
/// <param name="Walls">Indices of the walls, rising.</param>
/// <param name="FirstLine">Height of course line 0 (underside of the units) in model heights.</param>
internal sealed record LevelGroup(string Name, ImmutableArray<int> Walls, Length FirstLine);
