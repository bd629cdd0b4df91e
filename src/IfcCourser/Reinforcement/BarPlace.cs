using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Units;

namespace IfcCourser.Reinforcement;

/// <summary>A bar: where it may stand, where it stands and why.</summary>
/// <param name="Range">Where its reasons allow it.</param>
/// <param name="At">Where it stands.</param>
/// <param name="Heights">From foot to top.</param>
/// <param name="Why">Its reasons.</param>
/// <param name="Junction">Index of the corner whose bar it is; else null.</param>
internal sealed record BarPlace(Interval Range, Length At, Interval Heights, ImmutableArray<string> Why, int? Junction);
