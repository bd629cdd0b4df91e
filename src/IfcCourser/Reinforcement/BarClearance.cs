using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Units;

namespace IfcCourser.Reinforcement;

/// <summary>How far bars stand from the head joints of the courses they pass.</summary>
internal sealed class BarClearance
{
    private readonly ImmutableArray<(Interval Height, ImmutableArray<Length> Joints, ImmutableArray<Interval> Pieces)> _courses;
    private readonly Length _least;
    private readonly Length _enough;

    /// <param name="courses">The wall's courses.</param>
    /// <param name="clearance">Least distance, centre to centre.</param>
    /// <param name="enough">Distance over which more is no better.</param>
    public BarClearance(IEnumerable<CourseMasonry> courses, Length clearance, Length enough)
    {
        _courses = [.. courses.Select(course => (course.Height, course.Joints.Sort(), Reaches(course.Pieces)))];
        _least = clearance;
        _enough = enough;
    }

    /// <summary>A bar that passes no course at all is in no joint.</summary>
    public Clearance At(Length place, Interval heights)
    {
        var (onJoint, distance, passed, isInPiece) = (0, _enough, false, false);
        foreach (var course in _courses)
        {
            if (course.Height.Overlaps(heights))
            {
                var nearest = Nearest(course.Joints, place);
                onJoint += nearest < _least ? 1 : 0;
                distance = Length.Min(distance, nearest);
                passed = true;
                isInPiece |= IsInPiece(course.Pieces, place);
            }
        }

        return new Clearance(onJoint, distance, isInPiece || !passed);
    }

    /// <summary>Pieces by their beginnings, each with how far it or one before it reaches.</summary>
    private static ImmutableArray<Interval> Reaches(ImmutableArray<Interval> pieces)
    {
        var reached = new Length(long.MinValue);
        return [.. pieces.OrderBy(piece => piece.From).Select(piece => new Interval(piece.From, reached = Length.Max(reached, piece.To)))];
    }

    private static bool IsInPiece(ImmutableArray<Interval> reaches, Length place)
    {
        var (low, high) = (0, reaches.Length);
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = reaches[middle].From < place ? (middle + 1, high) : (low, middle);
        }

        return low > 0 && reaches[low - 1].To > place;
    }

    private static Length Nearest(ImmutableArray<Length> joints, Length place)
    {
        var found = joints.BinarySearch(place);
        var after = found < 0 ? ~found : found;
        var distance = after < joints.Length ? joints[after] - place : new Length(long.MaxValue);
        return after > 0 ? Length.Min(distance, place - joints[after - 1]) : distance;
    }
}
