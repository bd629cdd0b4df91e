using IfcCourser.Comparing;
using IfcCourser.Layouts;

namespace IfcCourser.Output.Sheets.Walls;

/// <summary>A wall with what its sheet calls things: sheet number, tags of openings, marks of pieces, the unit of its numbers.</summary>
internal sealed class WallFacts
{
    /// <summary>Start of the run, from which everything along the wall is measured.</summary>
    public const double Start = 0;

    /// <param name="stretch">What the sheet shows of the wall; null for all of it.</param>
    /// <param name="revision">Null where nothing changed, or nobody asked.</param>
    public WallFacts(Layout layout, WallLayout wall, WallStretch? stretch = null, WallRevision? revision = null)
    {
        Revision = revision;
        Layout = layout;
        Whole = wall;
        Stretch = stretch;
        Wall = stretch?.Of(wall) ?? wall;
        Text = new SheetLengths(layout.Rules.Catalog.Units);
        Schedule = stretch is null ? PieceSchedule.Of(wall) : PieceSchedule.Of(wall).For(Wall.Courses.SelectMany(course => course.Pieces));
        Tags = [.. wall.Openings.Zip(OpeningTags.Of(wall.Openings)).Where(pair => stretch?.Has(pair.First) ?? true).Select(pair => pair.Second)];
        Number = NumberOf(wall);
        Left = Wall.Outline.Select(p => p.S.Mm).Concat(Wall.Courses.SelectMany(course => course.Pieces).Select(piece => piece.From.Mm)).Min();
        Right = Wall.Outline.Select(p => p.S.Mm).Concat(Wall.Courses.SelectMany(course => course.Pieces).Select(piece => piece.To.Mm)).Max();
        Bottom = Wall.Outline.Min(p => p.Z.Mm);
        Top = Wall.Outline.Max(p => p.Z.Mm);
    }

    public Layout Layout { get; }

    /// <summary>What the sheet shows of the wall.</summary>
    public WallLayout Wall { get; }

    /// <summary>The wall with what other sheets show of it.</summary>
    public WallLayout Whole { get; }

    /// <summary>Null where one sheet shows the whole wall.</summary>
    public WallStretch? Stretch { get; }

    /// <summary>What changed since the last issue.</summary>
    public WallRevision? Revision { get; }

    /// <summary>What is shown along the run, where that is not all of it, real millimetres.</summary>
    public (double From, double To) Shown => Stretch is null ? (double.MinValue, double.MaxValue) : (Left, Right);

    public SheetLengths Text { get; }

    public PieceSchedule Schedule { get; }

    /// <summary>One for each opening of the wall, in its order: D1, W1, W2.</summary>
    public ImmutableArray<string> Tags { get; }

    /// <summary>The wall's place among all walls of the model, from 1: it keeps it whichever walls are laid out.</summary>
    public int Number { get; }

    /// <summary>As it stands over the wall's drawing: W003 and its name, or W003.1 and which part of the wall.</summary>
    public string Title => Stretch is { } stretch
        ? $"{SheetText.PartNumber(Number, stretch.Index)}  {Name}{SheetText.Part(stretch.Index, stretch.Count)}"
        : $"{SheetText.WallNumber(Number)}  {Name}";

    public string Name => Wall.Identity.Name ?? SheetText.UnnamedWall;

    /// <summary>Of the outline, or of pieces that run on into a wall that this one is bonded with.</summary>
    public double Left { get; }

    public double Right { get; }

    public double Bottom { get; }

    public double Top { get; }

    /// <summary>Those of which the sheet shows something, from end to end.</summary>
    public IEnumerable<BondBeam> Beams => Whole.BondBeams.Where(beam => Wall.BondBeams.Any(shown => shown.Id == beam.Id));

    public double LevelLine => Wall.LevelLine.Mm;

    /// <summary>The sheet number of any wall of the layout.</summary>
    public int NumberOf(WallLayout wall) => WallNumbers.Of(Layout, wall);
}
