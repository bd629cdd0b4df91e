using System.Collections.Frozen;
using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Step21;

namespace IfcCourser.Ifc.Bodies;

/// <summary>Reads the body of elements from their shape representations.</summary>
public sealed class BodyReader
{
    private static readonly ImmutableArray<string> _solidKinds =
        ["SweptSolid", "Clipping", "Brep", "AdvancedBrep", "CSG", "Tessellation", "SurfaceModel", "SolidModel", "AdvancedSweptSolid", "MappedRepresentation"];

    private readonly ShapeSource _source;
    private readonly SolidReader _solids;
    private readonly FrozenDictionary<long, string> _aspects;

    public BodyReader(StepFile file, IfcUnits units)
    {
        _source = new ShapeSource(file, units.LengthMm, units.AngleRadians);
        _solids = new SolidReader(_source);
        _aspects = Aspects(file);
    }

    /// <summary>The body of an element.</summary>
    /// <param name="shape">Instance number of its IfcProductDefinitionShape.</param>
    /// <param name="placement">From the element's axes to the model's, mm.</param>
    public Body Read(long? shape, Transform3 placement)
    {
        _source.Begin();
        if (shape is not { } id || _source.Find(id) is not { } definition)
        {
            return Body.None;
        }

        var representations = definition[2].AsList.Select(_source.Follow).OfType<StepInstance>().ToList();
        var ranked = representations.Select((item, place) => (item, place, rank: Rank(item))).Where(r => r.rank < int.MaxValue).OrderBy(r => r.rank).ThenBy(r => r.place);
        var first = Body.None;
        foreach (var (representation, _, _) in ranked)
        {
            var body = Items(representation, placement);
            if (!body.Items.IsEmpty && body.Unread.IsEmpty)
            {
                return body;
            }

            first = first.Items.IsEmpty && first.Unread.IsEmpty ? body : first;
        }

        return first;
    }

    /// <summary>From the first to the last point of an element's Axis representation, in its own axes, mm; null where there is none.</summary>
    public (Vector2 From, Vector2 To)? Axis(long? shape)
    {
        _source.Begin();
        var representations = shape is { } id ? _source.Find(id)?[2].AsList ?? [] : [];
        var axis = representations.Select(_source.Follow).FirstOrDefault(item => item?[1].AsString is "Axis");
        var curves = new CurveReader(_source);
        var chain = axis?[3].AsList is [var curve, ..] ? curves.Chain(curve) : [];
        return chain.Length >= 2 && (chain[^1] - chain[0]).Plan.Length > Plane3.Tolerance ? (chain[0].Plan, chain[^1].Plan) : null;
    }

    // The body proper, then its stand-ins, then whatever has a kind that only bodies have. Never axes, boxes, footprints.
    private static int Rank(StepInstance representation) => (representation[1].AsString, representation[2].AsString) switch
    {
        ("Body", not "BoundingBox") => 0,
        ("Facetation", _) => 1,
        ("Body-FallBack" or "Body-Fallback", _) => 2,
        ("Axis" or "Box" or "FootPrint" or "Annotation" or "Clearance" or "Lighting" or "CoG" or "Reference" or "Profile" or "Surface", _) => int.MaxValue,
        (_, { } kind) when _solidKinds.Contains(kind, StringComparer.Ordinal) => 3,
        _ => int.MaxValue,
    };

    // Shape aspects point at representations; the body's items are named by theirs.
    private static FrozenDictionary<long, string> Aspects(StepFile file)
    {
        var names = new Dictionary<long, string>();
        foreach (var aspect in file.InstancesOf("IFCSHAPEASPECT").Select(file.Find).OfType<StepInstance>())
        {
            var representations = aspect[0].AsList.Select(value => value.AsReference is { } id ? file.Find(id) : null);
            foreach (var item in representations.OfType<StepInstance>().SelectMany(representation => representation[3].AsList))
            {
                if (IfcEntity.Label(aspect[1]) is { Length: > 0 } name && item.AsReference is { } id)
                {
                    names.TryAdd(id, name);
                }
            }
        }

        return names.ToFrozenDictionary();
    }

    private Body Items(StepInstance representation, Transform3 placement)
    {
        var items = ImmutableArray.CreateBuilder<BodyItem>();
        var unread = ImmutableArray.CreateBuilder<UnreadItem>();
        foreach (var item in representation[3].AsList.Select(_source.Follow).OfType<StepInstance>().Where(item => !_solids.HasNoInside(item)))
        {
            if (_solids.Read(item) is { } solid)
            {
                items.Add(new BodyItem(item.Id, _aspects.GetValueOrDefault(item.Id), solid.Transformed(placement)));
            }
            else
            {
                unread.Add(new UnreadItem(item.Id, _solids.HasBentFaces(item)));
            }
        }

        return new Body(items.ToImmutable(), unread.ToImmutable());
    }
}
