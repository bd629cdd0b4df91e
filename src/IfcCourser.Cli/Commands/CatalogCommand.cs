using System.CommandLine;
using IfcCourser.Catalogs;
using IfcCourser.Output.Ids;
using IfcCourser.Rules;
using IfcCourser.Settings;

namespace IfcCourser.Cli.Commands;

/// <summary><c>catalog list|show|verify|ids</c>.</summary>
internal static class CatalogCommand
{
    public static Command Create(Func<ParseResult, Terminal> terminal)
    {
        var set = new Argument<string>("NAME|FILE") { Description = Messages.ArgumentSet }.WithSets();
        var list = new Command("list", Messages.AboutList);
        list.SetAction(parsed => (int)List(terminal(parsed)));
        var show = new Command("show", Messages.AboutShow) { set };
        show.SetAction(parsed => (int)Show(parsed.GetRequiredValue(set), terminal(parsed)));
        var verify = new Command("verify", Messages.AboutVerify) { set };
        verify.SetAction(parsed => (int)Verify(parsed.GetRequiredValue(set), terminal(parsed)));
        var folder = new Option<string>("--out", "-o") { HelpName = "DIR", Description = Messages.OptionOut, DefaultValueFactory = _ => "." };
        var ids = new Command("ids", Messages.AboutIds) { set, folder };
        ids.SetAction(parsed => (int)Ids(parsed.GetRequiredValue(set), parsed.GetRequiredValue(folder), terminal(parsed)));
        return new Command("catalog", Messages.AboutCatalog) { list, show, verify, ids };
    }

    private static ExitStatus List(Terminal terminal)
    {
        terminal.Data(Messages.Catalogs);
        foreach (var catalog in BuiltInCatalogs.Names.Select(BuiltInCatalogs.Get))
        {
            terminal.Data(Row(catalog.Name, catalog.Title));
        }

        terminal.Data(Messages.RuleSets);
        foreach (var rules in BuiltInRuleSets.Names.Select(BuiltInRuleSets.Get))
        {
            terminal.Data(Row(rules.Name, rules.Title));
        }

        return ExitStatus.Done;
    }

    private static ExitStatus Show(string nameOrFile, Terminal terminal)
    {
        if (SettingsReader.BuiltInText(nameOrFile) is { } text)
        {
            terminal.Data(text.TrimEnd());
            return ExitStatus.Done;
        }

        return WithFile(nameOrFile, terminal, settings => terminal.Data(settings.Text.TrimEnd()));
    }

    private static ExitStatus Verify(string nameOrFile, Terminal terminal)
    {
        if (SettingsReader.BuiltInText(nameOrFile) is not null)
        {
            terminal.Result(Messages.BuiltIn(nameOrFile));
            return ExitStatus.Done;
        }

        return WithFile(nameOrFile, terminal, settings => terminal.Result(Messages.Valid(nameOrFile, settings.Kind, settings.Name)));
    }

    private static ExitStatus Ids(string nameOrFile, string target, Terminal terminal)
    {
        var catalog = SettingsReader.Catalog(nameOrFile);
        if (!catalog.IsOk)
        {
            return terminal.End(catalog.Fault, ExitStatus.Usage);
        }

        var opened = OutputFolder.Open(target, nameOrFile);
        if (!opened.IsOk)
        {
            return terminal.End(opened.Fault, ExitStatus.Unwritable);
        }

        using var folder = opened.Value;
        var fault = folder.Add(CoursedModelIds.FileName, CoursedModelIds.Write)
            ?? folder.Add(ModelToReadIds.FileName(catalog.Value), stream => ModelToReadIds.Write(catalog.Value, stream))
            ?? folder.Commit();
        if (fault is not null)
        {
            return terminal.End(fault, ExitStatus.Unwritable);
        }

        terminal.Result(Messages.Written(target));
        foreach (var file in folder.Files)
        {
            terminal.Result(Messages.WrittenFile(file));
        }

        return ExitStatus.Done;
    }

    private static ExitStatus WithFile(string path, Terminal terminal, Action<VerifiedSettings> use)
    {
        if (!path.EndsWith(".toml", StringComparison.OrdinalIgnoreCase))
        {
            terminal.Fail(SettingsReader.UnknownName(path));
            return ExitStatus.Usage;
        }

        var settings = SettingsReader.Verify(path);
        if (!settings.IsOk)
        {
            terminal.Fail(settings.Fault);
            return ExitStatus.Usage;
        }

        use(settings.Value);
        return ExitStatus.Done;
    }

    private static string Row(string name, string title) => $"  {name,-12}{title}";
}
