namespace IfcCourser.Ifc;

/// <summary>How a model states what an element is made of.</summary>
public enum IfcMaterialKind
{
    /// <summary>Layers with their place relative to the axis (IfcMaterialLayerSetUsage).</summary>
    LayerSetUsage,

    /// <summary>Layers alone (IfcMaterialLayerSet).</summary>
    LayerSet,

    /// <summary>Named parts without thickness (IfcMaterialConstituentSet).</summary>
    ConstituentSet,

    /// <summary>Names alone (IfcMaterialList).</summary>
    List,

    /// <summary>One material.</summary>
    Single,
}
