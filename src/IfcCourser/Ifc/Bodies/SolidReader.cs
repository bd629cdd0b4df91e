using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Step21;

namespace IfcCourser.Ifc.Bodies;

/// <summary>Representation items as solids, mm, in the item's own coordinates.</summary>
public sealed class SolidReader
{
    private const int DeepestNesting = 24;

    private readonly ShapeSource _source;
    private readonly SweepReader _sweeps;
    private readonly FaceReader _faces;
    private readonly CurveReader _curves;

    /// <summary>Items being read: one that is a part of itself can't be.</summary>
    private readonly HashSet<long> _open = [];

    public SolidReader(ShapeSource source)
    {
        _source = source;
        _sweeps = new SweepReader(source);
        _faces = new FaceReader(source);
        _curves = new CurveReader(source);
    }

    /// <summary>The item's solid; null where the item is of a kind that is not read, or encloses nothing.</summary>
    public Solid? Read(StepInstance item) => Read(item, 0) is { IsEmpty: false } solid ? solid : null;

    private Solid? Read(StepInstance? item, int depth)
    {
        if (item is null || depth > DeepestNesting || !_open.Add(item.Id))
        {
            return null;
        }

        var solid = Kind(item, depth);
        _open.Remove(item.Id);
        return solid;
    }

    private Solid? Kind(StepInstance item, int depth) => item.Type switch
    {
        "IFCBOOLEANCLIPPINGRESULT" or "IFCBOOLEANRESULT" => Boolean(item, depth),
        "IFCCSGSOLID" => Read(_source.Follow(item[0]), depth + 1),
        "IFCMAPPEDITEM" => Mapped(item, depth),
        "IFCFACETEDBREP" or "IFCADVANCEDBREP" or "IFCMANIFOLDSOLIDBREP" => Closed(item[0]),
        "IFCFACETEDBREPWITHVOIDS" or "IFCADVANCEDBREPWITHVOIDS" => WithVoids(item),
        "IFCFACEBASEDSURFACEMODEL" or "IFCSHELLBASEDSURFACEMODEL" => ClosedFaces.Enclosed(item[0].AsList.SelectMany(_faces.Shell)),
        "IFCTRIANGULATEDFACESET" => ClosedFaces.Enclosed(_faces.Triangles(item)),
        "IFCPOLYGONALFACESET" => ClosedFaces.Enclosed(_faces.Polygons(item)),
        "IFCBLOCK" => Swept(item, Rectangle(_source.Length(item[1]) ?? 0, _source.Length(item[2]) ?? 0), _source.Length(item[3]) ?? 0),
        "IFCRIGHTCIRCULARCYLINDER" => Swept(item, Circle(_source.Length(item[2]) ?? 0), _source.Length(item[1]) ?? 0),
        "IFCRECTANGULARPYRAMID" => Pointed(item, Rectangle(_source.Length(item[1]) ?? 0, _source.Length(item[2]) ?? 0), _source.Length(item[3]) ?? 0),
        "IFCRIGHTCIRCULARCONE" => Pointed(item, Circle(_source.Length(item[2]) ?? 0), _source.Length(item[1]) ?? 0),
        var type when type.EndsWith("AREASOLID", StringComparison.Ordinal) || type is "IFCEXTRUDEDAREASOLIDTAPERED" => _sweeps.Read(item),
        _ => null,
    };

    /// <summary>Whether the item has faces that bend both ways, which are not followed.</summary>
    public bool HasBentFaces(StepInstance item) => item.Type is "IFCADVANCEDBREP" or "IFCADVANCEDBREPWITHVOIDS" && !_faces.CanFollow(item[0]);

    /// <summary>Whether the item encloses no space by its kind, or is a mapping of such items.</summary>
    public bool HasNoInside(StepInstance item, int depth = 0) =>
        item.Type.EndsWith("CURVE", StringComparison.Ordinal)
        || item.Type is "IFCPOLYLINE" or "IFCGEOMETRICCURVESET" or "IFCGEOMETRICSET" or "IFCCARTESIANPOINT" or "IFCANNOTATIONFILLAREA" or "IFCTEXTLITERAL"
        || (item.Type is "IFCMAPPEDITEM" && depth < DeepestNesting && MappedItems(item).All(part => HasNoInside(part, depth + 1)));

    private static Profile Rectangle(double x, double y) => Profile.Of([new(0, 0), new(x, 0), new(x, y), new(0, y)], []);

    private static Profile Circle(double radius) =>
        Profile.Of([.. CircleArc.Chords(Transform3.Identity, radius, radius, 0, 2 * Math.PI).SkipLast(1).Select(point => point.Plan)], []);

