using IfcCourser.Catalogs;
using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Runs;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Tests.Walls;

/// <summary>
/// A wall 240 thick and 2500 high around a radius of 80000 on its centre line, 8000 long there: a tenth of a radian. Joints of 0
/// to 3 mm open by 240 x 627 / 80000 = 1.881 mm from face to face: on the centre line 0.9405 to 2.0595 mm may be laid.
/// </summary>
public sealed class CurvedWallTests
{
    private const double Radius = 80000;

    /// <summary>The plan runs counter-clockwise about (1000, 2000); the placement's x axis says which way the run goes.</summary>
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_wide_curve_is_unrolled_on_its_centre_line(bool turnsLeft)
    {
        var wall = Assert.Single(Read(turnsLeft).Walls);

        Assert.Contains(wall.Findings, finding => finding.Code == FindingCodes.CurveUnrolled);
        Assert.Equal(240, wall.Frame.Thickness.Mm, 1e-3);
        Assert.Equal(8000, wall.Frame.Length.Mm, 0.01);
        Assert.Equal([(0, 0), (8000, 0), (8000, 2500), (0, 2500)], WallReaderTests.Points(wall, round: 1));
        Assert.Equal(1, wall.Body.NetVolume / (((8 * 2.5) - (1 * 1.2)) * 0.24), 1e-4);
        var curve = wall.Frame.Curve!;
        // The arc rises 100 mm over its chord; corners rounded to a micrometre tell the radius to 80000 x 0.001 / 100, some mm.
        Assert.True((curve.Centre - new Vector2(1000, 2000)).Length < 3);
        Assert.Equal(Radius, curve.Radius.Mm, 3.0);

        // Start and end of both faces lie where the plan was drawn.
        var (start, end) = turnsLeft ? (0.0, 0.1) : (0.1, 0.0);
        var left = turnsLeft ? Radius - 120 : Radius + 120;
        AssertNear(At(left, start), wall.Frame.PointAt(Length.Zero, Length.Zero, Length.Zero).Plan);
        AssertNear(At(left, end), wall.Frame.PointAt(wall.Frame.Length, Length.Zero, Length.Zero).Plan);
        AssertNear(At((2 * Radius) - left, end), wall.Frame.PointAt(wall.Frame.Length, wall.Frame.Thickness, Length.Zero).Plan);

        // The window's middle stands 2500 along a run that turns left. Its straight jambs, 1000 apart, take most of the inner face:
        // 80000 x atan(500 / 79880) = 500.74 to both sides.
        var window = Assert.Single(wall.Openings).Model;
        var middle = turnsLeft ? 2500 : 5500;
        Assert.Equal((middle - 500.74, middle + 500.74), (window.Left.Mm, window.Right.Mm), (a, b) => Math.Abs(a.Item1 - b.Item1) < 0.1 && Math.Abs(a.Item2 - b.Item2) < 0.1);
        Assert.Equal((900, 2100), (window.Bottom.Mm, window.Top.Mm));
    }

    [Fact]
    public void Its_joints_stay_within_their_limits_at_both_faces()
    {
        var model = Read(turnsLeft: true);
        var rules = LayoutRules.For(BuiltInRuleSets.Get("eu"), BuiltInCatalogs.Get("aac-mm"), OpeningPolicy.Keep);
        var wall = LayoutBuilder.Build(model, rules, new ModelFacts("sketch.ifc", new string('0', 64), "IFC4", 1, null, null, "2026-01-01")).Walls[0];
        var joints = wall.Courses
            .SelectMany(course => course.Pieces.Zip(course.Pieces.Skip(1), (piece, next) => (Joint: next.From - piece.To, Pitch: piece.To - piece.From + next.From - piece.To)))
            .Where(joint => joint.Joint < Length.FromMm(50))
            .ToList();
        Assert.True(joints.Count > 100);
        Assert.All(joints, joint =>
        {
            var opens = 240 * joint.Pitch.Mm / Radius / 2;
            Assert.InRange(joint.Joint.Mm, opens - 1e-6, 3 - opens + 1e-6);
        });
    }

    [Fact]
    public void It_does_not_meet_its_neighbours()
    {
        var text = Text(turnsLeft: true);
        text.Straight("B", 3000, 240, 2500, 1000 + Radius, 2000 - 240, along: [0, -1, 0]);
        var model = text.Walls();
        Assert.Equal(2, model.Walls.Length);
        Assert.Empty(model.Junctions);
    }

    private static WallModel Read(bool turnsLeft) => Text(turnsLeft).Walls();

    private static ModelText Text(bool turnsLeft)
    {
        var text = new ModelText();
        string P(double radius, double angle) => At(radius, angle) is var p ? FormattableString.Invariant($"({p.X:R},{p.Y:R})") : string.Empty;
        const double Outer = Radius + 120;
        const double Inner = Radius - 120;
        var points = text.Add($"IFCCARTESIANPOINTLIST2D(({P(Outer, 0)},{P(Outer, 0.05)},{P(Outer, 0.1)},{P(Inner, 0.1)},{P(Inner, 0.05)},{P(Inner, 0)}))");
        var curve = text.Add($"IFCINDEXEDPOLYCURVE(#{points},(IFCARCINDEX((1,2,3)),IFCLINEINDEX((3,4)),IFCARCINDEX((4,5,6)),IFCLINEINDEX((6,1))),$)");
        var profile = text.Add($"IFCARBITRARYCLOSEDPROFILEDEF(.AREA.,$,#{curve})");
        // The profile is drawn in the model's axes, turned back by the wall's placement.
        var back = text.Axes(0, 0, 0, turnsLeft ? [0, -1, 0] : [0, 1, 0]);
        var wall = text.Wall("A", text.Add($"IFCEXTRUDEDAREASOLID(#{profile},#{back},#{text.Direction(0, 0, 1)},2500.)"), along: turnsLeft ? [0, 1, 0] : [0, -1, 0]);
        // A window about the middle of its stretch, its jambs square to the run there.
        var (middle, direction) = (At(Radius, 2500 / Radius), 2500 / Radius);
        text.Opening(wall, "W", text.Box(-500, -300, 900, 500, 300, 2100), middle.X, middle.Y, 0, [-Math.Sin(direction), Math.Cos(direction), 0], "IFCWINDOW");
        return text;
    }

    private static Vector2 At(double radius, double angle) => new(1000 + (radius * Math.Cos(angle)), 2000 + (radius * Math.Sin(angle)));

    private static void AssertNear(Vector2 expected, Vector2 actual) => Assert.True((expected - actual).Length < 0.1, $"{expected} against {actual}");
}
