using FixtureMaker.Design;
using FixtureMaker.Step;

namespace FixtureMaker.Ifc;

/// <summary>An opening element that voids its wall, with the door or window that fills it.</summary>
internal static class OpeningPart
{
    /// <summary>Writes the opening; the result is its door or window, or null where nothing fills it.</summary>
    public static Reference? Write(ModelFile file, Reference host, Reference hostPlacement, Wall wall, Opening opening)
    {
        var key = $"{wall.Name}/{opening.Name}";
        var placement = file.Placement(hostPlacement, file.Axes(opening.Left, 0, opening.Sill));
        var shape = file.Shape(file.BodyRepresentation("SweptSolid", Void(file, wall.BuildUp, opening)));
        var element = file.AddRoot(
            "IFCOPENINGELEMENT", $"opening {key}",
            [opening.Name, null, "Opening", placement, shape, null, .. file.InIfc4(new Keyword("OPENING"))]);
        file.AddRoot("IFCRELVOIDSELEMENT", $"void {key}", null, null, host, element);
        if (opening.Use is OpeningUse.Void or OpeningUse.Sleeve)
        {
            return null;
        }

        var filling = Filling(file, key, placement, wall.BuildUp, opening);
        file.AddRoot("IFCRELFILLSELEMENT", $"fill {key}", null, null, element, filling);
        return filling;
    }

    private static Reference Void(ModelFile file, BuildUp buildUp, Opening opening)
    {
        var across = buildUp.Thickness + (2 * opening.Past);
        var axes = BodyPart.UprightAxes(file, 0, buildUp.High + opening.Past, 0);
        if (opening.Profile is { } write)
        {
            return file.Extrude(write(file), axes, across);
        }

        if (opening.Use != OpeningUse.Sleeve)
        {
            return file.Box(axes, new Point(0, 0), opening.Width, opening.Height, across);
        }

        var radius = opening.Width / 2;
        var circle = file.Step.Add("IFCCIRCLEPROFILEDEF", new Keyword("AREA"), null, file.Axes2D(radius, radius), radius);
        return file.Extrude(circle, axes, across);
    }

    // A leaf or pane of a tenth of the wall's thickness in its middle stands for the door or window.
    private static Reference Filling(ModelFile file, string key, Reference opening, BuildUp buildUp, Opening design)
    {
        var depth = buildUp.Thickness / 10;
        var middle = (buildUp.Low + buildUp.High - depth) / 2;
        var leaf = file.Box(null, new Point(0, middle), design.Width, depth, design.Height);
        var shape = file.Shape(file.BodyRepresentation("SweptSolid", leaf));
        var placement = file.Placement(opening, file.Axes(0, 0, 0));
        var isDoor = design.Use == OpeningUse.Door;
        var kind = new Keyword(isDoor ? "DOOR" : "WINDOW");
        return file.AddRoot(
            isDoor ? "IFCDOOR" : "IFCWINDOW", $"filling {key}",
            [design.Name, null, null, placement, shape, null, design.Height, design.Width,
                .. file.InIfc4(kind, new Keyword("NOTDEFINED"), null)]);
    }
}
