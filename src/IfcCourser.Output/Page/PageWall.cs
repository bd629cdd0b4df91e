using IfcCourser.Layouts;
using IfcCourser.Output.Sheets;
using IfcCourser.Output.Sheets.Walls;

namespace IfcCourser.Output.Page;

/// <summary>A wall that is laid out, with what its page and its sheet call it.</summary>
internal sealed class PageWall(Layout layout, WallLayout wall, int number)
{
    public WallLayout Wall { get; } = wall;

    public WallFacts Facts { get; } = new(layout, wall);

    /// <summary>Its place among all walls of the model, from 1, as on its sheet.</summary>
    public int Number { get; } = number;

    /// <summary>Of the sheet: W012.</summary>
    public string Mark => SheetText.WallNumber(Number);

    public string Name => Wall.Identity.Label;

    public string Storey => Wall.Identity.Storey ?? SheetText.UnnamedStorey;

    /// <summary>Its openings with the tags of its sheet.</summary>
    public IEnumerable<PageOpening> Openings => Wall.Openings.Zip(Facts.Tags, (opening, tag) => new PageOpening(this, opening, tag));
}
