using IfcCourser.Catalogs;
using IfcCourser.Cli.Tests.Support;
using IfcCourser.Findings;
using IfcCourser.Rules;

namespace IfcCourser.Cli.Tests.Pages;

/// <summary>The pages made from tables of the program say what the program has; a user who looks up a code or an option would notice if they did not.</summary>
public sealed class PageTests
{
    [Fact]
    public void The_page_of_findings_lists_every_code() => WrittenPage.Matches("src/IfcCourser/Findings/README.md", Text(
    [
        "# Findings",
        string.Empty,
        "What the tool may say of a model, in the order of its table (`FindingCodes.cs`), from which this page is made. Some findings matter less where",
        "they stand and are then reported with a lower severity.",
        string.Empty,
        WrittenPage.Row("code", "severity", "what is wrong", "what to do"),
        WrittenPage.Row("---", "---", "---", "---"),
        .. FindingCodes.All.Select(code => WrittenPage.Row($"`{code.Id}`", code.Severity.ToString().ToLowerInvariant(), code.Meaning, code.Remedy)),
    ]));

    [Fact]
    public void The_page_of_sources_lists_what_stands_behind_every_rule_set_and_catalog() => WrittenPage.Matches("src/IfcCourser/Rules/README.md", Text(
    [
        "# Sources",
        string.Empty,
        "Where the values of the built-in rule sets and catalogs come from; made from their files, where each value stands beside its source. \"Read\": the",
        "text itself or a trade text about it was read. \"From memory\": to be checked before use. \"Common practice, no source\": usual in the trade. A licensed",
        "engineer and the local code and building officials confirm what a building gets.",
        .. BuiltInRuleSets.Names.Select(BuiltInRuleSets.Get).SelectMany(Sources),
        string.Empty,
        "## Catalogs",
        string.Empty,
        .. BuiltInCatalogs.Names.Select(BuiltInCatalogs.Get).Select(catalog => $"- `{catalog.Name}`: {catalog.Title}. {catalog.Source}"),
    ]));

    [Fact]
    public void The_page_of_commands_is_what_help_says() => WrittenPage.Matches("src/IfcCourser.Cli/README.md", Text(
    [
        "# Commands",
        string.Empty,
        "What `ifccourser --help` says of each verb; made from it.",
        .. CommandLine.Verbs.SelectMany(verb => (string[])
        [
            string.Empty, $"## {verb}", string.Empty, "```text", Help(verb), "```",
        ]),
    ]));

    /// <summary>The help names the program that runs, which is the tests' here.</summary>
    private static string Help(string verb) => CommandRun.Of([.. verb.Split(' '), "--help"]).Output
        .Replace("\r", string.Empty, StringComparison.Ordinal)
        .Replace(typeof(PageTests).Assembly.GetName().Name!, "ifccourser", StringComparison.Ordinal)
        .TrimEnd();

    private static IEnumerable<string> Sources(RuleSet rules) =>
    [
        string.Empty,
        $"## {rules.Name}: {rules.Title}",
        string.Empty,
        .. rules.Cautions.Select(caution => $"> {caution}"),
        .. rules.Cautions.IsEmpty ? Array.Empty<string>() : [string.Empty],
        .. rules.Sources.Select(source => $"- {source}"),
        .. rules.Bars?.Sources.Select(source => $"- bars {string.Join(", ", source.Keys)}: {source.Text}") ?? [],
        .. rules.Tolerances.Sources.Select(source => $"- tolerances {string.Join(", ", source.Keys)}: {source.Text}"),
    ];

    private static string Text(IEnumerable<string> lines) => string.Join('\n', lines) + "\n";
}
