using IfcCourser.Catalogs;
using IfcCourser.Rules;

namespace IfcCourser.Cli.Commands;

/// <summary>The catalog and rules of a run, and why these.</summary>
internal sealed record ChosenSets(Catalog Catalog, RuleSet Rules, string Why)
{
    /// <summary>What is named counts; the model's unit decides on the catalog, the catalog's on the rules.</summary>
    public static ChosenSets For(RunSettings settings, double lengthUnitMm)
    {
        var modelUnits = DefaultSets.SystemOf(lengthUnitMm);
        var catalog = settings.Catalog ?? BuiltInCatalogs.Get(DefaultSets.Catalog(modelUnits));
        var rules = settings.Rules ?? BuiltInRuleSets.Get(DefaultSets.Rules(catalog.Units));
        var why = (settings.Catalog, settings.Rules) switch
        {
            (null, null) => Messages.BecauseModel(modelUnits is Units.UnitSystem.Inch),
            (null, _) => Messages.BecauseRules(modelUnits is Units.UnitSystem.Inch),
            (_, null) => Messages.BecauseCatalog(catalog.Units is Units.UnitSystem.Inch),
            _ => Messages.BecauseNamed,
        };
        return new ChosenSets(catalog, rules, why);
    }
}
