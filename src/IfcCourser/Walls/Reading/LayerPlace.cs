using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Ifc.Bodies;

namespace IfcCourser.Walls.Reading;

/// <summary>Where one layer of a wall lies.</summary>
/// <param name="Across">From its right to its left face, in wall coordinates, mm.</param>
/// <param name="Body">The items of the body that are this layer; null where the body is not divided by layers.</param>
public sealed record LayerPlace(Slab Across, Solid? Body)
{
    /// <summary>The place of a layer that is drawn as items of its own.</summary>
    public static LayerPlace Of(ImmutableArray<BodyItem> items)
    {
        var solid = new Body(items, []).Solid;
        return new LayerPlace(new Slab(solid.Box.Min.Y, solid.Box.Max.Y), solid);
    }
}
