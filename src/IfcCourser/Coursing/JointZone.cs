using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>A cost for each head joint whose centre lies nearer than <paramref name="Reach"/> to <paramref name="Centre"/>.</summary>
internal readonly record struct JointZone(Length Centre, Length Reach, long Cost)
{
    /// <summary>Whether joints of a segment of a size, from place 0, may lie so near.</summary>
    public bool MeetsJointsOf(Length size) => Centre + Reach > Length.Zero && Centre - Reach < size;
}
