using IfcCourser.Layouts;

namespace IfcCourser.Output.Page;

/// <summary>What walls take, wall by wall, storey by storey and in all.</summary>
internal static class QuantitiesSection
{
    public static void Write(Html html, PageFacts facts)
    {
        html.Line($"<section id=\"quantities\" aria-labelledby=\"quantities-h\"><h2 id=\"quantities-h\">{PageText.QuantitiesHeading}</h2>");
        if (facts.Walls.IsEmpty)
        {
            html.Line($"<p>{PageText.NoWalls}</p></section>");
            return;
        }

        html.Line($"<p class=\"lead\">Net, as laid out: waste, pallets and mortar are not in it. Whole: laid uncut, bought part lengths among them. Cut: sawn pieces.</p>");
        html.Line($"<div class=\"wide\" role=\"region\" tabindex=\"0\" aria-label=\"Quantities by storey\"><table><caption>By storey</caption>");
        Head(html, facts, "Storey", ["Walls"]);
        foreach (var storey in facts.Storeys)
        {
            html.Line($"<tr><th scope=\"row\">{Markup.Name(storey.Name)}</th><td class=\"number\">{storey.Walls.Length}</td>{Figures(facts, storey.Walls)}</tr>");
        }

        html.Line($"</tbody><tfoot><tr><th scope=\"row\">{PageText.Job}</th><td class=\"number\">{facts.Walls.Length}</td>{Figures(facts, facts.Walls)}</tr></tfoot></table></div>");
        Filters.Write(html, "walls-table", "walls", [Filters.Storeys(facts)]);
        html.Line($"<div class=\"wide\" role=\"region\" tabindex=\"0\" aria-label=\"Quantities by wall\"><table id=\"walls-table\"><caption>By wall</caption>");
        Head(html, facts, "Wall", ["Storey", $"Length {PageText.LengthUnit(facts.Units)}", "Thick"]);
        foreach (var wall in facts.Walls)
        {
            var frame = wall.Wall.Frame;
            html.Line($"<tr id=\"w{wall.Number}\" data-storey=\"{facts.StoreyNumber(wall.Storey)}\"><th scope=\"row\">{Cells.Wall(wall)}</th><td>{Markup.Name(wall.Storey)}</td><td class=\"number\">{facts.Text.Dimension(frame.Length)}</td><td class=\"number\">{facts.Text.Piece(frame.Thickness)}</td>{Figures(facts, [wall])}</tr>");
        }

        html.Line($"</tbody></table></div></section>");
    }

    private static void Head(Html html, PageFacts facts, string first, string[] others)
    {
        var heads = Columns(facts).Select(column => column.Head);
        html.Line($"<thead><tr><th scope=\"col\">{first}</th>{Heads(others.Concat(heads))}</tr></thead><tbody>");
    }

    private static Markup Heads(IEnumerable<string> heads) =>
        Markup.Joined(string.Empty, heads.Select(head => new Markup($"<th scope=\"col\"{(head == "Storey" ? string.Empty : " class=\"number\"")}>{HtmlText.Escaped(head)}</th>")));

    private static Markup Figures(PageFacts facts, IReadOnlyCollection<PageWall> walls) => Markup.Joined(
        string.Empty, Columns(facts).Select(column => new Markup($"<td class=\"number\">{column.Text(walls.Sum(wall => column.Of(wall.Wall)))}</td>")));

    /// <summary>Heads, values and how they are written; what the whole job has none of is left out.</summary>
    private static IEnumerable<(string Head, Func<WallLayout, double> Of, Func<double, string> Text)> Columns(PageFacts facts)
    {
        var (area, volume) = (PageText.AreaUnit(facts.Units), PageText.VolumeUnit(facts.Units));
        (string Head, Func<WallLayout, double> Of, Func<double, string> Text)[] columns =
        [
            ($"Net area {area}", wall => wall.Quantities.NetArea, value => PageText.Area(value, facts.Units)),
            ($"Openings {area}", wall => wall.Quantities.OpeningArea, value => PageText.Area(value, facts.Units)),
            ($"Masonry {volume}", wall => wall.Quantities.NetVolume, value => PageText.Volume(value, facts.Units)),
            ("Whole", wall => wall.Quantities.FullUnits, Whole),
            ("Cut", wall => wall.Quantities.PartUnits, Whole),
            ("Troughs", wall => wall.Quantities.TroughUnits, Whole),
            ("Lintels", wall => wall.Lintels.Length, Whole),
            ("Bars", wall => wall.Cores.Length, Whole),
            ($"Beam grout {volume}", wall => wall.Quantities.BeamGrout, value => PageText.Volume(value, facts.Units)),
        ];
        return columns.Where(column => facts.Walls.Any(wall => column.Of(wall.Wall) != 0));
    }

    private static string Whole(double count) => FormattableString.Invariant($"{count:0}");
}
