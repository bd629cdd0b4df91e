using System.Numerics;
using IfcCourser.Layouts;

namespace IfcCourser.Comparing;

/// <summary>What a wall is made of, counted.</summary>
/// <param name="Whole">Pieces laid uncut, bought part lengths included.</param>
/// <param name="Cut">Pieces that are cut.</param>
/// <param name="SawCuts">A piece cut in length and height counts twice.</param>
/// <param name="Bars">Upright bars.</param>
public sealed record PieceCounts(int Whole, int Cut, int SawCuts, int Lintels, int Bars)
{
    public static PieceCounts operator -(PieceCounts a, PieceCounts b) =>
        new(a.Whole - b.Whole, a.Cut - b.Cut, a.SawCuts - b.SawCuts, a.Lintels - b.Lintels, a.Bars - b.Bars);

    /// <param name="wall">Null for a wall that is not laid out: nothing.</param>
    public static PieceCounts Of(WallLayout? wall)
    {
        var pieces = wall?.Courses.SelectMany(course => course.Pieces).ToList() ?? [];
        var whole = pieces.Count(piece => piece.Cut is Cuts.None);
        return new PieceCounts(whole, pieces.Count - whole, pieces.Sum(piece => BitOperations.PopCount((uint)piece.Cut)), wall?.Lintels.Length ?? 0, wall?.Cores.Length ?? 0);
    }
}
