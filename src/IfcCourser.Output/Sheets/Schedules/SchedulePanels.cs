using System.Globalization;
using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Panels;
using IfcCourser.Units;

namespace IfcCourser.Output.Sheets.Schedules;

/// <summary>Tables over all walls: pieces, cuts, lintels, openings, bars.</summary>
internal static class SchedulePanels
{
    public static ImmutableArray<Panel> Of(Layout layout)
    {
        var text = new SheetLengths(layout.Rules.Catalog.Units);
        var pieces = layout.Walls.SelectMany(wall => PieceSchedule.Of(wall) is var marks
            ? wall.Courses.SelectMany(course => course.Pieces).Select(piece => new Counted(wall, piece, marks.MarkOf(piece)))
            : []).ToArray();
        Panel[] panels =
        [
            Uncut(text, pieces), Sawn(layout, text, pieces), Shaped(layout, text, pieces), Lintels(layout, text), Openings(layout, text),
            BarTables.Schedule(layout, layout.Walls.Select(wall => wall.Identity.GlobalId), SheetText.BarScheduleOfSet),
            BarTables.Schedule(layout, layout.Walls.Select(wall => wall.Identity.GlobalId), SheetText.BeamBarScheduleOfSet, areVertical: false), WordList.Of(SheetText.Notes, ScheduleText.Notes(text)),
        ];
        return [.. panels.Where(panel => !panel.Rows.IsEmpty)];
    }

    private static Panel Uncut(SheetLengths text, IEnumerable<Counted> pieces) => Table.Of(
        ScheduleText.Units,
        ["Product", "Length", "Height", "Thick", "No"],
        0,
        pieces.Where(counted => counted.Piece.Cut == Cuts.None)
            .GroupBy(counted => (counted.Piece.Product, counted.Piece.IsTrough, counted.Piece.Length, counted.Piece.Height, counted.Thickness))
            .OrderByDescending(same => same.Key.Thickness).ThenByDescending(same => same.Key.Length).ThenByDescending(same => same.Key.Height).ThenBy(same => same.Key.Product, StringComparer.Ordinal)
            .Select(same => ImmutableArray.Create(
                same.Key.Product, text.Piece(same.Key.Length), text.Piece(same.Key.Height), text.Piece(same.Key.Thickness), Number(same.Count()))));

    private static Panel Sawn(Layout layout, SheetLengths text, IEnumerable<Counted> pieces) => Table.Of(
        ScheduleText.Cuts,
        ["Length", "Height", "Thick", "Cut", "No", "In"],
        5,
        pieces.Where(counted => counted.Piece.Cut != Cuts.None && counted.Piece.Outline is null)
            .GroupBy(counted => (counted.Thickness, counted.Piece.Length, counted.Piece.Height, Code: SheetText.CutCode(counted.Piece)))
            .OrderByDescending(same => same.Key.Thickness).ThenByDescending(same => same.Key.Length).ThenByDescending(same => same.Key.Height).ThenBy(same => same.Key.Code, StringComparer.Ordinal)
            .Select(same => ImmutableArray.Create(
                text.Piece(same.Key.Length), text.Piece(same.Key.Height), text.Piece(same.Key.Thickness), same.Key.Code, Number(same.Count()), Places(layout, same))));

    /// <summary>One row a mark of a wall: its sheet has the lengths of the edges.</summary>
    private static Panel Shaped(Layout layout, SheetLengths text, IEnumerable<Counted> pieces) => Table.Of(
        ScheduleText.Shapes,
        ["Wall", "Marks", "Thick", "No"],
        1,
        pieces.Where(counted => counted.Piece.Outline is not null).GroupBy(counted => counted.Wall)
            .OrderBy(same => WallNumbers.Of(layout, same.Key))
            .Select(same => ImmutableArray.Create(
                WallNumbers.Sheet(layout, same.Key),
                string.Join(", ", same.Select(counted => counted.Mark).Distinct(StringComparer.Ordinal)),
                text.Piece(same.Key.Frame.Thickness),
                Number(same.Count()))));

    private static Panel Lintels(Layout layout, SheetLengths text) => Table.Of(
        ScheduleText.Lintels,
        ["Product", "Length", "Thick", "No", "In"],
        0,
        layout.Walls.SelectMany(wall => wall.Lintels.Select(lintel => (Wall: wall, Lintel: lintel)))
            .GroupBy(one => (
                Product: one.Lintel.Kind == Catalogs.LintelKind.Formed ? SheetText.FormedBeamShort : one.Lintel.Product,
                Length: (one.Lintel.To - one.Lintel.From).RoundTo(layout.Rules.Catalog.CutGrid), one.Wall.Frame.Thickness))
            .OrderBy(same => same.Key.Product, StringComparer.Ordinal).ThenByDescending(same => same.Key.Length).ThenByDescending(same => same.Key.Thickness)
            .SelectMany(same => same.Select(one => $"{WallNumbers.Sheet(layout, one.Wall)} {one.Lintel.Id}")
                .Select((places, i) => ImmutableArray.Create(
                    i > 0 ? string.Empty : same.Key.Product,
                    i > 0 ? string.Empty : text.Piece(same.Key.Length),
                    i > 0 ? string.Empty : text.Piece(same.Key.Thickness),
                    i > 0 ? string.Empty : Number(same.Count()),
                    places))));

    private static Panel Openings(Layout layout, SheetLengths text) => Table.Of(
        ScheduleText.Openings,
        ["Wall", "Tag", "Name", "Width", "Height", "Sill"],
        2,
        from wall in layout.Walls.OrderBy(wall => WallNumbers.Of(layout, wall))
        from pair in wall.Openings.Zip(OpeningTags.Of(wall.Openings))
        let placed = pair.First.Placed
        select ImmutableArray.Create(
            WallNumbers.Sheet(layout, wall),
            pair.Second,
            pair.First.Opening.Name ?? SheetText.OpeningKindName(pair.First.Opening.Kind),
            text.Piece(placed.Width),
            text.Piece(placed.Height),
            text.Height(placed.Bottom - wall.LevelLine)));

    /// <summary>Wall by wall its marks, with how many where it is more than one.</summary>
    private static string Places(Layout layout, IEnumerable<Counted> pieces) => string.Join(", ", pieces
        .GroupBy(counted => (Wall: WallNumbers.Sheet(layout, counted.Wall), counted.Mark))
        .OrderBy(same => same.Key.Wall, StringComparer.Ordinal).ThenBy(same => same.Key.Mark.Length).ThenBy(same => same.Key.Mark, StringComparer.Ordinal)
        .Select(same => $"{same.Key.Wall} {same.Key.Mark}" + (same.Count() > 1 ? FormattableString.Invariant($" x{same.Count()}") : string.Empty)));

    private static string Number(int count) => count.ToString(CultureInfo.InvariantCulture);

    private sealed record Counted(WallLayout Wall, Piece Piece, string Mark)
    {
        public Length Thickness => Wall.Frame.Thickness;
    }
}
