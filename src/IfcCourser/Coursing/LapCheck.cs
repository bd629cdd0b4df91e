using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>Distances between head joints.</summary>
internal static class LapCheck
{
    /// <summary>Distances are compared with the solver's own dust: a lap of exactly the limit holds.</summary>
    private const long DustNanometres = 5_000;

    /// <summary>
    /// Joints of the upper course that stand too near to one of the lower, with their lap. Joints against walls or
    /// lintels are not compared with each other: a butted junction's joint runs up over itself.
    /// </summary>
    public static IEnumerable<(Length Joint, Length Lap)> ShortLaps(LaidCourse lower, LaidCourse upper, Length least) =>
        upper.PieceJoints.Select(joint => (Joint: joint, Lap: Nearest(lower.Joints, joint)))
            .Concat(upper.Shape.EdgeJoints.Select(joint => (Joint: joint, Lap: Nearest(lower.PieceJoints, joint))))
            .Where(pair => pair.Lap.Nanometres < least.Nanometres - DustNanometres);

    public static Length Nearest(IEnumerable<Length> joints, Length place)
    {
        var nearest = new Length(long.MaxValue);
        foreach (var joint in joints)
        {
            nearest = Length.Min(nearest, Length.Abs(joint - place));
        }

        return nearest;
    }
}
