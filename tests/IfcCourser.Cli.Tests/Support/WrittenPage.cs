namespace IfcCourser.Cli.Tests.Support;

/// <summary>A page of documentation that is made from the program; where it differs from the committed one, the new text is left beside it as .received.</summary>
internal static class WrittenPage
{
    /// <param name="page">Path from the repository's top.</param>
    public static void Matches(string page, string text)
    {
        var file = Fixtures.InRepository(page);
        var committed = File.Exists(file) ? File.ReadAllText(file) : string.Empty;
        if (committed != text)
        {
            File.WriteAllText(file + ".received", text);
        }

        Assert.Equal(committed.Split('\n'), text.Split('\n'));
    }

    /// <summary>A row of a Markdown table.</summary>
    public static string Row(params string[] cells) => $"| {string.Join(" | ", cells.Select(cell => cell.Replace("|", "\\|", StringComparison.Ordinal)))} |";
}
