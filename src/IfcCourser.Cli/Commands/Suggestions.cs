using System.CommandLine;
using System.CommandLine.Completions;
using IfcCourser.Catalogs;
using IfcCourser.Output.Sheets;
using IfcCourser.Rules;

namespace IfcCourser.Cli.Commands;

/// <summary>What shells complete beside the program's own words.</summary>
internal static class Suggestions
{
    public static Option<T> WithCatalogs<T>(this Option<T> option) => option.With([.. BuiltInCatalogs.Names]);

    public static Option<T> WithRuleSets<T>(this Option<T> option) => option.With([.. BuiltInRuleSets.Names]);

    /// <summary>Names as the help writes them, without blanks.</summary>
    public static Option<T> WithPapers<T>(this Option<T> option) => option.With([.. PaperSize.All.Select(paper => paper.Name.Replace(' ', '-'))]);

    /// <summary>Each format, and behind a comma each that is not yet in the list.</summary>
    public static Option<T> WithFormats<T>(this Option<T> option, IEnumerable<string> formats)
    {
        option.CompletionSources.Add(context => Continued(context.WordToComplete, formats));
        return option;
    }

    public static Argument<T> WithSets<T>(this Argument<T> argument)
    {
        argument.CompletionSources.Add([.. BuiltInCatalogs.Names, .. BuiltInRuleSets.Names]);
        return argument;
    }

    private static Option<T> With<T>(this Option<T> option, params string[] names)
    {
        option.CompletionSources.Add(names);
        return option;
    }

    private static IEnumerable<CompletionItem> Continued(string word, IEnumerable<string> formats)
    {
        var begun = word[..(word.LastIndexOf(',') + 1)];
        return formats.Except(begun.Split(','), StringComparer.OrdinalIgnoreCase).Select(format => new CompletionItem(begun + format));
    }
}
