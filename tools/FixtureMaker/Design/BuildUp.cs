using System.Collections.Immutable;

namespace FixtureMaker.Design;

/// <summary>A wall type: its layers, counted from the reference line (local y = 0) by an offset and a sense,
/// as IfcMaterialLayerSetUsage has it.</summary>
internal sealed record BuildUp(string Name, double Offset, LayerSense Sense, ImmutableArray<Layer> Layers)
{
    public double Thickness => Layers.Sum(layer => layer.Thickness);

    /// <summary>Local y of the face on the right, looking along the wall.</summary>
    public double Low => Sense == LayerSense.Positive ? Offset : Offset - Thickness;

    /// <summary>Local y of the face on the left, looking along the wall.</summary>
    public double High => Low + Thickness;

    /// <summary>Layers of equal standing on both sides of the reference line.</summary>
    public static BuildUp Centred(string name, params ImmutableArray<Layer> layers) =>
        new(name, -layers.Sum(layer => layer.Thickness) / 2, LayerSense.Positive, layers);
}
