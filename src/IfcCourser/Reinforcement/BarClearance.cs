using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Units;

namespace IfcCourser.Reinforcement;

/// <summary>How far bars stand from the head joints of the courses they pass.</summary>
internal sealed class BarClearance
{
    private readonly ImmutableArray<(Interval Height, ImmutableArray<Length> Joints)> _courses;
    private readonly Length _enough;

    /// <param name="courses">Height and joints of every course.</param>
    /// <param name="clearance">Least distance, centre to centre.</param>
    /// <param name="enough">Distance over which more is no better.</param>
    public BarClearance(IEnumerable<(Interval Height, ImmutableArray<Length> Joints)> courses, Length clearance, Length enough)
    {
        _courses = [.. courses.Select(course => (course.Height, course.Joints.Sort()))];
        _enough = enough;
        Least = clearance;
    }

    public Length Least { get; }

    /// <summary>Courses that a bar passes too near a joint, and its least distance from a joint, up to what is enough.</summary>
    public (int OnJoint, Length Distance) At(Length place, Interval heights)
    {
        var (onJoint, least) = (0, _enough);
        foreach (var (height, joints) in _courses)
        {
            if (height.Overlaps(heights))
            {
                var distance = Nearest(joints, place);
                onJoint += distance < Least ? 1 : 0;
                least = Length.Min(least, distance);
            }
        }

        return (onJoint, least);
    }

    private static Length Nearest(ImmutableArray<Length> joints, Length place)
    {
        var found = joints.BinarySearch(place);
        var after = found < 0 ? ~found : found;
        var distance = after < joints.Length ? joints[after] - place : new Length(long.MaxValue);
        return after > 0 ? Length.Min(distance, place - joints[after - 1]) : distance;
    }
}
