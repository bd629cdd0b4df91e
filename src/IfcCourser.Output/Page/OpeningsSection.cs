using IfcCourser.Output.Sheets;
using IfcCourser.Units;

namespace IfcCourser.Output.Page;

/// <summary>Which opening, how far, which way: what is to be settled first, the farthest first.</summary>
internal static class OpeningsSection
{
    public static void Write(Html html, PageFacts facts)
    {
        var openings = facts.Walls.SelectMany(wall => wall.Openings).Select(opening => (Opening: opening, State: opening.State)).ToList();
        html.Line($"<section id=\"openings\" aria-labelledby=\"openings-h\"><h2 id=\"openings-h\">{PageText.OpeningsHeading}</h2>");
        html.Line($"<p>{PageText.Openings([.. openings.Select(pair => pair.State)])}</p>");
        if (openings.Count > 0)
        {
            html.Line($"<p class=\"lead\">{PageText.OpeningsLead}</p>");
            Filters.Write(html, "openings-table", [Filters.Choice("state", "State", States(openings.Select(pair => pair.State))), .. Filters.Places(facts)]);
            html.Line($"<div class=\"wide\"><table id=\"openings-table\" class=\"cards\"><caption class=\"hidden\">{PageText.OpeningsHeading}</caption>");
            html.Line($"<thead><tr><th scope=\"col\">Opening</th><th scope=\"col\">Wall</th><th scope=\"col\">State</th><th scope=\"col\">How far, which way</th><th scope=\"col\">Masonry opening</th><th scope=\"col\">Findings</th></tr></thead><tbody>");
            foreach (var (opening, state) in openings.OrderByDescending(pair => pair.State).ThenByDescending(pair => pair.Opening.Shift))
            {
                Row(html, facts, opening, state);
            }

            html.Line($"</tbody></table></div>");
        }

        html.Line($"</section>");
    }

    private static IEnumerable<(string Value, string Text)> States(IEnumerable<OpeningState> states) =>
        states.Distinct().OrderDescending().Select(state => (state.ToString(), PageText.State(state)));

    private static void Row(Html html, PageFacts facts, PageOpening opening, OpeningState state)
    {
        var wall = opening.Wall;
        var findings = facts.FindingsOf[wall.Number].Where(finding => string.Equals(finding.Finding.At?.Opening, opening.Opening.Opening.GlobalId, StringComparison.Ordinal));
        html.Line($"<tr id=\"{opening.Id}\" data-state=\"{state.ToString()}\" data-storey=\"{wall.Storey}\" data-wall=\"{wall.Number}\">");
        html.Line($"<th scope=\"row\" data-l=\"Opening\"><a href=\"#w{wall.Number}\" data-at=\"{opening.Tag}\">{opening.Tag}</a> {Markup.Name(opening.Opening.Opening.Label)}</th>");
        html.Line($"<td data-l=\"Wall\">{Cells.Wall(wall)} <small>{wall.Storey}</small></td>");
        html.Line($"<td data-l=\"State\"><span class=\"state {state.ToString()}\">{PageText.State(state)}</span></td>");
        html.Line($"<td data-l=\"How far, which way\">{Way(facts, opening, state)}</td>");
        html.Line($"<td data-l=\"Masonry opening\" class=\"number\">{Sizes(facts, opening)}</td>");
        html.Line($"<td data-l=\"Findings\">{Markup.Joined(" ", findings.Select(Cells.Code))}</td></tr>");
    }

    /// <summary>Size wanted; where it is laid out in another, that too.</summary>
    private static Markup Sizes(PageFacts facts, PageOpening opening)
    {
        var (wanted, placed) = (SheetText.Size(facts.Text, opening.Opening.Design), SheetText.Size(facts.Text, opening.Opening.Placed));
        return new Markup(HtmlText.Escaped(wanted) + (wanted == placed ? string.Empty : $" <small>laid out as {HtmlText.Escaped(placed)}</small>"));
    }

    private static Markup Way(PageFacts facts, PageOpening opening, OpeningState state)
    {
        var moved = Moves(facts, opening).ToList();
        if (state == OpeningState.Off)
        {
            var deviation = opening.Deviation!;
            moved.AddRange(new[] { ("left jamb", deviation.Left), ("right jamb", deviation.Right) }
                .Where(jamb => Length.Abs(jamb.Item2) > facts.Layout.Rules.ModuleTolerance)
                .Select(jamb => Words($"{jamb.Item1} {PageText.Along(jamb.Item2, facts.Units)}", "to its line")));
        }

        return moved.Count == 0 ? new Markup("<span class=\"none\">none</span>") : Markup.Joined("<br>", moved);
    }

    private static IEnumerable<Markup> Moves(PageFacts facts, PageOpening opening)
    {
        var along = opening.Wall.Wall.Frame.Direction;
        if (opening.Left == opening.Right)
        {
            if (opening.Left != Length.Zero)
            {
                yield return Words(PageText.Along(opening.Left, facts.Units), PageText.Sideways(opening.Left, along));
            }
        }
        else
        {
            foreach (var (jamb, way) in new[] { ("left jamb", opening.Left), ("right jamb", opening.Right) }.Where(jamb => jamb.Item2 != Length.Zero))
            {
                yield return Words($"{jamb} {PageText.Along(way, facts.Units)}", PageText.Sideways(way, along));
            }
        }

        foreach (var (edge, way) in new[] { ("sill", opening.Sill), ("head", opening.Head) }.Where(edge => edge.Item2 != Length.Zero))
        {
            yield return Words($"{edge} {PageText.Up(way, facts.Units)}", way < Length.Zero ? "down" : "up");
        }
    }

    private static Markup Words(string figure, string words) => new($"<b class=\"way\">{HtmlText.Escaped(figure)}</b> {HtmlText.Escaped(words)}");
}
