namespace IfcCourser.Output.Sheets.Schedules;

/// <summary>Every word that schedules and storey poles print beside those of <see cref="SheetText"/>.</summary>
internal static class ScheduleText
{
    public const string Title = "Schedules";

    public const string DocumentType = "Schedule";

    public const string PolesTitle = "Storey poles";

    public const string PolesType = "Storey pole";

    public const string Poles = "Poles";

    public const string PoleTable = "Which wall takes which pole";

    public const string Units = "Blocks laid uncut";

    public const string Cuts = "Blocks to be sawn, by size";

    public const string Shapes = "Blocks sawn to a shape";

    public const string Lintels = "Lintels";

    public const string Openings = "Openings (masonry)";

    public const string FromLevelLine = "from level line";

    public const string FromBase = "from base";

    public static string Number(int number) => FormattableString.Invariant($"Q{number:00}");

    public static string Page(int page, int count) => Page(Title, page, count);

    public static string PolesPage(int page, int count) => Page(PolesTitle, page, count);

    public static string Pole(int number) => FormattableString.Invariant($"Pole {number}");

    public static IEnumerable<string> Notes(SheetLengths text)
    {
        yield return text.Units == IfcCourser.Units.UnitSystem.Inch ? "Sizes in inches, sills in feet and inches from the level line." : "Sizes in millimetres, sills from the level line.";
        yield return "Counts are as laid: waste, breakage and offcuts that serve again are not in them. The bar schedule's lengths are as cut.";
        yield return "In: wall and mark of the piece in the table of the wall's sheet, with how many where it is more than one.";
    }

    private static string Page(string title, int page, int count) => count == 1 ? title : FormattableString.Invariant($"{title}, page {page} of {count}");

    public static IEnumerable<string> PoleNotes(Catalogs.Catalog catalog, SheetLengths text)
    {
        yield return "Each pole is drawn over its full height. Transfer the heights from the level line, the top of the first course, to a lath; stand it on the level line, not on the slab.";
        yield return SheetText.Drift(catalog, text);
        yield return "Heights from the base assume the levelling bed as drawn; after the slab is measured only those from the level line count.";
    }
}
