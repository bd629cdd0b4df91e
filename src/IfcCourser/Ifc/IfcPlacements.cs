using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Step21;

namespace IfcCourser.Ifc;

/// <summary>Points, directions and placements in model axes, mm; chains of placements are followed once.</summary>
internal sealed class IfcPlacements
{
    /// <summary>mm, from any origin: more than map coordinates on earth have.</summary>
    public const double Farthest = 1e11;

    private readonly IfcInstances _instances;
    private readonly double _lengthMm;
    private readonly List<Finding> _findings;
    private readonly Dictionary<long, Transform3> _known = [];
    private readonly Lock _lock = new();

    public IfcPlacements(IfcInstances instances, double lengthMm, List<Finding> findings)
    {
        _instances = instances;
        _lengthMm = lengthMm;
        _findings = findings;
    }

    /// <summary>From an object's own axes to the model's; identity where there is no placement.</summary>
    public Transform3 Absolute(long? placement)
    {
        lock (_lock)
        {
            return placement is { } id ? Chain(id) : Transform3.Identity;
        }
    }

    /// <summary>An axis placement (2D, 3D or of one axis) in the axes it is written in; identity where there is none.</summary>
    public Transform3 Axes(StepValue reference)
    {
        if (_instances.Follow(reference) is not { } axes)
        {
            return Transform3.Identity;
        }

        if (Point(axes["Location"]) is not { } origin)
        {
            Report(FindingCodes.PlacementNotRead, axes.Id, "has a location that can't be read; its origin is taken");
            origin = default;
        }

        var z = Direction(axes["Axis"]) ?? new Vector3(0, 0, 1);
        var x = Perpendicular(Direction(axes["RefDirection"]) ?? new Vector3(1, 0, 0), z);
        return new Transform3(origin, x, Vector3.Cross(z, x), z);
    }

    /// <summary>A cartesian point in mm, z = 0 where it has two coordinates; null where it can't be read or lies off the earth.</summary>
    public Vector3? Point(StepValue reference) =>
        _instances.Follow(reference) is { Type: "IFCCARTESIANPOINT" } point && Triple(point[0]) is { } coordinates && (coordinates * _lengthMm).Length <= Farthest
            ? coordinates * _lengthMm
            : null;

    /// <summary>A unit vector; null where it can't be read or has no length.</summary>
    public Vector3? Direction(StepValue reference) =>
        _instances.Follow(reference) is { Type: "IFCDIRECTION" } direction
        && Triple(direction[0]) is { } ratios
        && ratios.Unit() is { Length: > 0 } unit
            ? unit
            : null;

    private static Vector3? Triple(StepValue list)
    {
        var items = list.AsList;
        return items.Length >= 2 && items[0].AsReal is { } x && items[1].AsReal is { } y
            ? new Vector3(x, y, items.Length > 2 ? items[2].AsReal ?? 0 : 0)
            : null;
    }

    /// <summary>The part of <paramref name="wanted"/> square to z (IfcFirstProjAxis), another axis where they are parallel.</summary>
    private static Vector3 Perpendicular(Vector3 wanted, Vector3 z)
    {
        const double Parallel = 1e-9;
        var x = wanted - (z * Vector3.Dot(wanted, z));
        if (x.Length < Parallel)
        {
            var other = Math.Abs(z.X) < 0.9 ? new Vector3(1, 0, 0) : new Vector3(0, 1, 0);
            x = other - (z * Vector3.Dot(other, z));
        }

        return x.Unit();
    }

    private Transform3 Chain(long id)
    {
        var open = new List<long>();
        var seen = new HashSet<long>();
        long? next = id;
        while (next is { } current && !_known.ContainsKey(current))
        {
            if (!seen.Add(current))
            {
                Report(FindingCodes.PlacementCycle, current, "is placed relative to itself");
                break;
            }

            open.Add(current);
            next = _instances.Find(current)?["PlacementRelTo"].AsReference;
        }

        var parent = next is { } known ? _known.GetValueOrDefault(known, Transform3.Identity) : Transform3.Identity;
        for (var i = open.Count - 1; i >= 0; i--)
        {
            parent = parent.After(Local(open[i]));
            _known[open[i]] = parent;
        }

        return parent;
    }

    private Transform3 Local(long id)
    {
        switch (_instances.Find(id))
        {
            case { Type: "IFCLOCALPLACEMENT" } local:
                return Axes(local["RelativePlacement"]);
            case { Type: "IFCLINEARPLACEMENT" } linear when linear["CartesianPosition"].AsReference is not null:
                return Axes(linear["CartesianPosition"]);
            default:
                Report(FindingCodes.PlacementNotRead, id, "is no local placement that can be read; its origin is taken");
                return Transform3.Identity;
        }
    }

    private void Report(FindingCode code, long id, string what) =>
        _findings.Add(new Finding(code, FormattableString.Invariant($"The placement #{id} {what}.")));
}
