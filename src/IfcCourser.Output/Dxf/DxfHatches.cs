using IfcCourser.Output.Sheets;

namespace IfcCourser.Output.Dxf;

/// <summary>HATCH entities, their pattern written out line by line, so that no pattern file is needed.</summary>
internal static class DxfHatches
{
    /// <summary>
    /// Pattern of lines at 45 degrees, 1/8 in apart. Readers that know patterns only by name have it; the others take the lines.
    /// </summary>
    private const string Lines45 = "ANSI31";

    /// <summary>The same with as many lines across.</summary>
    private const string Crossed45 = "ANSI37";
    private const double Lines45Spacing = 25.4 / 8;

    public static void Write(DxfDocument document, DxfTags tags, DxfSpace space, HatchItem hatch)
    {
        var isSolid = hatch.Kind == HatchKind.Solid;
        DxfEntities.Begin(document, tags, space, "HATCH", hatch.Pen).Add(100, "AcDbHatch")
            .Add(10, default(Point)).Add(210, 0.0).Add(220, 0.0).Add(230, 1.0)
            .Add(2, isSolid ? "SOLID" : hatch.Degrees.Length > 1 ? Crossed45 : Lines45).Add(70, isSolid ? 1 : 0).Add(71, 0).Add(91, hatch.Loops.Length);
        for (var i = 0; i < hatch.Loops.Length; i++)
        {
            Loop(tags, space, hatch.Loops[i], i == 0);
        }

        tags.Add(75, 0).Add(76, 1);
        if (!isSolid)
        {
            Pattern(tags, space, hatch);
        }

        var seed = Box.Around(hatch.Loops[0]).Middle;
        tags.Add(98, 1).AddFlat(10, space.Point(seed));
    }

    /// <summary>Flags: 2 polyline, with 1 the outer boundary.</summary>
    private static void Loop(DxfTags tags, DxfSpace space, ImmutableArray<Point> loop, bool isOuter)
    {
        tags.Add(92, isOuter ? 3 : 2).Add(72, 0).Add(73, 1).Add(93, loop.Length);
        foreach (var point in loop)
        {
            tags.AddFlat(10, space.Point(point));
        }

        tags.Add(97, 0);
    }

    private static void Pattern(DxfTags tags, DxfSpace space, HatchItem hatch)
    {
        var spacing = hatch.Spacing * space.PerPaperMm;
        tags.Add(52, hatch.Degrees[0] - 45).Add(41, hatch.Spacing * space.Scale / Lines45Spacing).Add(77, 0).Add(78, hatch.Degrees.Length);
        foreach (var degrees in hatch.Degrees)
        {
            var (sin, cos) = Math.SinCos(degrees * Math.PI / 180);
            tags.Add(53, degrees).Add(43, 0.0).Add(44, 0.0).Add(45, -sin * spacing).Add(46, cos * spacing).Add(79, 0);
        }
    }
}
