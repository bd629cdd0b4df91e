using IfcCourser.Layouts;
using IfcCourser.Units;

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
        Head(html, facts.Units, "Storey", ["Walls"]);
        foreach (var storey in facts.Storeys)
        {
            html.Line($"<tr><th scope=\"row\">{Markup.Name(storey.Name)}</th><td class=\"number\">{storey.Walls.Length}</td>{Figures(facts, storey.Walls)}</tr>");
        }

        html.Line($"</tbody><tfoot><tr><th scope=\"row\">{PageText.Job}</th><td class=\"number\">{facts.Walls.Length}</td>{Figures(facts, facts.Walls)}</tr></tfoot></table></div>");
        Filters.Write(html, "walls-table", [Filters.Choice("storey", "Storey", facts.Storeys.Select(storey => (storey.Name, storey.Name)))]);
        html.Line($"<div class=\"wide\" role=\"region\" tabindex=\"0\" aria-label=\"Quantities by wall\"><table id=\"walls-table\"><caption>By wall</caption>");
        Head(html, facts.Units, "Wall", ["Storey", $"Length", $"Thick"]);
        foreach (var wall in facts.Walls)
        {
            var frame = wall.Wall.Frame;
            html.Line($"<tr id=\"w{wall.Number}\" data-storey=\"{wall.Storey}\" data-wall=\"{wall.Number}\"><th scope=\"row\">{Cells.Wall(wall)}</th><td>{Markup.Name(wall.Storey)}</td><td class=\"number\">{facts.Text.Dimension(frame.Length)}</td><td class=\"number\">{facts.Text.Piece(frame.Thickness)}</td>{Figures(facts, [wall])}</tr>");
        }

        html.Line($"</tbody></table></div></section>");
    }

    private static void Head(Html html, UnitSystem units, string first, string[] others)
    {
        html.Line($"<thead><tr><th scope=\"col\">{first}</th>{Heads(others)}{Heads([$"Net area {PageText.AreaUnit(units)}", $"Openings {PageText.AreaUnit(units)}", $"Masonry {PageText.VolumeUnit(units)}", "Whole", "Cut", "Troughs", "Lintels", "Bars", $"Beam grout {PageText.VolumeUnit(units)}"])}</tr></thead><tbody>");
    }

    private static Markup Heads(IEnumerable<string> heads) =>
        Markup.Joined(string.Empty, heads.Select(head => new Markup($"<th scope=\"col\"{(head == "Storey" ? string.Empty : " class=\"number\"")}>{HtmlText.Escaped(head)}</th>")));

    private static Markup Figures(PageFacts facts, IReadOnlyCollection<PageWall> walls)
    {
        var units = facts.Units;
        double Sum(Func<WallQuantities, double> of) => walls.Sum(wall => of(wall.Wall.Quantities));
        string Number(Func<WallLayout, int> of) => FormattableString.Invariant($"{walls.Sum(wall => of(wall.Wall))}");
        string[] figures =
        [
            PageText.Area(Sum(all => all.NetArea), units), PageText.Area(Sum(all => all.OpeningArea), units), PageText.Volume(Sum(all => all.NetVolume), units),
            Number(wall => wall.Quantities.FullUnits), Number(wall => wall.Quantities.PartUnits), Number(wall => wall.Quantities.TroughUnits),
            Number(wall => wall.Lintels.Length), Number(wall => wall.Cores.Length), PageText.Volume(Sum(all => all.BeamGrout), units),
        ];
        return Markup.Joined(string.Empty, figures.Select(figure => new Markup($"<td class=\"number\">{figure}</td>")));
    }
}
