using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Units;

namespace IfcCourser.Reinforcement;

/// <summary>A course as bars meet it.</summary>
/// <param name="Height">From bed to bed.</param>
/// <param name="Joints">Centres of its head joints.</param>
/// <param name="Pieces">Its pieces along the run.</param>
internal sealed record CourseMasonry(Interval Height, ImmutableArray<Length> Joints, ImmutableArray<Interval> Pieces);
