namespace IfcCourser.Layouts;

/// <summary>The mortar joints of walls: areas in m2 as bedded, volumes in litres.</summary>
/// <param name="BedArea">Between courses and under lintels.</param>
/// <param name="HeadArea">Between pieces, and against lintels and other walls; joints of no width are not counted.</param>
/// <param name="BedVolume">At the laid thickness, or the spread of the catalog where that is more.</param>
/// <param name="HeadVolume">The same.</param>
/// <param name="LevellingArea">Under first courses.</param>
/// <param name="LevellingVolume">At the bed's thickness as laid out; readings of the slab change it.</param>
public readonly record struct JointSums(
    double BedArea, double HeadArea, double BedVolume, double HeadVolume, double LevellingArea, double LevellingVolume)
{
    public static JointSums operator +(JointSums a, JointSums b) => new(
        a.BedArea + b.BedArea, a.HeadArea + b.HeadArea, a.BedVolume + b.BedVolume, a.HeadVolume + b.HeadVolume,
        a.LevellingArea + b.LevellingArea, a.LevellingVolume + b.LevellingVolume);
}
