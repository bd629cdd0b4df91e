using IfcCourser.Findings;

namespace IfcCourser.Output.Page;

/// <summary>Walls that are not laid out, each with its reason; those that nobody asked for last.</summary>
internal static class SkippedSection
{
    public static void Write(Html html, PageFacts facts)
    {
        html.Line($"<section id=\"skipped\" aria-labelledby=\"skipped-h\"><h2 id=\"skipped-h\">{PageText.SkippedHeading}</h2>");
        if (facts.Skipped.IsEmpty)
        {
            html.Line($"<p>{PageText.NoneSkipped}</p></section>");
            return;
        }

        html.Line($"<p>{PageText.Count(facts.Skipped.Length, "wall is", "walls are")} not laid out, of {PageText.Count(facts.Skipped.Length + facts.Walls.Length, "wall", "walls")} in the model.</p>");
        html.Line($"<div class=\"wide\"><table id=\"skipped-table\" class=\"cards\"><caption class=\"hidden\">{PageText.SkippedHeading}</caption><thead><tr><th scope=\"col\">Wall</th><th scope=\"col\">Storey</th><th scope=\"col\">Type</th><th scope=\"col\">Reason</th><th scope=\"col\">What to do</th></tr></thead><tbody>");
        foreach (var wall in facts.Skipped.OrderBy(wall => wall.Wall.Reason.Code == FindingCodes.NotSelected).ThenBy(wall => wall.Number))
        {
            var (identity, reason) = (wall.Wall.Identity, wall.Wall.Reason);
            html.Line($"<tr id=\"s{wall.Number}\"><th scope=\"row\">{wall.Mark} {Markup.Name(identity.Label)} <small>{identity.GlobalId}</small></th><td>{Markup.Name(wall.Storey)}</td><td>{Markup.Name(identity.Type)}</td><td><span class=\"code\">{reason.Code.Id}</span> {reason.Message}</td><td>{reason.Code.Remedy}</td></tr>");
        }

        html.Line($"</tbody></table></div></section>");
    }
}
