using IfcCourser.Output.Coordination;
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
            Filters.Write(html, "openings-table", "openings", [Filters.Choice("state", "State", States(openings.Select(pair => pair.State))), .. Filters.Places(facts)]);
            var hasCosts = openings.Exists(pair => pair.Opening.Opening.Check?.Cost is not null);
            html.Line($"<div class=\"wide\"><table id=\"openings-table\" class=\"cards\"><caption class=\"hidden\">{PageText.OpeningsHeading}</caption>");
            html.Line($"<thead><tr><th scope=\"col\">Opening</th><th scope=\"col\">Wall</th><th scope=\"col\">State</th><th scope=\"col\">How far, which way</th>{Kept(hasCosts, "<th scope=\"col\">Kept, it costs</th>")}<th scope=\"col\">Masonry opening</th><th scope=\"col\">Findings</th></tr></thead><tbody>");
            foreach (var (opening, state) in openings.OrderByDescending(pair => pair.State).ThenByDescending(pair => pair.Opening.Shift))
            {
                Row(html, facts, opening, state, hasCosts);
            }

            html.Line($"</tbody></table></div>");
        }

        html.Line($"</section>");
    }

    private static IEnumerable<(string Value, string Text)> States(IEnumerable<OpeningState> states) =>
        states.Distinct().OrderDescending().Select(state => (state.ToString(), PageText.State(state)));

    private static void Row(Html html, PageFacts facts, PageOpening opening, OpeningState state, bool hasCosts)
    {
        var wall = opening.Wall;
        var findings = facts.FindingsOf[wall.Number].Where(finding => string.Equals(finding.Finding.At?.Opening, opening.Opening.Opening.GlobalId, StringComparison.Ordinal));
        html.Line($"<tr id=\"{opening.Id}\" data-state=\"{state.ToString()}\" data-storey=\"{facts.StoreyNumber(wall.Storey)}\" data-wall=\"{wall.Number}\">");
        html.Line($"<th scope=\"row\"><a href=\"#w{wall.Number}\" data-at=\"{opening.Tag}\">{opening.Tag}</a> {Markup.Name(opening.Opening.Opening.Label)}</th>");
        html.Line($"<td>{Cells.Wall(wall)} <small>{wall.Storey}</small></td>");
        html.Line($"<td class=\"state {state.ToString()}\">{PageText.State(state)}</td>");
        html.Line($"<td>{Way(facts, opening, state)}</td>");
        html.Line($"{Kept(hasCosts, $"<td class=\"cost\">{HtmlText.Escaped(opening.Opening.Check?.Cost is { } cost ? CostText.Of(cost) : string.Empty)}</td>")}<td class=\"number size\">{Sizes(facts, opening)}</td>");
        html.Line($"<td>{Markup.Joined(" ", findings.Select(Cells.Code))}</td></tr>");
    }

    /// <summary>The column of costs, on pages of runs that worked them out.</summary>
    private static Markup Kept(bool hasCosts, string cell) => hasCosts ? new Markup(cell) : Markup.None;

    /// <summary>Size wanted; where it is laid out in another, that too.</summary>
    private static Markup Sizes(PageFacts facts, PageOpening opening)
    {
        var (wanted, placed) = (SheetText.Size(facts.Text, opening.Opening.Design), SheetText.Size(facts.Text, opening.Opening.Placed));
        return new Markup(HtmlText.Escaped(wanted) + (wanted == placed ? string.Empty : $" <small>laid out as {HtmlText.Escaped(placed)}</small>"));
    }

    /// <summary>What is asked: of an opening that was moved its way, of one that is off the jambs' ways onto lines and how it is laid out meanwhile.</summary>
    private static Markup Way(PageFacts facts, PageOpening opening, OpeningState state)
    {
        var moves = Moves(facts, opening).ToList();
        if (state == OpeningState.Off)
        {
            var meanwhile = moves.Count == 0 ? string.Empty : $"<br><small>laid out meanwhile: {HtmlText.Escaped(string.Join(", ", moves.Select(move => move.Figure)))}</small>";
            return new Markup(OntoLines(facts, opening).Text + meanwhile);
        }

        return moves.Count == 0 ? new Markup("<span class=\"none\">stays</span>") : Markup.Joined("<br>", moves.Select(move => Words(move.Figure, move.Words)));
    }

    /// <summary>The least shift of the jambs that cures it, and why it was not made.</summary>
    private static Markup OntoLines(PageFacts facts, PageOpening opening)
    {
        var check = opening.Opening.Check!;
        (string Name, Length Way)[] sides = check.MoveLeft == check.MoveRight
            ? [(string.Empty, check.MoveLeft)]
            : [("left jamb ", check.MoveLeft), ("right jamb ", check.MoveRight)];
        var figures = sides.Where(side => side.Way != Length.Zero).Select(side => side.Name + PageText.Along(side.Way, facts.Units));
        var wider = check.Widening == Length.Zero ? string.Empty : $", {PageText.Wider(check.Widening, facts.Units)}";
        var words = Words(string.Join(", ", figures), $"onto lines{wider}");
        return check.WhyNot is { } why ? new Markup($"{words.Text}<br><small>{HtmlText.Escaped(why)}</small>") : words;
    }

    private static IEnumerable<(string Figure, string Words)> Moves(PageFacts facts, PageOpening opening)
    {
        var along = opening.Wall.Wall.Frame.Direction;
        (string Name, Length Way)[] sides = opening.Left == opening.Right
            ? [(string.Empty, opening.Left)]
            : [("left jamb ", opening.Left), ("right jamb ", opening.Right)];
        foreach (var (name, way) in sides.Where(side => side.Way != Length.Zero))
        {
            yield return (name + PageText.Along(way, facts.Units), PageText.Sideways(way, along));
        }

        foreach (var (name, way) in new[] { ("sill ", opening.Sill), ("head ", opening.Head) }.Where(edge => edge.Item2 != Length.Zero))
        {
            yield return (name + PageText.Up(way, facts.Units), way < Length.Zero ? "down" : "up");
        }
    }

    private static Markup Words(string figure, string words) => new($"<b class=\"way\">{HtmlText.Escaped(figure)}</b> {HtmlText.Escaped(words)}");
}