    private Solid? Closed(StepValue shell) => _faces.CanFollow(shell) ? ClosedFaces.Enclosed(_faces.Shell(shell)) : null;

    private Solid Swept(StepInstance item, Profile profile, double height)
    {
        var place = _source.Placement(item[0]);
        return profile.Extruded(place, place.Z * height);
    }

    // A pyramid's apex stands over the middle of its foot, a cone's over its centre.
    private Solid? Pointed(StepInstance item, Profile profile, double height)
    {
        var place = _source.Placement(item[0]);
        var middle = profile.Loops[0].Aggregate((a, b) => a + b) * (1.0 / profile.Loops[0].Length);
        var apex = place.Point(new Vector3(middle.X, middle.Y, height));
        ImmutableArray<Vector3> foot = [.. profile.Loops[0].Select(point => place.Point(new Vector3(point.X, point.Y, 0)))];
        var sides = foot.Select((point, i) => PlanarFace.Around([point, foot[(i + 1) % foot.Length], apex])).Append(PlanarFace.Around([.. foot.Reverse()]));
        return ClosedFaces.Enclosed(sides.OfType<PlanarFace>());
    }

    private Solid? WithVoids(StepInstance item)
    {
        var outer = Closed(item[0]);
        return item[1].AsList.Select(Closed).OfType<Solid>().Aggregate(outer, (rest, hole) => rest?.Subtract(hole));
    }

    private IEnumerable<StepInstance> MappedItems(StepInstance item) =>
        _source.Follow(item[0]) is { } map && _source.Follow(map[1]) is { } representation ? representation[3].AsList.Select(_source.Follow).OfType<StepInstance>() : [];

    // The map's origin places what is mapped, then the operator does, as web-ifc and @ifc-lite read it too; the standard leaves
    // open whether the origin is meant the other way round (buildingSMART/IFC4.x-development issue 815).
    private Solid? Mapped(StepInstance item, int depth)
    {
        var solids = MappedItems(item).Select(part => Read(part, depth + 1)).OfType<Solid>().ToList();
        var place = _source.Operator(item[1]).After(_source.Placement(_source.Follow(item[0])?[0] ?? StepValue.Omitted));
        return solids.Count == 0 ? null : solids.Aggregate((a, b) => a.Union(b)).Transformed(place);
    }

    // Clippings are nested in their first operand, sometimes hundreds deep: taken one by one, innermost first.
    private Solid? Boolean(StepInstance item, int depth)
    {
        var steps = new Stack<StepInstance>();
        var seen = new HashSet<long>();
        var operand = item;
        while (operand is { Type: "IFCBOOLEANCLIPPINGRESULT" or "IFCBOOLEANRESULT" } && seen.Add(operand.Id))
        {
            steps.Push(operand);
            operand = _source.Follow(operand[1]);
        }

        var solid = Read(operand, depth + 1);
        while (solid is not null && steps.TryPop(out var step))
        {
            solid = Combined(solid, step[0].AsEnumeration, Tool(_source.Follow(step[2]), solid, depth + 1));
        }

        return solid;
    }

    private static Solid? Combined(Solid solid, string? operation, Solid? tool) => (operation, tool) switch
    {
        (_, null) => null,
        ("UNION", _) => solid.Union(tool),
        ("INTERSECTION", _) => solid.Intersect(tool),
        _ => solid.Subtract(tool),
    };

    // Half-spaces are bounded by a box around the solid that they cut.
    private Solid? Tool(StepInstance? item, Solid target, int depth)
    {
        if (target.IsEmpty)
        {
            return Solid.Empty;
        }

        if (item?.Type is not ("IFCHALFSPACESOLID" or "IFCBOXEDHALFSPACE" or "IFCPOLYGONALBOUNDEDHALFSPACE"))
        {
            return Read(item, depth);
        }

        if (_source.Follow(item[0]) is not { Type: "IFCPLANE" } surface)
        {
            return null;
        }

        var place = _source.Placement(surface[0]);
        var plane = Plane3.Through(place.Origin, place.Z);
        var around = target.Box.Grown(100);
        var whole = item.Type is "IFCPOLYGONALBOUNDEDHALFSPACE" ? Column(item, around) : new Solid([ConvexCell.Of(around)]);
        return whole?.Behind(item[1].AsBoolean is false ? plane.Reversed : plane);
    }

    private Solid? Column(StepInstance halfSpace, Box3 around)
    {
        var place = _source.Placement(halfSpace[2]);
        var loop = _curves.Loop(halfSpace[3]);
        var reach = around.Size.Length + (around.Centre - place.Origin).Length;
        return loop.IsEmpty
            ? null
            : Profile.Of(loop, []).Extruded(place with { Origin = place.Origin - (place.Z * reach) }, place.Z * (2 * reach));
    }
}
