using IfcCourser.Geometry;
using IfcCourser.Step21;

namespace IfcCourser.Ifc.Bodies;

/// <summary>Representation items as solids, mm, in the item's own coordinates.</summary>
public sealed class SolidReader
{
    private const int DeepestNesting = 24;

    private readonly ShapeSource _source;
    private readonly ProfileReader _profiles;
    private readonly FaceReader _faces;

    public SolidReader(ShapeSource source)
    {
        _source = source;
        _profiles = new ProfileReader(source);
        _faces = new FaceReader(source);
    }

    /// <summary>The item's solid; null where the item is of a kind that is not read, or encloses nothing.</summary>
    public Solid? Read(StepInstance item) => Read(item, 0) is { IsEmpty: false } solid ? solid : null;

    private Solid? Read(StepInstance? item, int depth) => depth > DeepestNesting ? null : item?.Type switch
    {
        "IFCEXTRUDEDAREASOLID" => Extruded(item),
        "IFCBOOLEANCLIPPINGRESULT" or "IFCBOOLEANRESULT" => Boolean(item, depth),
        "IFCCSGSOLID" => Read(_source.Follow(item[0]), depth + 1),
        "IFCMAPPEDITEM" => Mapped(item, depth),
        "IFCFACETEDBREP" or "IFCADVANCEDBREP" or "IFCMANIFOLDSOLIDBREP" => Closed(item[0]),
        "IFCFACETEDBREPWITHVOIDS" or "IFCADVANCEDBREPWITHVOIDS" => WithVoids(item),
        "IFCFACEBASEDSURFACEMODEL" or "IFCSHELLBASEDSURFACEMODEL" => Enclosed(item[0].AsList.SelectMany(_faces.Shell)),
        "IFCTRIANGULATEDFACESET" => Enclosed(_faces.Triangles(item)),
        "IFCPOLYGONALFACESET" => Enclosed(_faces.Polygons(item)),
        "IFCBLOCK" => Swept(item, Rectangle(_source.Length(item[1]) ?? 0, _source.Length(item[2]) ?? 0), _source.Length(item[3]) ?? 0),
        "IFCRIGHTCIRCULARCYLINDER" => Swept(item, Circle(_source.Length(item[2]) ?? 0), _source.Length(item[1]) ?? 0),
        _ => null,
    };

    private static Profile Rectangle(double x, double y) => Profile.Of([new(0, 0), new(x, 0), new(x, y), new(0, y)], []);

    private static Profile Circle(double radius) =>
        Profile.Of([.. Enumerable.Range(0, 72).Select(i => i * Math.PI / 36).Select(a => new Vector2(radius * Math.Cos(a), radius * Math.Sin(a)))], []);

    // The faces must close: what they enclose (divergence theorem) is what the cells hold, and no cell reaches beyond them.
    // Faces turned inside out are turned back.
    private static Solid? Enclosed(IEnumerable<PlanarFace> faces)
    {
        const double Share = 0.02;
        const double Reach = 0.5;
        var all = FaceOrientation.Unified([.. faces]);
        if (all.Length < 4)
        {
            return null;
        }

        var origin = all[0].Loop[0];
        var volume = all.Sum(face => Vector3.Dot(face.Loop[0] - origin, face.AreaVector)) / 6;
        var solid = CellDecomposition.Of(volume < 0 ? [.. all.Select(face => face.Reversed)] : all);
        var beyond = solid.Box.Size - Box3.Around(all.SelectMany(face => face.Loop)).Size;
        var closes = Math.Abs(solid.Volume - Math.Abs(volume)) <= Share * Math.Abs(volume) && Math.Max(beyond.X, Math.Max(beyond.Y, beyond.Z)) <= Reach;
        return closes ? solid : null;
    }

    private Solid? Closed(StepValue shell) => _faces.IsFlat(shell) ? Enclosed(_faces.Shell(shell)) : null;

    private Solid Swept(StepInstance item, Profile profile, double height)
    {
        var place = _source.Placement(item[0]);
        return profile.Extruded(place, place.Z * height);
    }

    private Solid? Extruded(StepInstance item)
    {
        var place = _source.Placement(item[1]);
        var depth = _source.Length(item[3]) ?? 0;
        var sweep = place.Direction(_source.Direction(item[2]) ?? new Vector3(0, 0, 1)) * depth;
        var profiles = _profiles.Read(item[0]);
        return profiles.IsEmpty ? null : profiles.Select(profile => profile.Extruded(place, sweep)).Aggregate((a, b) => a.Union(b));
    }

    private Solid? WithVoids(StepInstance item)
    {
        var outer = Closed(item[0]);
        return item[1].AsList.Select(Closed).OfType<Solid>().Aggregate(outer, (rest, hole) => rest?.Subtract(hole));
    }

    private Solid? Mapped(StepInstance item, int depth)
    {
        if (_source.Follow(item[0]) is not { } map || _source.Follow(map[1]) is not { } representation)
        {
            return null;
        }

        var solids = representation[3].AsList.Select(part => Read(_source.Follow(part), depth + 1)).OfType<Solid>().ToList();
        var place = _source.Operator(item[1]).After(_source.Placement(map[0]).RigidInverse());
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
        var loop = new CurveReader(_source).Loop(halfSpace[3]);
        var reach = around.Size.Length + (around.Centre - place.Origin).Length;
        return loop.IsEmpty
            ? null
            : Profile.Of(loop, []).Extruded(place with { Origin = place.Origin - (place.Z * reach) }, place.Z * (2 * reach));
    }
}
