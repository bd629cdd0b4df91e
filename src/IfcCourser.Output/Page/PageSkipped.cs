using IfcCourser.Output.Sheets;
using IfcCourser.Walls;

namespace IfcCourser.Output.Page;

/// <summary>A wall that is not laid out.</summary>
/// <param name="Number">Its place among all walls of the model, from 1.</param>
internal sealed record PageSkipped(SkippedWall Wall, int Number)
{
    public string Mark => SheetText.WallNumber(Number);

    public string Storey => Wall.Identity.Storey ?? SheetText.UnnamedStorey;
}
