using System.Globalization;
using IfcCourser.Output.Sheets;

namespace IfcCourser.Output.Dxf;

/// <summary>A drawing while it is written: handles, blocks and dimension styles as entities ask for them.</summary>
internal sealed class DxfDocument
{
    private readonly List<DxfBlock> _blocks = [];
    private readonly Dictionary<string, DxfBlock> _byName = new(StringComparer.OrdinalIgnoreCase);
    private readonly SortedDictionary<(int Scale, DimensionKind Kind), string> _dimensionStyles = [];
    private int _pictures;

    public DxfDocument(PenTable pens, DxfUnits units)
    {
        Pens = pens;
        Units = units;
        Tables = new DxfTableHandles(Handles);
        Model = Space("*Model_Space");
    }

    public DxfHandles Handles { get; } = new();

    public DxfTableHandles Tables { get; }

    public PenTable Pens { get; }

    public DxfUnits Units { get; }

    public DxfBlock Model { get; }

    public IReadOnlyList<DxfBlock> Blocks => _blocks;

    /// <summary>Names by scale and kind.</summary>
    public IReadOnlyDictionary<(int Scale, DimensionKind Kind), string> DimensionStyles => _dimensionStyles;

    public DxfBlock Space(string name) => Register(name, Handles.Next());

    /// <summary>The block of a definition, drawn the first time it is asked for.</summary>
    public DxfBlock BlockOf(BlockDefinition definition, DxfSpace user)
    {
        var name = DxfText.Name(definition.Name);
        if (_byName.TryGetValue(name, out var known))
        {
            return known;
        }

        var block = Register(name, layout: null);
        var space = new DxfSpace(block.Record, IsPaper: false, default, user.PerMm, user.Scale);
        foreach (var item in definition.Items)
        {
            DxfEntities.Write(this, block.Entities, space, item);
        }

        foreach (var attribute in definition.Attributes)
        {
            DxfInserts.WriteDefinition(this, block.Entities, space, attribute);
        }

        block.HasAttributes = !definition.Attributes.IsEmpty;
        return block;
    }

    /// <summary>An anonymous block for the picture of a dimension.</summary>
    public DxfBlock Picture() =>
        Register(string.Create(CultureInfo.InvariantCulture, $"*D{++_pictures}"), layout: null);

    public string DimensionStyle(double scale, DimensionKind kind)
    {
        var key = ((int)Math.Round(scale), kind);
        if (!_dimensionStyles.TryGetValue(key, out var name))
        {
            name = string.Create(CultureInfo.InvariantCulture, $"{(kind == DimensionKind.Running ? "RUNNING" : "SINGLE")}-{key.Item1}");
            _dimensionStyles.Add(key, name);
        }

        return name;
    }

    private DxfBlock Register(string name, string? layout)
    {
        var block = new DxfBlock(name, Handles.Next(), Handles.Next(), Handles.Next(), layout);
        _blocks.Add(block);
        _byName.Add(name, block);
        return block;
    }
}
