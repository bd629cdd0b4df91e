namespace IfcCourser.Output.Dxf;

/// <summary>The BLOCKS and ENTITIES sections. Entities of model space and of the first layout stand in ENTITIES.</summary>
internal static class DxfBlocks
{
    public static DxfTags Write(DxfDocument document, DxfBlock firstLayout)
    {
        var tags = new DxfTags().Add(0, "SECTION").Add(2, "BLOCKS");
        foreach (var block in document.Blocks)
        {
            var isElsewhere = block == document.Model || block == firstLayout;
            Write(tags, block, isElsewhere ? new DxfTags() : block.Entities);
        }

        return tags.Add(0, "ENDSEC").Add(0, "SECTION").Add(2, "ENTITIES")
            .Add(document.Model.Entities).Add(firstLayout.Entities).Add(0, "ENDSEC");
    }

    private static void Write(DxfTags tags, DxfBlock block, DxfTags entities)
    {
        var flags = (block.Name.StartsWith("*D", StringComparison.Ordinal) ? 1 : 0) + (block.HasAttributes ? 2 : 0);
        Entity(tags, "BLOCK", block.Begin, block, "AcDbBlockBegin")
            .Add(2, block.Name).Add(70, flags).Add(10, default(Sheets.Point)).Add(3, block.Name).Add(1, string.Empty);
        tags.Add(entities);
        Entity(tags, "ENDBLK", block.End, block, "AcDbBlockEnd");
    }

    private static DxfTags Entity(DxfTags tags, string type, string handle, DxfBlock block, string subclass)
    {
        tags.Add(0, type).Add(5, handle).Add(330, block.Record).Add(100, "AcDbEntity");
        if (block.Name.StartsWith("*Paper", StringComparison.Ordinal))
        {
            tags.Add(67, 1);
        }

        return tags.Add(8, "0").Add(100, subclass);
    }
}
