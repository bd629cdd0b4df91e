namespace IfcCourser.Output.Dxf;

/// <summary>A block with its record, begin and end handles; a layout's block names its layout.</summary>
internal sealed class DxfBlock(string name, string record, string begin, string end, string? layout)
{
    public string Name { get; } = name;

    public string Record { get; } = record;

    public string Begin { get; } = begin;

    public string End { get; } = end;

    /// <summary>Handle of the LAYOUT object; null for ordinary blocks.</summary>
    public string? Layout { get; } = layout;

    public DxfTags Entities { get; } = new();

    public bool HasAttributes { get; set; }
}
