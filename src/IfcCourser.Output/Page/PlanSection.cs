namespace IfcCourser.Output.Page;

/// <summary>The plans to choose a wall from, and the place where the script draws its elevation.</summary>
internal static class PlanSection
{
    public static void Write(Html html, PageFacts facts)
    {
        html.Line($"<section id=\"walls\" aria-labelledby=\"walls-h\"><h2 id=\"walls-h\">{PageText.WallsHeading}</h2>");
        if (facts.Walls.IsEmpty)
        {
            html.Line($"<p>{PageText.NoWalls}</p></section>");
            return;
        }

        html.Line($"<p class=\"unscripted\">{PageText.NeedsScript}</p><div class=\"desk{(facts.HasManyWalls ? " broad" : null)}\"><div class=\"plans\">");
        if (facts.Storeys.Length > 1)
        {
            html.Line($"<p class=\"scripted\"><label>Storey <select id=\"storey\">");
            foreach (var storey in facts.Storeys)
            {
                html.Line($"<option value=\"p{storey.Number}\">{storey.Name}</option>");
            }

            html.Line($"</select></label></p>");
        }

        foreach (var storey in facts.Storeys)
        {
            html.Line($"<figure class=\"plan\" id=\"p{storey.Number}\"><figcaption><b>{Markup.Name(storey.Name)}</b>, {PageText.Count(storey.Walls.Length, "wall", "walls")}. {PageText.AxesNote}</figcaption>");
            PlanDrawing.Write(html, facts, storey);
            html.Line($"</figure>");
        }

        html.Line($"</div>");
        Viewer(html);
        html.Line($"</div></section>");
    }

    private static void Viewer(Html html) => html.Raw(
        """
        <div class="viewer scripted" id="viewer" tabindex="-1">
        <header><h3 id="wall-name"></h3>
        <div class="tools"><button type="button" id="previous">Previous wall</button><button type="button" id="next">Next wall</button><button type="button" id="closer">Closer</button><button type="button" id="farther">Farther</button></div></header>
        <p id="wall-facts"></p>
        <div id="drawing" tabindex="0" role="region" aria-label="Elevation, scrolls sideways"></div>
        <p id="readout"></p>
        <ol id="wall-findings"></ol>
        <details id="legend"><summary>How to read it</summary></details>
        </div>

        """);
}
