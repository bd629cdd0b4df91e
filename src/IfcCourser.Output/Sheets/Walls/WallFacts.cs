using IfcCourser.Layouts;

namespace IfcCourser.Output.Sheets.Walls;

/// <summary>A wall with what its sheet calls things: sheet number, tags of openings, marks of pieces, the unit of its numbers.</summary>
internal sealed class WallFacts
{
    /// <summary>Start of the run, from which everything along the wall is measured.</summary>
    public const double Start = 0;

    public WallFacts(Layout layout, WallLayout wall)
    {
        Layout = layout;
        Wall = wall;
        Text = new SheetLengths(layout.Rules.Catalog.Units);
        Schedule = PieceSchedule.Of(wall);
        Tags = OpeningTags.Of(wall.Openings);
        Number = NumberOf(wall);
    }

    public Layout Layout { get; }

    public WallLayout Wall { get; }

    public SheetLengths Text { get; }

    public PieceSchedule Schedule { get; }

    /// <summary>One for each opening of the wall, in its order: D1, W1, W2.</summary>
    public ImmutableArray<string> Tags { get; }

    /// <summary>The wall's place among all walls of the model, from 1: it keeps it whichever walls are laid out.</summary>
    public int Number { get; }

    /// <summary>As it stands over the wall's drawing: W003 and its name.</summary>
    public string Title => $"{SheetText.WallNumber(Number)}  {Name}";

    public string Name => Wall.Identity.Name ?? SheetText.UnnamedWall;

    /// <summary>Of the outline, or of pieces that run on into a wall that this one is bonded with.</summary>
    public double Left => Math.Min(Wall.Outline.Min(p => p.S.Mm), Wall.Courses.SelectMany(course => course.Pieces).Min(piece => piece.From.Mm));

    public double Right => Math.Max(Wall.Outline.Max(p => p.S.Mm), Wall.Courses.SelectMany(course => course.Pieces).Max(piece => piece.To.Mm));

    public double Bottom => Wall.Outline.Min(p => p.Z.Mm);

    public double Top => Wall.Outline.Max(p => p.Z.Mm);

    public double LevelLine => Wall.LevelLine.Mm;

    /// <summary>The sheet number of any wall of the layout.</summary>
    public int NumberOf(WallLayout wall) => WallNumbers.Of(Layout, wall);
}
