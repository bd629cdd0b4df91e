using System.Globalization;
using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Panels;

namespace IfcCourser.Output.Sheets.Staging;

/// <summary>What stands beside a staging plan: products, packs in the order in which they are opened, notes, cautions.</summary>
internal static class StagingPanels
{
    public static ImmutableArray<Panel> Of(StagingFacts facts)
    {
        Panel[] panels =
        [
            Table.Of(
                StagingText.Products, ["Is", "Product", "Width", "Packs"], 1,
                facts.Products.Select(product => ImmutableArray.Create(product.Letter, product.What, product.Width, product.Packs.ToString(CultureInfo.InvariantCulture)))),
            Packs(facts),
            MarkSamples.Of(
            [
                (true, MarkSamples.Row(StagingText.LegendPack, PolylineItem.Rectangle(Pen.CutBlock, MarkSamples.Face), MarkSamples.Word("7 A", 0, Pen.CutLength))),
                (true, MarkSamples.Row(StagingText.LegendWall, MarkSamples.Word("W001", 0, Pen.Heading))),
            ]),
            WordList.Of(SheetText.Notes, StagingText.Notes(facts)),
            Cautions.Panel,
        ];
        return [.. panels.Where(panel => !panel.Rows.IsEmpty)];
    }

    private static Panel Packs(StagingFacts facts)
    {
        string Walls(StagedPack pack) => string.Join(", ", pack.Uses.Where(use => use.Units > 0)
            .Select(use => FormattableString.Invariant($"{facts.Wall(use.Wall)} {use.Units}"))
            .Concat(pack.Spare > 0 ? [StagingText.Spare(pack.Spare)] : []).Concat(pack.Place is null ? [StagingText.NoRoom] : []));
        return facts.HasDeliveries
            ? Table.Of(StagingText.Packs, ["Pack", "Comes", "Units for"], 2, facts.Packs.Select(pack => ImmutableArray.Create(facts.Mark(pack), pack.Delivery, Walls(pack))))
            : Table.Of(StagingText.Packs, ["Pack", "Units for"], 1, facts.Packs.Select(pack => ImmutableArray.Create(facts.Mark(pack), Walls(pack))));
    }
}
