using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Step21;

namespace IfcCourser.Ifc.Bodies;

/// <summary>Profiles of swept solids as plane figures, mm.</summary>
public sealed class ProfileReader
{
    private const int DeepestNesting = 8;
    private const int CircleSteps = 72;

    private static readonly Transform3 _mirror = Transform3.Identity with { X = new Vector3(-1, 0, 0) };

    private readonly ShapeSource _source;
    private readonly CurveReader _curves;

    public ProfileReader(ShapeSource source)
    {
        _source = source;
        _curves = new CurveReader(source);
    }

    /// <summary>The figures of a profile, several for a composite one; empty where its kind is not read or it has no area.</summary>
    public ImmutableArray<Profile> Read(StepValue profile) => Read(_source.Follow(profile), 0);

    private static ImmutableArray<Vector2> Rectangle(double width, double height) =>
        [new(-width / 2, -height / 2), new(width / 2, -height / 2), new(width / 2, height / 2), new(-width / 2, height / 2)];

    private static ImmutableArray<Vector2> Ellipse(double a, double b) =>
        [.. Enumerable.Range(0, CircleSteps).Select(i => i * 2 * Math.PI / CircleSteps).Select(t => new Vector2(a * Math.Cos(t), b * Math.Sin(t)))];

    private static Profile Placed(Profile profile, Transform3 place)
    {
        var loops = profile.Loops.Select(loop => loop.Select(point => place.Point(new Vector3(point.X, point.Y, 0)).Plan).ToImmutableArray()).ToList();
        return Profile.Of(loops[0], loops.Skip(1));
    }

    private ImmutableArray<Profile> Read(StepInstance? profile, int depth)
    {
        if (profile is null || depth > DeepestNesting)
        {
            return [];
        }

        return profile.Type switch
        {
            "IFCARBITRARYCLOSEDPROFILEDEF" => Figure(_curves.Loop(profile[2]), []),
            "IFCARBITRARYPROFILEDEFWITHVOIDS" => Figure(
                _curves.Loop(profile[2]),
                profile[3].AsList.Select(_curves.Loop).Where(loop => !loop.IsEmpty)),
            "IFCCOMPOSITEPROFILEDEF" => [.. profile[2].AsList.SelectMany(part => Read(_source.Follow(part), depth + 1))],
            "IFCDERIVEDPROFILEDEF" => [.. Read(_source.Follow(profile[2]), depth + 1).Select(part => Placed(part, _source.Operator(profile[3])))],
            "IFCMIRROREDPROFILEDEF" => [.. Read(_source.Follow(profile[2]), depth + 1).Select(part => Placed(part, _mirror))],
            _ => [.. Parametric(profile).Select(figure => Placed(figure, _source.Placement(profile[2])))],
        };
    }

    private ImmutableArray<Profile> Parametric(StepInstance profile)
    {
        double At(int place) => _source.Length(profile[place]) ?? 0;
        switch (profile.Type)
        {
            case "IFCRECTANGLEPROFILEDEF":
                return Figure(Rectangle(At(3), At(4)), []);
            case "IFCRECTANGLEHOLLOWPROFILEDEF":
                return Figure(Rectangle(At(3), At(4)), [Rectangle(At(3) - (2 * At(5)), At(4) - (2 * At(5)))]);
            case "IFCCIRCLEPROFILEDEF":
                return Figure(Ellipse(At(3), At(3)), []);
            case "IFCCIRCLEHOLLOWPROFILEDEF":
                return Figure(Ellipse(At(3), At(3)), [Ellipse(At(3) - At(4), At(3) - At(4))]);
            case "IFCELLIPSEPROFILEDEF":
                return Figure(Ellipse(At(3), At(4)), []);
            case "IFCTRAPEZIUMPROFILEDEF":
                var (left, top, height) = (-At(3) / 2, At(4), At(5));
                var topLeft = left + At(6);
                return Figure([new(left, -height / 2), new(-left, -height / 2), new(topLeft + top, height / 2), new(topLeft, height / 2)], []);
            default:
                return [];
        }
    }

    private static ImmutableArray<Profile> Figure(ImmutableArray<Vector2> outer, IEnumerable<ImmutableArray<Vector2>> holes) =>
        outer.IsEmpty || outer.All(point => (point - outer[0]).Length <= Plane3.Tolerance) ? [] : [Profile.Of(outer, holes)];
}
