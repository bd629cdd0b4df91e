using static System.FormattableString;

namespace IfcCourser.Output.Page;

/// <summary>What stands in cells of several tables.</summary>
internal static class Cells
{
    /// <summary>Number and name, linked to the wall's elevation.</summary>
    public static Markup Wall(PageWall wall) => new(Invariant($"<a href=\"#w{wall.Number}\">{wall.Mark}</a> {Markup.Name(wall.Name).Text}"));

    /// <summary>A finding's code, linked to its row in the list; its severity as a sign before it.</summary>
    public static Markup Code(PageFinding finding) => new(Invariant(
        $"<a class=\"code {PageText.Severity(finding.Finding.Severity)}\" href=\"#f{finding.Number}\">{finding.Finding.Code.Id}</a>"));
}
