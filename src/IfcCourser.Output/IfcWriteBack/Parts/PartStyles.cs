using IfcCourser.Ifc;
using IfcCourser.Step21;

namespace IfcCourser.Output.IfcWriteBack.Parts;

/// <summary>Layers and colours of parts.</summary>
internal sealed class PartStyles(IfcModel model, GeometryWriter geometry)
{
    private readonly SortedDictionary<PartLayer, List<StepValue>> _layers = [];
    private readonly Dictionary<PartLayer, StepValue> _styles = [];

    /// <summary>Puts a representation on a layer.</summary>
    public void Assign(PartLayer layer, StepValue representation)
    {
        if (!_layers.TryGetValue(layer, out var items))
        {
            _layers.Add(layer, items = []);
        }

        items.Add(representation);
    }

    /// <summary>Gives a solid its layer's colour.</summary>
    public void Colour(PartLayer layer, StepValue item)
    {
        if (!_styles.TryGetValue(layer, out var style))
        {
            _styles.Add(layer, style = Style(layer));
        }

        geometry.Add("IFCSTYLEDITEM", item, StepValue.List(style), StepValue.Omitted);
    }

    /// <summary>Adds the layers, each with what was put on it.</summary>
    public void AddLayers()
    {
        foreach (var (layer, items) in _layers)
        {
            var name = StepValue.String($"{Generator.Name} {Name(layer)}");
            geometry.Add("IFCPRESENTATIONLAYERASSIGNMENT", name, StepValue.Omitted, StepValue.List([.. items]), StepValue.Omitted);
        }
    }

    private static string Name(PartLayer layer) => layer switch
    {
        PartLayer.Blocks => "blocks",
        PartLayer.CutBlocks => "cut blocks",
        PartLayer.TroughUnits => "trough units",
        PartLayer.Lintels => "lintels",
        PartLayer.BondBeams => "bond beams",
        PartLayer.Bars => "bars",
        _ => "module lines",
    };

    /// <summary>Red, green and blue from 0 to 1: cut blocks stand out, steel is seen against blocks.</summary>
    private static double[] Rgb(PartLayer layer) => layer switch
    {
        PartLayer.Blocks => [0.87, 0.86, 0.82],
        PartLayer.CutBlocks => [0.93, 0.67, 0.35],
        PartLayer.TroughUnits => [0.65, 0.75, 0.85],
        PartLayer.Lintels => [0.55, 0.55, 0.58],
        PartLayer.BondBeams => [0.62, 0.64, 0.60],
        _ => [0.70, 0.15, 0.10],
    };

    private StepValue Style(PartLayer layer)
    {
        var colour = geometry.Add("IFCCOLOURRGB", [StepValue.Omitted, .. Rgb(layer).Select(StepValue.Real)]);
        var shading = model.Schema == IfcSchema.Ifc2X3
            ? geometry.Add("IFCSURFACESTYLESHADING", colour)
            : geometry.Add("IFCSURFACESTYLESHADING", colour, StepValue.Omitted);
        var style = geometry.Add(
            "IFCSURFACESTYLE", StepValue.String($"{Generator.Name} {Name(layer)}"), StepValue.Enumeration("BOTH"), StepValue.List(shading));
        return model.Schema == IfcSchema.Ifc2X3 ? geometry.Add("IFCPRESENTATIONSTYLEASSIGNMENT", StepValue.List(style)) : style;
    }
}
