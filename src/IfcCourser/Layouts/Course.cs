using System.Collections.Immutable;
using IfcCourser.Units;

namespace IfcCourser.Layouts;

/// <summary>A course of a wall.</summary>
/// <param name="Number">From 1 at the wall's own first course.</param>
/// <param name="Spans">From left to right.</param>
/// <param name="Pieces">From left to right; where a span has pieces above each other, the lower first.</param>
public sealed record Course(
    int Number, CourseKind Kind, Length Bottom, Length Top, ImmutableArray<Span> Spans, ImmutableArray<Piece> Pieces);
