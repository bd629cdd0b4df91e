using System.Numerics;
using IfcCourser.Findings;

namespace IfcCourser.Layouts;

/// <summary>Sums over a layout.</summary>
/// <param name="Walls">Walls of the model, coursed or not.</param>
/// <param name="Coursed">Walls laid out.</param>
/// <param name="Pieces">Blocks laid, lintels not counted.</param>
/// <param name="FullUnits">Pieces laid uncut, bought part lengths included.</param>
/// <param name="PartUnits">Pieces that are cut.</param>
/// <param name="Cuts">Saw cuts: a piece cut in length and height counts twice.</param>
/// <param name="Cores">Reinforcement cores.</param>
/// <param name="Lintels">Lintels of all kinds.</param>
public sealed record LayoutTotals(
    int Walls, int Coursed, int Pieces, int FullUnits, int PartUnits, int Cuts, int Cores, int Lintels)
{
    public static LayoutTotals Of(Layout layout)
    {
        var pieces = layout.Walls.SelectMany(wall => wall.Courses).SelectMany(course => course.Pieces).ToList();
        var uncut = pieces.Count(piece => piece.Cut is Layouts.Cuts.None);
        return new LayoutTotals(
            Walls: layout.Walls.Length + layout.Skipped.Length,
            Coursed: layout.Walls.Length,
            Pieces: pieces.Count,
            FullUnits: uncut,
            PartUnits: pieces.Count - uncut,
            Cuts: pieces.Sum(piece => BitOperations.PopCount((uint)piece.Cut)),
            Cores: layout.Walls.Sum(wall => wall.Cores.Length),
            Lintels: layout.Walls.Sum(wall => wall.Lintels.Length));
    }

    /// <summary>Every finding of a layout: of the model, then of its walls; the reasons of skipped walls included.</summary>
    public static IEnumerable<Finding> AllFindings(Layout layout) =>
        layout.Findings
            .Concat(layout.Walls.SelectMany(wall => wall.Findings))
            .Concat(layout.Skipped.Select(wall => wall.Reason));
}
