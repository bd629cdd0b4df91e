using static System.FormattableString;

namespace IfcCourser.Output.Sheets.Staging;

/// <summary>Every word that a staging plan prints beside those of <see cref="SheetText"/>.</summary>
internal static class StagingText
{
    public const string DocumentType = "Staging plan";

    public const string Products = "Products";

    public const string Packs = "Packs, as they are opened";

    public const string LegendPack = "pack, and its product";

    public const string LegendWall = "wall, and its sheet";

    public const string NoRoom = "no room found: set down where there is some";

    public static string Number(int number) => Invariant($"M{number:00}");

    public static string Title(string? storey) => $"Packs, {storey ?? SheetText.UnnamedStorey}";

    public static string Spare(int units) => Invariant($"{units} spare");

    public static IEnumerable<string> Notes(StagingFacts facts)
    {
        var (text, data) = (facts.Plan.Text, facts.Data);
        yield return $"A pack is taken to be {text.Piece(data.PackLength)} x {text.WithUnit(data.PackWidth)}: replace this example of the catalog by the supplier's.";
        yield return $"Packs stand at least {text.WithUnit(data.Strip)} clear of every wall, for the mason, and at most {text.WithUnit(data.Reach)} from theirs; ways through doors stay free.";
        yield return "A pack is opened at the first wall in its row; what another storey takes of it is carried there. Spare units are for breakage, or left over.";
        yield return "Whether a slab, a scaffold or soft ground carries the packs is not looked at here: ask the engineer before they are set down, above all on floors.";
    }
}
