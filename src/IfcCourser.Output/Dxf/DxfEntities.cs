using IfcCourser.Output.Sheets;

namespace IfcCourser.Output.Dxf;

/// <summary>Items of a scene as entities.</summary>
internal static class DxfEntities
{
    public static void Write(DxfDocument document, DxfTags tags, DxfSpace space, SheetItem item)
    {
        switch (item)
        {
            case LineItem line:
                Begin(document, tags, space, "LINE", line.Pen).Add(100, "AcDbLine")
                    .Add(10, space.Point(line.From)).Add(11, space.Point(line.To));
                break;
            case PolylineItem path:
                Path(document, tags, space, path);
                break;
            case ArcItem arc:
                Arc(document, tags, space, arc);
                break;
            case TextItem text:
                Text(document, tags, space, text);
                break;
            case HatchItem hatch:
                DxfHatches.Write(document, tags, space, hatch);
                break;
            case DimensionItem dimension:
                DxfDimensions.Write(document, tags, space, dimension);
                break;
            case BlockItem block:
                DxfInserts.Write(document, tags, space, block);
                break;
            default:
                throw new NotSupportedException(item.GetType().Name);
        }
    }

    /// <summary>What every entity starts with. Line types are scaled by the view, so they look alike in both spaces.</summary>
    public static DxfTags Begin(DxfDocument document, DxfTags tags, DxfSpace space, string type, Pen pen) =>
        Begin(document, tags, space, type, pen, document.Handles.Next());

    public static DxfTags Begin(DxfDocument document, DxfTags tags, DxfSpace space, string type, Pen pen, string handle)
    {
        var style = document.Pens[pen];
        tags.Add(0, type).Add(5, handle).Add(330, space.Owner).Add(100, "AcDbEntity");
        if (space.IsPaper)
        {
            tags.Add(67, 1);
        }

        tags.Add(8, style.Layer);
        if (style.Line != LineType.Continuous && space.Scale != 1)
        {
            tags.Add(48, space.Scale);
        }

        return tags;
    }

    /// <summary>The body of a text, shared by TEXT and attributes.</summary>
    public static DxfTags TextBody(DxfTags tags, DxfSpace space, Point at, double height, string text, double degrees, TextAnchor anchor)
    {
        var along = anchor switch
        {
            TextAnchor.Centre or TextAnchor.Middle => 1,
            TextAnchor.Right or TextAnchor.MiddleRight => 2,
            _ => 0,
        };
        tags.Add(100, "AcDbText").Add(10, space.Point(at)).Add(40, height * space.PerPaperMm).Add(1, DxfText.Plain(text));
        if (degrees != 0)
        {
            tags.Add(50, degrees);
        }

        tags.Add(7, DxfTables.TextStyleName).Add(72, along);
        return anchor == TextAnchor.Left ? tags : tags.Add(11, space.Point(at));
    }

    /// <summary>The group for alignment across the text: 2 half way up, 0 on the base line.</summary>
    public static int Across(TextAnchor anchor) => anchor is TextAnchor.Middle or TextAnchor.MiddleLeft or TextAnchor.MiddleRight ? 2 : 0;

    private static void Path(DxfDocument document, DxfTags tags, DxfSpace space, PolylineItem path)
    {
        Begin(document, tags, space, "LWPOLYLINE", path.Pen).Add(100, "AcDbPolyline")
            .Add(90, path.Points.Length).Add(70, path.End == PathEnd.Closed ? 1 : 0).Add(43, 0.0);
        foreach (var point in path.Points)
        {
            tags.AddFlat(10, space.Point(point));
        }
    }

    private static void Arc(DxfDocument document, DxfTags tags, DxfSpace space, ArcItem arc)
    {
        Begin(document, tags, space, arc.IsCircle ? "CIRCLE" : "ARC", arc.Pen).Add(100, "AcDbCircle")
            .Add(10, space.Point(arc.Centre)).Add(40, arc.Radius * space.PerMm);
        if (!arc.IsCircle)
        {
            tags.Add(100, "AcDbArc").Add(50, arc.StartDegrees).Add(51, arc.EndDegrees);
        }
    }

    private static void Text(DxfDocument document, DxfTags tags, DxfSpace space, TextItem text)
    {
        Begin(document, tags, space, "TEXT", text.Pen);
        TextBody(tags, space, text.At, text.Height, text.Text, text.Degrees, text.Anchor)
            .Add(100, "AcDbText").Add(73, Across(text.Anchor));
    }
}
