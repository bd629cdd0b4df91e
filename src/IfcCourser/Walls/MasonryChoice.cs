using System.Collections.Immutable;
using IfcCourser.Units;

namespace IfcCourser.Walls;

/// <summary>What of a wall is taken for its masonry, and which names decided that.</summary>
/// <param name="Names">Every name that was looked at, in the model's order; empty where the model gives none.</param>
/// <param name="Layers">How many layers or parts the model names.</param>
/// <param name="Layer">Number of the layer or part that is taken, from 1; null where it is the whole body, or nothing.</param>
/// <param name="Thickness">Of what is taken; null where nothing is.</param>
public sealed record MasonryChoice(ImmutableArray<NameRead> Names, int Layers, int? Layer, Length? Thickness);
