using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Step21;

namespace IfcCourser.Ifc.Bodies;

/// <summary>
/// Profiles given by their dimensions (subtypes of IfcParameterizedProfileDef), mm, about the middle of the box around them
/// as the standard places them. Slopes of flanges and legs are not followed.
/// </summary>
public static class ParametricProfiles
{
    /// <summary>The figure of a profile; empty where its kind is not read or it has no area.</summary>
    /// <param name="source">For lengths.</param>
    /// <param name="profile">Attributes from the fourth on are its dimensions.</param>
    public static ImmutableArray<Profile> Read(ShapeSource source, StepInstance profile)
    {
        double At(int place) => source.Length(profile[place]) ?? 0;
        double Or(int place, double otherwise) => source.Length(profile[place]) ?? otherwise;
        return profile.Type switch
        {
            "IFCRECTANGLEPROFILEDEF" => Figure(Rectangle(At(3), At(4), 0)),
            "IFCROUNDEDRECTANGLEPROFILEDEF" => Figure(Rectangle(At(3), At(4), At(5))),
            "IFCRECTANGLEHOLLOWPROFILEDEF" => Figure(
                Rectangle(At(3), At(4), At(7)), Rectangle(At(3) - (2 * At(5)), At(4) - (2 * At(5)), At(6))),
            "IFCCIRCLEPROFILEDEF" => Figure(Ellipse(At(3), At(3))),
            "IFCCIRCLEHOLLOWPROFILEDEF" => Figure(Ellipse(At(3), At(3)), Ellipse(At(3) - At(4), At(3) - At(4))),
            "IFCELLIPSEPROFILEDEF" => Figure(Ellipse(At(3), At(4))),
            "IFCTRAPEZIUMPROFILEDEF" => Figure(Trapezium(At(3), At(4), At(5), At(6))),
            "IFCISHAPEPROFILEDEF" => Figure(IShape(At(4), At(5), (At(3), At(6), At(7)), (At(3), At(6), At(7)))),
            "IFCASYMMETRICISHAPEPROFILEDEF" => Figure(IShape(At(4), At(5), (At(3), At(6), At(7)), (At(8), Or(9, At(6)), Or(10, 0)))),
            "IFCLSHAPEPROFILEDEF" => Figure(LShape(Or(4, At(3)), At(3), At(5), At(6), At(7))),
            "IFCTSHAPEPROFILEDEF" => Figure(TShape(At(4), At(3), At(5), At(6), At(7))),
            "IFCUSHAPEPROFILEDEF" => Figure(UShape(At(4), At(3), At(5), At(6), At(7))),
            "IFCZSHAPEPROFILEDEF" => Figure(ZShape(At(4), At(3), At(5), At(6), At(7))),
            "IFCCSHAPEPROFILEDEF" => Figure(CShape(At(4), At(3), At(5), At(6), At(7))),
            _ => [],
        };
    }

    private static ImmutableArray<Profile> Figure(ImmutableArray<Vector2> outer, params ReadOnlySpan<ImmutableArray<Vector2>> holes) =>
        outer.All(point => (point - outer[0]).Length <= Plane3.Tolerance) ? [] : [Profile.Of(outer, [.. holes])];

    private static ImmutableArray<Vector2> Rectangle(double width, double height, double radius)
    {
        var (x, y) = (width / 2, height / 2);
        return RoundedLoop.Of((-x, -y, radius), (x, -y, radius), (x, y, radius), (-x, y, radius));
    }

    private static ImmutableArray<Vector2> Ellipse(double a, double b) =>
        [.. CircleArc.Chords(Transform3.Identity, a, b, 0, 2 * Math.PI).SkipLast(1).Select(point => point.Plan)];

    private static ImmutableArray<Vector2> Trapezium(double bottom, double top, double height, double offset)
    {
        var (x, y) = (bottom / 2, height / 2);
        return RoundedLoop.Of((-x, -y, 0), (x, -y, 0), (offset + top - x, y, 0), (offset - x, y, 0));
    }

    private static ImmutableArray<Vector2> IShape(
        double depth, double web, (double Width, double Thickness, double Fillet) foot, (double Width, double Thickness, double Fillet) head)
    {
        var (x, y) = (web / 2, depth / 2);
        var (low, high) = (foot.Thickness - y, y - head.Thickness);
        return RoundedLoop.Of(
            (-foot.Width / 2, -y, 0), (foot.Width / 2, -y, 0), (foot.Width / 2, low, 0), (x, low, foot.Fillet), (x, high, head.Fillet), (head.Width / 2, high, 0),
            (head.Width / 2, y, 0), (-head.Width / 2, y, 0), (-head.Width / 2, high, 0), (-x, high, head.Fillet), (-x, low, foot.Fillet), (-foot.Width / 2, low, 0));
    }

    private static ImmutableArray<Vector2> LShape(double width, double depth, double thickness, double fillet, double edge)
    {
        var (x, y) = (width / 2, depth / 2);
        return RoundedLoop.Of((-x, -y, 0), (x, -y, 0), (x, thickness - y, edge), (thickness - x, thickness - y, fillet), (thickness - x, y, edge), (-x, y, 0));
    }

    // The flange is on top.
    private static ImmutableArray<Vector2> TShape(double width, double depth, double web, double flange, double fillet)
    {
        var (x, y, w) = (width / 2, depth / 2, web / 2);
        return RoundedLoop.Of(
            (-w, -y, 0), (w, -y, 0), (w, y - flange, fillet), (x, y - flange, 0), (x, y, 0), (-x, y, 0), (-x, y - flange, 0), (-w, y - flange, fillet));
    }

    // Open to the right.
    private static ImmutableArray<Vector2> UShape(double width, double depth, double web, double flange, double fillet)
    {
        var (x, y) = (width / 2, depth / 2);
        return RoundedLoop.Of(
            (-x, -y, 0), (x, -y, 0), (x, flange - y, 0), (web - x, flange - y, fillet), (web - x, y - flange, fillet), (x, y - flange, 0), (x, y, 0), (-x, y, 0));
    }

    // The upper flange reaches to the left of the web, the lower one to the right; the width is that of one flange, web included.
    private static ImmutableArray<Vector2> ZShape(double width, double depth, double web, double flange, double fillet)
    {
        var (x, y) = (width - (web / 2), depth / 2);
        var w = web / 2;
        return RoundedLoop.Of(
            (-w, -y, 0), (x, -y, 0), (x, flange - y, 0), (w, flange - y, fillet), (w, y, 0), (-x, y, 0), (-x, y - flange, 0), (-w, y - flange, fillet));
    }

    // Open to the right, with lips; the outer corners are rounded about the same centres as the inner ones.
    private static ImmutableArray<Vector2> CShape(double width, double depth, double wall, double girth, double inner)
    {
        var (x, y) = (width / 2, depth / 2);
        var outer = inner > 0 ? inner + wall : 0;
        return RoundedLoop.Of(
            (-x, -y, outer), (x, -y, outer), (x, girth - y, 0), (x - wall, girth - y, 0), (x - wall, wall - y, inner), (wall - x, wall - y, inner),
            (wall - x, y - wall, inner), (x - wall, y - wall, inner), (x - wall, y - girth, 0), (x, y - girth, 0), (x, y, outer), (-x, y, outer));
    }
}
