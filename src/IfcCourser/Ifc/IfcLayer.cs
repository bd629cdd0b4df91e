namespace IfcCourser.Ifc;

/// <summary>A material layer or constituent.</summary>
/// <param name="Name">Of the layer or constituent itself; shape aspects refer to constituents by it.</param>
/// <param name="Material">Name of its material.</param>
/// <param name="Category">Of the layer or constituent, else of its material, such as LoadBearing or Concrete.</param>
/// <param name="Thickness">Mm; null where the model gives none.</param>
/// <param name="Priority">Of a layer (IFC4 and later): the higher runs through where walls join; null where the model gives none.</param>
public sealed record IfcLayer(string? Name, string? Material, string? Category, double? Thickness, double? Priority = null);
