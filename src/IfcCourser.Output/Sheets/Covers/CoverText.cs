using IfcCourser.Layouts;

namespace IfcCourser.Output.Sheets.Covers;

/// <summary>Every word of a cover beside those of <see cref="SheetText"/>.</summary>
internal static class CoverText
{
    public const string Subject = "Block coursing: shop drawings";

    public const string Index = "Sheets of this set";

    public const string Issues = "Issues";

    public const string NoIssue = "none named: for review";

    public const string Job = "Job";

    public const string Walls = "Walls";

    public const string Skipped = "Walls not laid out";

    public const string Openings = "Openings that await the designer";

    public const string Letters = "Numbers of sheets";

    public static IEnumerable<(string Letter, string Meaning)> Kinds =>
    [
        ("C", "cover"), ("S", "set-out of bars, for the slab; files in set-out"), ("P", "plans of the first and second course"), ("W", "walls, by their number in the model"),
        ("D", "details"), ("Q", "quantities and heights"), ("M", "packs of blocks, where they are set down"),
    ];

    public static IEnumerable<string> Notes(Layout layout)
    {
        var (catalog, text) = (layout.Rules.Catalog, new SheetLengths(layout.Rules.Catalog.Units));
        yield return SheetText.Units(catalog.Units);
        yield return $"Blocks {text.Piece(catalog.UnitLength)} x {text.WithUnit(catalog.UnitHeight)} ({catalog.Name}: {catalog.Title.TrimEnd('.')}); rules {layout.Rules.Set.Name}.";
        yield return $"Head joints {text.WithUnit(catalog.HeadJoint.Nominal)}, bed joints {text.WithUnit(catalog.BedJoint.Nominal)}; levelling bed {text.Piece(catalog.LevellingBed.Min)} to {text.WithUnit(catalog.LevellingBed.Max)}.";
        yield return $"Least lap {text.WithUnit(layout.Rules.MinOverlap)}, least piece {text.WithUnit(layout.Rules.MinPiece)}. Openings stand on module lines every {text.WithUnit(layout.Rules.Module)} where the tables say nothing else.";
        yield return "Heights are measured from the level line: the top of the first course.";
        yield return "A and B are the left and the right end of a wall as its sheet shows it; lay from A to B.";
        foreach (var caution in layout.Rules.Set.Cautions)
        {
            yield return caution;
        }
    }

    /// <summary>Walls of a key plan that have no number there.</summary>
    public static string NotNumbered(int walls) => FormattableString.Invariant($"{walls} more {(walls == 1 ? "wall" : "walls")}: numbered in the storey plan");
}
