using IfcCourser.Findings;
using static System.FormattableString;

namespace IfcCourser.Output.Page;

/// <summary>What stands in cells of several tables.</summary>
internal static class Cells
{
    /// <summary>Number and name, linked to the wall's elevation.</summary>
    public static Markup Wall(PageWall wall) => new(Invariant($"<a href=\"#w{wall.Number}\">{wall.Mark}</a> {Markup.Name(wall.Name).Text}"));

    /// <summary>A finding's code, linked to its row in the list.</summary>
    public static Markup Code(PageFinding finding) => new(Invariant(
        $"<a class=\"code\" href=\"#f{finding.Number}\"><span aria-hidden=\"true\">{PageText.Sign(finding.Finding.Severity)}</span> {finding.Finding.Code.Id}</a>"));

    public static Markup Severity(Severity severity) => new(
        $"<span class=\"severity {PageText.Severity(severity)}\"><span aria-hidden=\"true\">{PageText.Sign(severity)}</span> {PageText.Severity(severity)}</span>");
}
