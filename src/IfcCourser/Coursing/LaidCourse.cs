using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>A course with the rows of pieces that fill its segments.</summary>
/// <param name="Shape">Where masonry stands.</param>
/// <param name="Rows">The pieces of each segment, as intervals from the segment's start.</param>
/// <param name="PieceJoints">Centres of the head joints between its pieces, rising.</param>
internal sealed record LaidCourse(ShapedCourse Shape, ImmutableArray<ImmutableArray<Interval>> Rows, ImmutableArray<Length> PieceJoints)
{
    /// <summary>All head joints of the course, those against walls and lintels included.</summary>
    public IEnumerable<Length> Joints => PieceJoints.Concat(Shape.EdgeJoints);

    /// <summary>All its pieces along the wall, each segment's from left to right.</summary>
    public IEnumerable<Interval> Pieces => Shape.Segments.Zip(Rows).SelectMany(segment =>
        segment.Second.Select(piece => new Interval(segment.First.Box.Left + piece.From, segment.First.Box.Left + piece.To)));

    public static LaidCourse Of(ShapedCourse shape, ImmutableArray<ImmutableArray<Interval>> rows)
    {
        var joints = new List<Length>(shape.JambJoints);
        for (var i = 0; i < rows.Length; i++)
        {
            var from = shape.Segments[i].Box.Left;
            var pieces = rows[i];
            for (var p = 1; p < pieces.Length; p++)
            {
                joints.Add(from + ((pieces[p - 1].To + pieces[p].From) / 2));
            }
        }

        joints.Sort();
        return new LaidCourse(shape, rows, [.. joints]);
    }
}
