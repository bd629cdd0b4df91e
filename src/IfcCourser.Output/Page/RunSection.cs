using System.Globalization;

namespace IfcCourser.Output.Page;

/// <summary>Cautions, and what the run was given: model, catalog, rules, options.</summary>
internal static class RunSection
{
    public static void Write(Html html, PageFacts facts, ImmutableArray<GivenOption> options)
    {
        html.Line($"<section id=\"cautions\" aria-labelledby=\"cautions-h\"><h2 id=\"cautions-h\">{PageText.CautionsHeading}</h2><ul>");
        foreach (var caution in PageText.Cautions.Concat(facts.Layout.Rules.Set.Cautions))
        {
            html.Line($"<li>{caution}</li>");
        }

        html.Line($"</ul></section>");
        html.Line($"<section id=\"run\" aria-labelledby=\"run-h\"><h2 id=\"run-h\">{PageText.RunHeading}</h2><dl>");
        foreach (var (name, value) in Facts(facts, options))
        {
            html.Line($"<div><dt>{name}</dt><dd>{value}</dd></div>");
        }

        html.Line($"</dl></section>");
    }

    private static IEnumerable<(string Name, string? Value)> Facts(PageFacts facts, ImmutableArray<GivenOption> options)
    {
        var (model, rules, text) = (facts.Layout.Model, facts.Layout.Rules, facts.Text);
        var catalog = rules.Catalog;
        yield return ("Model", model.File);
        yield return ("Project", $"{model.ProjectName ?? "without a name"}, {model.ProjectId ?? "without a GlobalId"}");
        yield return ("SHA-256 of the model", model.Sha256);
        yield return ("Schema", model.Schema);
        yield return ("Length unit", string.Create(CultureInfo.InvariantCulture, $"{model.LengthUnitMm:0.######} mm"));
        yield return ("Date", model.Date);
        yield return ("Catalog", $"{catalog.Name}: {catalog.Title}");
        yield return ("Units", $"{text.Piece(catalog.UnitLength)} x {text.Piece(catalog.UnitHeight)}, head joint {text.WithUnit(catalog.HeadJoint.Nominal)}, bed joint {text.WithUnit(catalog.BedJoint.Nominal)}");
        yield return ("Rule set", $"{rules.Set.Name}: {rules.Set.Title}");
        yield return ("Least overlap, least piece", $"{text.WithUnit(rules.MinOverlap)}, {text.WithUnit(rules.MinPiece)}");
        yield return ("Module", $"{text.WithUnit(rules.Module)}, tolerance {text.WithUnit(rules.ModuleTolerance)}");
        yield return ("Openings", $"{PageText.Policy(rules.Openings)}; at most {text.WithUnit(rules.MaxShift)}");
        foreach (var option in options)
        {
            yield return (option.Name, option.Value);
        }

        yield return ("Made by", $"IfcCourser {typeof(Layouts.Layout).Assembly.GetName().Version!.ToString(3)}");
    }
}
