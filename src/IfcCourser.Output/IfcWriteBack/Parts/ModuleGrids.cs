using IfcCourser.Geometry;
using IfcCourser.Ifc;
using IfcCourser.Layouts;
using IfcCourser.Step21;
using IfcCourser.Units;

namespace IfcCourser.Output.IfcWriteBack.Parts;

/// <summary>
/// The module lines of straight walls, an IfcGrid a wall: lines across it by number from its start, and its two faces along it. IFC has
/// no grid along a curve that most programs read, so curved walls have none.
/// </summary>
internal sealed class ModuleGrids(Addition addition, GeometryWriter geometry, PartStyles styles)
{
    private static readonly Length _beyond = Length.FromMm(300);

    private readonly Dictionary<long, long> _structures = Structures(addition.Model);
    private readonly SortedDictionary<long, List<StepValue>> _contained = [];

    public void Add(WallLayout wall)
    {
        if (wall.Frame.Curve is not null || wall.ModuleLines.Pitch <= Length.Zero)
        {
            return;
        }

        var (length, thickness) = (wall.Frame.Length, wall.Frame.Thickness);
        var across = Places(wall.ModuleLines, length)
            .Select((s, i) => Axis(FormattableString.Invariant($"{i}"), new(s.Mm, _beyond.Mm), new(s.Mm, -(thickness + _beyond).Mm)))
            .ToList();
        List<(StepValue Axis, StepValue Curve)> along =
        [
            Axis("left", new(-_beyond.Mm, 0), new((length + _beyond).Mm, 0)),
            Axis("right", new(-_beyond.Mm, -thickness.Mm), new((length + _beyond).Mm, -thickness.Mm)),
        ];
        if (across.Count > 0)
        {
            Contain(wall.Identity.StepId, Grid(wall, across, along));
        }
    }

    /// <summary>Puts the grids into the storeys of their walls.</summary>
    public void AddContainment()
    {
        foreach (var (structure, grids) in _contained)
        {
            geometry.Add(
                "IFCRELCONTAINEDINSPATIALSTRUCTURE",
                StepValue.String(addition.Guids.For(addition.Model.Find(structure)?["GlobalId"].AsString ?? string.Empty, "module lines")),
                addition.Owner,
                StepValue.Omitted,
                StepValue.Omitted,
                StepValue.List([.. grids]),
                StepValue.Reference(structure));
        }
    }

    private static IEnumerable<Length> Places(ModuleLines lines, Length length)
    {
        for (var s = lines.Start.Modulo(lines.Pitch); s <= length; s += lines.Pitch)
        {
            yield return s;
        }
    }

    /// <summary>What contains each element, itself or by what it is a part of.</summary>
    private static Dictionary<long, long> Structures(IfcModel model)
    {
        var found = new Dictionary<long, long>();
        foreach (var relation in model.Instances.All("IFCRELCONTAINEDINSPATIALSTRUCTURE"))
        {
            Note(relation["RelatedElements"], relation["RelatingStructure"]);
        }

        foreach (var relation in model.Instances.All("IFCRELAGGREGATES"))
        {
            if (relation["RelatingObject"].AsReference is { } whole && found.TryGetValue(whole, out var structure))
            {
                Note(relation["RelatedObjects"], StepValue.Reference(structure));
            }
        }

        return found;

        void Note(StepValue elements, StepValue structure)
        {
            foreach (var element in elements.AsList.Select(item => item.AsReference).OfType<long>())
            {
                if (structure.AsReference is { } id && model.Find(id) is not null)
                {
                    found.TryAdd(element, id);
                }
            }
        }
    }

    private StepValue Grid(WallLayout wall, List<(StepValue Axis, StepValue Curve)> across, List<(StepValue Axis, StepValue Curve)> along)
    {
        var frame = wall.Frame;
        var direction = new Vector3(frame.Direction.X, frame.Direction.Y, 0);
        var placement = geometry.Placement(
            StepValue.Omitted, new Transform3(frame.Origin, direction, Vector3.Cross(new Vector3(0, 0, 1), direction), new Vector3(0, 0, 1)));
        var curves = geometry.Add("IFCGEOMETRICCURVESET", StepValue.List([.. across.Concat(along).Select(line => line.Curve)]));
        var representation = geometry.Add(
            "IFCSHAPEREPRESENTATION", geometry.BodyContext, StepValue.String("FootPrint"), StepValue.String("GeometricCurveSet"), StepValue.List(curves));
        styles.Assign(PartLayer.ModuleLines, representation);
        StepValue[] attributes =
        [
            StepValue.String(addition.Guids.For(wall.Identity.GlobalId, "module lines")),
            addition.Owner,
            StepValue.String($"Module lines of {wall.Identity.Label}"),
            StepValue.Omitted,
            StepValue.Omitted,
            placement,
            geometry.Add("IFCPRODUCTDEFINITIONSHAPE", StepValue.Omitted, StepValue.Omitted, StepValue.List(representation)),
            StepValue.List([.. across.Select(line => line.Axis)]),
            StepValue.List([.. along.Select(line => line.Axis)]),
            StepValue.Omitted,
        ];
        return geometry.Add("IFCGRID", addition.Model.Schema == IfcSchema.Ifc2X3 ? attributes : [.. attributes, StepValue.Enumeration("RECTANGULAR")]);
    }

    private (StepValue Axis, StepValue Curve) Axis(string tag, Vector2 from, Vector2 to)
    {
        var curve = geometry.Polyline([from, to]);
        return (geometry.Add("IFCGRIDAXIS", StepValue.String(tag), curve, StepValue.Enumeration("T")), curve);
    }

    private void Contain(long wall, StepValue grid)
    {
        if (!_structures.TryGetValue(wall, out var structure))
        {
            return;
        }

        if (!_contained.TryGetValue(structure, out var grids))
        {
            _contained.Add(structure, grids = []);
        }

        grids.Add(grid);
    }
}
