using IfcCourser.Output.Sheets;

namespace IfcCourser.Output.Dxf;

/// <summary>Block references with their attributes, and the attributes' definitions.</summary>
internal static class DxfInserts
{
    private const int Invisible = 1;

    public static void Write(DxfDocument document, DxfTags tags, DxfSpace space, BlockItem item)
    {
        var block = document.BlockOf(item.Definition, space);
        var handle = document.Handles.Next();
        DxfEntities.Begin(document, tags, space, "INSERT", item.Pen, handle).Add(100, "AcDbBlockReference");
        if (block.HasAttributes)
        {
            tags.Add(66, 1);
        }

        tags.Add(2, block.Name).Add(10, space.Point(item.At));
        if (!block.HasAttributes)
        {
            return;
        }

        var inside = space with { Owner = handle };
        foreach (var (attribute, value) in item.Definition.Attributes.Zip(item.Values))
        {
            DxfEntities.Begin(document, tags, inside, "ATTRIB", attribute.Pen);
            DxfEntities.TextBody(tags, inside, item.At + attribute.At, attribute.Height, value, 0, attribute.Anchor)
                .Add(100, "AcDbAttribute").Add(280, 0).Add(2, attribute.Tag).Add(70, Flags(attribute))
                .Add(74, DxfEntities.Across(attribute.Anchor)).Add(280, 1);
        }

        DxfEntities.Begin(document, tags, inside, "SEQEND", item.Pen);
    }

    public static void WriteDefinition(DxfDocument document, DxfTags tags, DxfSpace space, BlockAttribute attribute)
    {
        DxfEntities.Begin(document, tags, space, "ATTDEF", attribute.Pen);
        DxfEntities.TextBody(tags, space, attribute.At, attribute.Height, string.Empty, 0, attribute.Anchor)
            .Add(100, "AcDbAttributeDefinition").Add(280, 0).Add(3, DxfText.Plain(attribute.Prompt)).Add(2, attribute.Tag)
            .Add(70, Flags(attribute)).Add(74, DxfEntities.Across(attribute.Anchor)).Add(280, 1);
    }

    private static int Flags(BlockAttribute attribute) => attribute.Display == AttributeDisplay.Hidden ? Invisible : 0;
}
