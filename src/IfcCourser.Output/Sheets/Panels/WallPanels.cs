using System.Globalization;
using IfcCourser.Catalogs;
using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Walls;

namespace IfcCourser.Output.Sheets.Panels;

/// <summary>What stands beside the elevation: what is not a full block, openings, lintels, bars, key plan, legend, notes, cautions.</summary>
internal static class WallPanels
{
    public static ImmutableArray<Panel> Of(WallFacts facts)
    {
        Panel[] panels =
        [
            Pieces(facts), Beds(facts), Rakes(facts), OpeningTable(facts), Lintels(facts), Beams(facts), Embeds(facts), BarTables.Places(facts), BarTables.Steel(facts), KeyPlan.Of(facts), Legend.Of(facts),
            WordList.Of(SheetText.Notes, WallNotes.Of(facts)), WordList.Of(SheetText.Cautions, SheetText.CautionTexts),
        ];
        return [.. panels.Where(panel => !panel.Rows.IsEmpty)];
    }

    private static Panel Pieces(WallFacts facts) => Table.Of(
        SheetText.PieceTable,
        ["Mark", "Product", "Length", "Height", "Cut", "No"],
        1,
        facts.Schedule.Rows.Select(row => ImmutableArray.Create(
            row.Mark,
            row.Example.Product,
            Sawn(facts, row.Example, row.Example.Length),
            Sawn(facts, row.Example, row.Example.Height),
            SheetText.CutCode(row.Example),
            Number(row.Count))));

    /// <summary>Where a piece meets a slope its size is what the model's lines leave; elsewhere it was chosen on the saw's grid.</summary>
    private static string Sawn(WallFacts facts, Piece piece, Units.Length length) =>
        RakeShape.Of(piece) is null ? facts.Text.Piece(length) : Grid(facts, length);

    private static Panel Rakes(WallFacts facts) => Table.Of(
        SheetText.RakeTable,
        ["Mark", "Below", "Above", "Left", "Right", "Slope", "High"],
        6,
        facts.Schedule.Rows.Select(row => (row.Mark, Rake: RakeShape.Of(row.Example))).Where(row => row.Rake is not null)
            .Select(row => ImmutableArray.Create(
                row.Mark,
                Grid(facts, row.Rake!.Below),
                Grid(facts, row.Rake.Above),
                Grid(facts, row.Rake.Left),
                Grid(facts, row.Rake.Right),
                SheetText.Slope(row.Rake),
                SheetText.HighSide(row.Rake))));

    /// <summary>Once the slab was read.</summary>
    private static Panel Beds(WallFacts facts) => Table.Of(
        SheetText.BedTable,
        ["From", "Block", "Least", "Most", "Mean"],
        1,
        facts.Wall.Courses.Take(1).SelectMany(course => course.Pieces).Where(piece => piece.Bed is not null).Select(piece => ImmutableArray.Create(
            facts.Text.Dimension(piece.From), piece.Id, facts.Text.Piece(piece.Bed!.Least), facts.Text.Piece(piece.Bed.Most), facts.Text.Piece(piece.Bed.Mean))));

    private static Panel OpeningTable(WallFacts facts) => Table.Of(
        SheetText.OpeningTable,
        ["Tag", "Name", "Left", "Sill", "Head"],
        1,
        facts.Wall.Openings.Zip(facts.Tags, (opening, tag) => ImmutableArray.Create(
            tag,
            opening.Opening.Name ?? SheetText.OpeningKindName(opening.Opening.Kind),
            facts.Text.Dimension(opening.Placed.Left),
            facts.Text.Height(opening.Placed.Bottom - facts.Wall.LevelLine),
            facts.Text.Height(opening.Placed.Top - facts.Wall.LevelLine))));

    private static Panel Lintels(WallFacts facts) => Table.Of(
        SheetText.LintelTable,
        ["Tag", "Product", "Length", "Bearing l, r"],
        1,
        facts.Wall.Lintels.Select(lintel => ImmutableArray.Create(
            lintel.Id,
            lintel.Kind == LintelKind.Formed ? SheetText.FormedBeam : lintel.Product,
            Grid(facts, lintel.To - lintel.From),
            Grid(facts, lintel.BearingLeft) + ", " + Grid(facts, lintel.BearingRight))));

    private static Panel Beams(WallFacts facts) => Table.Of(
        SheetText.BeamTable,
        ["Tag", "Course", "From", "To", "Bars, laps"],
        4,
        facts.Wall.BondBeams.Select(beam => ImmutableArray.Create(
            beam.Id,
            beam.Course is { } course ? Number(course) : "slope",
            facts.Text.Dimension(beam.From),
            facts.Text.Dimension(beam.To),
            SheetText.BeamBars(beam, facts.Text))));

    /// <summary>Equal ones at one height together.</summary>
    private static Panel Embeds(WallFacts facts) => Table.Of(
        SheetText.EmbedTable,
        ["No", "Height", "What, at"],
        2,
        facts.Wall.Embeds.GroupBy(embed => (embed.Product, embed.Z, embed.Note)).Select(same => ImmutableArray.Create(
            Number(same.Count()),
            facts.Text.Height(same.Key.Z - facts.Wall.LevelLine),
            SheetText.EmbedPlaces(same, facts.Text))));

    private static string Grid(WallFacts facts, Units.Length length) => facts.Text.Piece(length, facts.Layout.Rules.Catalog.CutGrid);

    private static string Number(int count) => count.ToString(CultureInfo.InvariantCulture);
}
