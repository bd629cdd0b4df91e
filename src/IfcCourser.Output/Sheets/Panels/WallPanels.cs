using System.Globalization;
using IfcCourser.Catalogs;
using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Walls;

namespace IfcCourser.Output.Sheets.Panels;

/// <summary>What stands beside the elevation: what is not a full block, openings, lintels, bars, key plan, legend, notes, cautions.</summary>
internal static class WallPanels
{
    /// <summary>Tables of each wall, with its number where there are several; what holds for all of them once.</summary>
    /// <param name="walls">At least one, all of a storey.</param>
    public static ImmutableArray<Panel> Of(ImmutableArray<WallFacts> walls)
    {
        var general = walls.Select(wall => WallNotes.General(wall).ToArray()).ToArray();
        var shared = general[0].Where(note => general.All(notes => notes.Contains(note, StringComparer.Ordinal))).ToArray();
        Panel[] panels =
        [
            .. walls.SelectMany((facts, i) => Tables(facts, Titled(facts)).Concat(walls.Length == 1 ? [] : [Notes(facts, general[i].Except(shared, StringComparer.Ordinal))])),
            .. KeyPlan.Of(walls), Legend.Of(walls) with { OnCover = SheetText.Legend },
            walls is [var alone] ? WordList.Of(SheetText.Notes, shared.Concat(WallNotes.Own(alone))) : WordList.Of(SheetText.Notes, shared),
            Cautions.Panel,
        ];
        return [.. panels.Where(panel => !panel.Rows.IsEmpty)];

        Func<string, string> Titled(WallFacts facts) => title => walls.Length == 1 ? title : SheetText.Of(facts.Number, title);

        Panel Notes(WallFacts facts, IEnumerable<string> unshared) => WordList.Of(Titled(facts)(SheetText.Notes), unshared.Concat(WallNotes.Own(facts)));
    }

    private static IEnumerable<Panel> Tables(WallFacts facts, Func<string, string> titled) =>
    [
        Pieces(facts, titled), Beds(facts, titled), Rakes(facts, titled), OpeningTable(facts, titled), Lintels(facts, titled), Beams(facts, titled), BeamBars(facts, titled), Embeds(facts, titled),
        BarTables.Places(facts, titled(SheetText.BarTable)), BarTables.Steel(facts, titled(SheetText.SteelTable)),
    ];

    private static Panel Pieces(WallFacts facts, Func<string, string> titled) => Table.Of(
        titled(SheetText.PieceTable),
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

    private static Panel Rakes(WallFacts facts, Func<string, string> titled) => Table.Of(
        titled(SheetText.RakeTable),
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
    private static Panel Beds(WallFacts facts, Func<string, string> titled) => Table.Of(
        titled(SheetText.BedTable),
        ["From", "Block", "Least", "Most", "Mean"],
        1,
        facts.Wall.Courses.Take(1).SelectMany(course => course.Pieces).Where(piece => piece.Bed is not null).Select(piece => ImmutableArray.Create(
            facts.Text.Dimension(piece.From), piece.Id, facts.Text.Piece(piece.Bed!.Least), facts.Text.Piece(piece.Bed.Most), facts.Text.Piece(piece.Bed.Mean))));

    private static Panel OpeningTable(WallFacts facts, Func<string, string> titled) => Table.Of(
        titled(SheetText.OpeningTable),
        ["Tag", "Name", "Left", "Sill", "Head"],
        1,
        facts.Wall.Openings.Zip(facts.Tags, (opening, tag) => ImmutableArray.Create(
            tag,
            opening.Opening.Name ?? SheetText.OpeningKindName(opening.Opening.Kind),
            facts.Text.Dimension(opening.Placed.Left),
            facts.Text.Height(opening.Placed.Bottom - facts.Wall.LevelLine),
            facts.Text.Height(opening.Placed.Top - facts.Wall.LevelLine))));

    private static Panel Lintels(WallFacts facts, Func<string, string> titled) => Table.Of(
        titled(SheetText.LintelTable),
        ["Tag", "Product", "Length", "Bearing l, r"],
        1,
        facts.Wall.Lintels.Select(lintel => ImmutableArray.Create(
            lintel.Id,
            lintel.Kind == LintelKind.Formed ? SheetText.FormedBeam : lintel.Product,
            Grid(facts, lintel.To - lintel.From),
            Grid(facts, lintel.BearingLeft) + ", " + Grid(facts, lintel.BearingRight))));

    private static Panel Beams(WallFacts facts, Func<string, string> titled) => Table.Of(
        titled(SheetText.BeamTable),
        ["Tag", "Course", "From", "To"],
        3,
        facts.Beams.Select(beam => ImmutableArray.Create(
            beam.Id,
            beam.Course is { } course ? Number(course) : "slope",
            facts.Text.Dimension(beam.From),
            facts.Text.Dimension(beam.To))));

    /// <summary>A table of its own, for laps in feet and inches are long.</summary>
    private static Panel BeamBars(WallFacts facts, Func<string, string> titled) => Table.Of(
        titled(SheetText.BeamBarTable),
        ["Tag", "Bars, laps"],
        1,
        facts.Beams.Select(beam => ImmutableArray.Create(beam.Id, SheetText.BeamBars(beam, facts.Text))));

    /// <summary>Equal ones at one height together.</summary>
    private static Panel Embeds(WallFacts facts, Func<string, string> titled) => Table.Of(
        titled(SheetText.EmbedTable),
        ["No", "Height", "What, at"],
        2,
        facts.Wall.Embeds.GroupBy(embed => (embed.Product, embed.Z, embed.Note)).Select(same => ImmutableArray.Create(
            Number(same.Count()),
            facts.Text.Height(same.Key.Z - facts.Wall.LevelLine),
            SheetText.EmbedPlaces(same, facts.Text))));

    private static string Grid(WallFacts facts, Units.Length length) => facts.Text.Piece(length, facts.Layout.Rules.Catalog.CutGrid);

    private static string Number(int count) => count.ToString(CultureInfo.InvariantCulture);
}
