namespace IfcCourser.Output.Page;

/// <summary>The search line and the choices over a table; the script shows them and puts them to work.</summary>
internal static class Filters
{
    /// <param name="Name">Of the rows' data attribute, or of the class of what holds the value.</param>
    internal sealed record Field(string Name, string Label, ImmutableArray<(string Value, string Text)> Choices);

    public static Field Choice(string name, string label, IEnumerable<(string Value, string Text)> choices) => new(name, label, [.. choices]);

    public static Field Storeys(PageFacts facts) =>
        Choice("storey", "Storey", facts.StoreyNames.Select((name, i) => (FormattableString.Invariant($"{i + 1}"), name)));

    /// <summary>Storeys and walls.</summary>
    public static IEnumerable<Field> Places(PageFacts facts) =>
    [
        Storeys(facts),
        Choice("wall", "Wall", facts.Walls.Select(wall => (wall.Number, wall.Mark, wall.Name))
            .Concat(facts.Skipped.Select(wall => (wall.Number, wall.Mark, Name: wall.Wall.Identity.Label)))
            .OrderBy(wall => wall.Number)
            .Select(wall => (FormattableString.Invariant($"{wall.Number}"), $"{wall.Mark} {wall.Name}"))),
    ];

    public static void Write(Html html, string table, string what, IEnumerable<Field> fields)
    {
        html.Line($"<form class=\"filter scripted\" data-table=\"{table}\" role=\"search\" aria-label=\"Filter {what}\">");
        html.Line($"<label>Search <input type=\"search\" name=\"search\" autocomplete=\"off\"></label>");
        foreach (var field in fields.Where(field => field.Choices.Length > 1))
        {
            html.Line($"<label>{field.Label} <select name=\"{field.Name}\"><option value=\"\">all</option>");
            foreach (var (value, text) in field.Choices)
            {
                html.Line($"<option value=\"{value}\">{text}</option>");
            }

            html.Line($"</select></label>");
        }

        html.Line($"<button type=\"reset\">Show all</button> <output></output></form>");
    }
}
