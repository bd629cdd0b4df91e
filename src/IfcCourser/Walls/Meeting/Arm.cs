using IfcCourser.Walls.Reading;

namespace IfcCourser.Walls.Meeting;

/// <summary>One of the two walls of an encounter.</summary>
/// <param name="Wall">Index of the draft.</param>
/// <param name="Side">Which part of its run meets the other.</param>
/// <param name="Stretch">Where on its run the other wall's masonry crosses its masonry, mm.</param>
/// <param name="Body">The same of the whole bodies, all layers.</param>
/// <param name="Slant">How much farther along the run the other wall crosses its right face than its left one, mm; 0 where they are square.</param>
public sealed record Arm(int Wall, JunctionSide Side, Slab Stretch, Slab Body, double Slant)
{
    /// <summary>Where its longer face meets the other's near face, for an arm that comes from outside.</summary>
    public double Near => Side == JunctionSide.End ? Stretch.From + Math.Abs(Slant) : Stretch.To - Math.Abs(Slant);
}
