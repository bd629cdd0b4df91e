using IfcCourser.Output.Sheets;

namespace IfcCourser.Output.Dxf;

/// <summary>DIMENSION entities: rotated linear ones, with their picture block and the text where the sheet has it.</summary>
/// <remarks>
/// In inch sets the text is written out: a reader in use (LibreCAD 2.2, tried) takes the drawing unit for millimetres when it forms
/// feet and inches itself, and a wrong number on site is worse than one that does not follow an edit.
/// </remarks>
internal static class DxfDimensions
{
    /// <summary>0 rotated; 32 the picture block is used by this dimension only, 128 the text has a place of its own.</summary>
    private const int Type = 32 + 128;

    public static void Write(DxfDocument document, DxfTags tags, DxfSpace space, DimensionItem dimension)
    {
        var picture = document.Picture();
        var inside = space with { Owner = picture.Record, IsPaper = false };
        foreach (var part in DimensionPicture.Draw(dimension, space.Scale))
        {
            DxfEntities.Write(document, picture.Entities, inside, part);
        }

        DxfEntities.Begin(document, tags, space, "DIMENSION", dimension.Pen).Add(100, "AcDbDimension")
            .Add(2, picture.Name).Add(10, space.Point(dimension.LineEnd)).Add(11, space.Point(dimension.TextAt))
            .Add(70, Type).Add(71, 5).Add(42, dimension.Measured * space.PerMm);
        if (document.Units.IsInch)
        {
            tags.Add(1, DxfText.Multiline(dimension.Text));
        }
        else if (dimension.Prefix.Length > 0)
        {
            tags.Add(1, DxfText.Multiline(dimension.Prefix) + "<>");
        }

        if (dimension.Kind == DimensionKind.Running)
        {
            tags.Add(53, dimension.TextDegrees);
        }

        tags.Add(3, document.DimensionStyle(space.Scale, dimension.Kind))
            .Add(100, "AcDbAlignedDimension").Add(13, space.Point(dimension.From)).Add(14, space.Point(dimension.To))
            .Add(50, dimension.Axis == DimensionAxis.Horizontal ? 0.0 : 90.0).Add(100, "AcDbRotatedDimension");
    }
}
