using IfcCourser.Walls.Reading;

namespace IfcCourser.Walls.Meeting;

/// <summary>Two drafted walls that meet, or nearly do; lengths in mm.</summary>
/// <param name="Kind">How they meet.</param>
/// <param name="First">At a tee the host.</param>
/// <param name="Second">At a tee the abutting wall.</param>
/// <param name="Gap">Between the bodies, along the run that falls short; 0 where they touch or overlap.</param>
/// <param name="Sine">Of the angle between the runs, positive.</param>
/// <param name="Height">Common height, model axes.</param>
public sealed record Encounter(JunctionKind Kind, Arm First, Arm Second, double Gap, double Sine, Slab Height)
{
    /// <summary>Within half a degree of a right angle.</summary>
    public bool IsSquare => Sine >= Math.Cos(Math.PI / 360);

    public Arm ArmOf(int wall) => First.Wall == wall ? First : Second;

    public Arm OtherThan(int wall) => First.Wall == wall ? Second : First;

    public bool TakesEnd(int wall, JunctionSide side) => (First.Wall == wall && First.Side == side) || (Second.Wall == wall && Second.Side == side);
}
