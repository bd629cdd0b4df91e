namespace IfcCourser.Output.Sheets.Panels;

/// <summary>The cautions that every set bears on its cover, and every sheet that has room for them.</summary>
internal static class Cautions
{
    public static Panel Panel { get; } = WordList.Of(SheetText.Cautions, SheetText.CautionTexts) with { OnCover = SheetText.Cautions };
}
