using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Step21;

namespace IfcCourser.Ifc.Bodies;

/// <summary>
/// The points that a shape is drawn with, without its solids: enough to tell how far doors and windows reach, whose frames
/// and fittings are slow to read.
/// </summary>
public sealed class PointReader
{
    private const int DeepestNesting = 24;

    private readonly ShapeSource _source;
    private readonly ProfileReader _profiles;

    /// <summary>Items being read: one that is a part of itself is read once.</summary>
    private readonly HashSet<long> _open = [];

    public PointReader(StepFile file, IfcUnits units)
    {
        _source = new ShapeSource(file, units.LengthMm, units.AngleRadians);
        _profiles = new ProfileReader(_source);
    }

    /// <summary>Points of an element's body, in model axes, mm; empty where it has none.</summary>
    /// <param name="shape">Instance number of its IfcProductDefinitionShape.</param>
    /// <param name="placement">From the element's axes to the model's, mm.</param>
    public ImmutableArray<Vector3> Read(long? shape, Transform3 placement)
    {
        _source.Begin();
        var representations = shape is { } id ? _source.Find(id)?[2].AsList ?? [] : [];
        var body = representations.Select(_source.Follow).OfType<StepInstance>().FirstOrDefault(item => item[1].AsString is "Body");
        return [.. (body?[3].AsList ?? []).SelectMany(item => Points(_source.Follow(item), 0)).Select(placement.Point)];
    }

    private IEnumerable<Vector3> Points(StepInstance? item, int depth)
    {
        if (item is null || depth > DeepestNesting || !_open.Add(item.Id))
        {
            yield break;
        }

        try
        {
            foreach (var point in PointsOf(item, depth))
            {
                yield return point;
            }
        }
        finally
        {
            // Also where whoever asks has seen enough.
            _open.Remove(item.Id);
        }
    }

    private IEnumerable<Vector3> PointsOf(StepInstance item, int depth) => item.Type switch
    {
        "IFCMAPPEDITEM" => Mapped(item, depth),
        "IFCEXTRUDEDAREASOLID" or "IFCREVOLVEDAREASOLID" => Swept(item),
        "IFCBOOLEANCLIPPINGRESULT" or "IFCBOOLEANRESULT" => Points(_source.Follow(item[1]), depth + 1),
        "IFCTRIANGULATEDFACESET" or "IFCPOLYGONALFACESET" => Listed(_source.Follow(item[0])),
        "IFCCARTESIANPOINT" => _source.Coordinates(item[0].AsList) is { } point ? [point] : [],
        "IFCEDGECURVE" => Points(_source.Follow(item[0]), depth + 1).Concat(Points(_source.Follow(item[1]), depth + 1)),
        "IFCORIENTEDEDGE" => Points(_source.Follow(item[2]), depth + 1),
        "IFCFACESURFACE" or "IFCADVANCEDFACE" => Below(item[0], depth),
        _ when IsShell(item.Type) => Enumerable.Range(0, item.Arguments.Length).SelectMany(i => Below(item[i], depth)),
        _ => [],
    };

    private static bool IsShell(string type) =>
        type.EndsWith("BREP", StringComparison.Ordinal) || type.EndsWith("BREPWITHVOIDS", StringComparison.Ordinal)
        || type.EndsWith("SHELL", StringComparison.Ordinal) || type.EndsWith("SURFACEMODEL", StringComparison.Ordinal)
        || type is "IFCCONNECTEDFACESET" or "IFCFACE" or "IFCFACEBOUND" or "IFCFACEOUTERBOUND" or "IFCPOLYLOOP" or "IFCEDGELOOP" or "IFCVERTEXPOINT";

    private IEnumerable<Vector3> Below(StepValue value, int depth) =>
        value.AsReference is not null ? Points(_source.Follow(value), depth + 1) : value.AsList.SelectMany(part => Below(part, depth + 1));

    private IEnumerable<Vector3> Listed(StepInstance? list) =>
        (list?[0].AsList ?? []).Select(point => _source.Coordinates(point.AsList)).OfType<Vector3>();

    private IEnumerable<Vector3> Mapped(StepInstance item, int depth)
    {
        if (_source.Follow(item[0]) is not { } map || _source.Follow(map[1]) is not { } representation)
        {
            return [];
        }

        var place = _source.Operator(item[1]).After(_source.Placement(map[0]));
        return representation[3].AsList.SelectMany(part => Points(_source.Follow(part), depth + 1)).Select(place.Point);
    }

    // Of a revolved solid only the profile's own place.
    private IEnumerable<Vector3> Swept(StepInstance item)
    {
        var place = _source.Placement(item[1]);
        var isExtruded = item.Type is "IFCEXTRUDEDAREASOLID";
        var sweep = isExtruded ? place.Direction(_source.Direction(item[2]) ?? new Vector3(0, 0, 1)) * (_source.Length(item[3]) ?? 0) : default;
        var points = _profiles.Read(item[0]).SelectMany(profile => profile.Loops).SelectMany(loop => loop).Select(point => place.Point(new Vector3(point.X, point.Y, 0))).ToList();
        return points.Concat(points.Select(point => point + sweep));
    }
}
