using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Step21;

namespace IfcCourser.Ifc.Bodies;

/// <summary>Profiles of swept solids as plane figures, mm.</summary>
public sealed class ProfileReader
{
    private const int DeepestNesting = 8;

    private static readonly Transform3 _mirror = Transform3.Identity with { X = new Vector3(-1, 0, 0) };

    /// <summary>Of a composite profile, which is one of a handful; one that names its parts over and over is not read.</summary>
    private const int MostFigures = 1000;

    private readonly ShapeSource _source;
    private readonly CurveReader _curves;

    /// <summary>Profiles being read: one that is a part of itself can't be.</summary>
    private readonly HashSet<long> _open = [];

    public ProfileReader(ShapeSource source)
    {
        _source = source;
        _curves = new CurveReader(source);
    }

    /// <summary>The figures of a profile, several for a composite one; empty where its kind is not read or it has no area.</summary>
    public ImmutableArray<Profile> Read(StepValue profile) => Read(_source.Follow(profile), 0);

    private static Profile Placed(Profile profile, Transform3 place)
    {
        var loops = profile.Loops.Select(loop => loop.Select(point => place.Point(new Vector3(point.X, point.Y, 0)).Plan).ToImmutableArray()).ToList();
        return Profile.Of(loops[0], loops.Skip(1));
    }

    private ImmutableArray<Profile> Read(StepInstance? profile, int depth)
    {
        if (profile is null || depth > DeepestNesting || !_open.Add(profile.Id))
        {
            return [];
        }

        var figures = Kind(profile, depth);
        _open.Remove(profile.Id);
        return figures;
    }

    private ImmutableArray<Profile> Kind(StepInstance profile, int depth) => profile.Type switch
    {
        "IFCARBITRARYCLOSEDPROFILEDEF" => Figure(_curves.Loop(profile[2]), []),
        "IFCARBITRARYPROFILEDEFWITHVOIDS" => Figure(
            _curves.Loop(profile[2]),
            profile[3].AsList.Select(_curves.Loop).Where(loop => !loop.IsEmpty)),
        "IFCCENTERLINEPROFILEDEF" => Figure(Band([.. _curves.Chain(profile[2]).Select(point => point.Plan)], (_source.Length(profile[3]) ?? 0) / 2), []),
        "IFCCOMPOSITEPROFILEDEF" => Parts(profile, depth),
        "IFCDERIVEDPROFILEDEF" => [.. Read(_source.Follow(profile[2]), depth + 1).Select(part => Placed(part, _source.Operator(profile[3])))],
        "IFCMIRROREDPROFILEDEF" => [.. Read(_source.Follow(profile[2]), depth + 1).Select(part => Placed(part, _mirror))],
        _ => [.. ParametricProfiles.Read(_source, profile).Select(figure => Placed(figure, _source.Placement(profile[2])))],
    };

    private ImmutableArray<Profile> Parts(StepInstance profile, int depth)
    {
        ImmutableArray<Profile> parts = [.. profile[2].AsList.SelectMany(part => Read(_source.Follow(part), depth + 1)).Take(MostFigures + 1)];
        return parts.Length > MostFigures ? [] : parts;
    }

    // A band of half a thickness to both sides of an open line, its corners mitred.
    private static ImmutableArray<Vector2> Band(ImmutableArray<Vector2> line, double half) => line.Length < 2 || half <= 0 ? [] :
    [
        .. line.Select((point, i) => point - Offset(line, i, half)),
        .. line.Select((point, i) => point + Offset(line, i, half)).Reverse(),
    ];

    private static Vector2 Offset(ImmutableArray<Vector2> line, int i, double half)
    {
        var before = (i > 0 ? line[i] - line[i - 1] : line[1] - line[0]).Unit();
        var after = (i + 1 < line.Length ? line[i + 1] - line[i] : line[i] - line[i - 1]).Unit();
        var middle = (before.Left + after.Left).Unit();
        return middle * (half / Vector2.Dot(middle, after.Left));
    }

    private static ImmutableArray<Profile> Figure(ImmutableArray<Vector2> outer, IEnumerable<ImmutableArray<Vector2>> holes) =>
        outer.IsEmpty || outer.All(point => (point - outer[0]).Length <= Plane3.Tolerance) ? [] : [Profile.Of(outer, holes)];
}
