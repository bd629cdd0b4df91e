using System.CommandLine;

namespace IfcCourser.Cli.Commands;

/// <summary>An option with a few words to choose from; case does not count.</summary>
internal static class ChoiceOption
{
    public static Option<string> Of(string name, string about, string standard, params string[] choices)
    {
        var option = new Option<string>(name)
        {
            HelpName = string.Join('|', choices),
            Description = about,
            DefaultValueFactory = _ => standard,
        };
        option.CompletionSources.Add(choices);
        option.Validators.Add(given =>
        {
            if (given.Tokens is [{ Value: var value }] && !choices.Contains(value, StringComparer.OrdinalIgnoreCase))
            {
                given.AddError(Messages.UnknownChoice(name, value, choices));
            }
        });
        return option;
    }
}
