using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Ifc;
using IfcCourser.Ifc.Bodies;

namespace IfcCourser.Walls.Reading;

/// <summary>How far doors and windows reach: by their bodies, else by their overall sizes from their placement.</summary>
public sealed class FillingExtents
{
    /// <summary>A void made from a filling reaches this far, mm, to both sides of it: through any wall.</summary>
    private const double Reach = 1000;

    private readonly PointReader _points;

    public FillingExtents(IfcModel model) => _points = new PointReader(model.File, model.Units);

    /// <summary>
    /// Points of a filling in model axes, mm; empty where the model gives neither body nor size. The box of the overall sizes
    /// starts at the placement, width along its x, height along its z (ISO 16739-1, IfcDoor and IfcWindow, from memory).
    /// </summary>
    public ImmutableArray<Vector3> Points(IfcFillingRecord filling)
    {
        var drawn = _points.Read(filling.Representation, filling.Placement);
        return !drawn.IsEmpty || filling is not { OverallWidth: > 0 and var width, OverallHeight: > 0 and var height }
            ? drawn
            : [.. new Vector3[] { new(0, 0, 0), new(width, 0, 0), new(width, 0, height), new(0, 0, height) }.Select(filling.Placement.Point)];
    }

    /// <summary>The void that a filling needs, square to its own axes, model axes, mm; empty where its size is not known.</summary>
    public Solid Void(IfcFillingRecord filling)
    {
        var points = Points(filling);
        if (points.IsEmpty)
        {
            return Solid.Empty;
        }

        var box = Box3.Around(points.Select(filling.Placement.RigidInverse().Point));
        var around = new Box3(box.Min - new Vector3(0, Reach, 0), box.Max + new Vector3(0, Reach, 0));
        return new Solid([ConvexCell.Of(around)]).Transformed(filling.Placement);
    }
}
