using System.Collections.Immutable;
using IfcCourser.Catalogs;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Tests.Support;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Tests.SettingOut;

/// <summary>Boxes of four walls, 160 by 112 in of 8 in blocks, set out.</summary>
public sealed class SetOutTests
{
    private const double A = 159.875 * 25.4;
    private const double B = 111.875 * 25.4;

    private static readonly LayoutRules _us = LayoutRules.For(BuiltInRuleSets.Get("us"), BuiltInCatalogs.Get("aac-in"), OpeningPolicy.Move);

    private static WallModel Box => WallSketch.Box(Length.FromMm(A), Length.FromMm(B), Length.FromInches(96.375), Length.FromInches(7.875));

    [Fact]
    public void Every_core_is_set_out_once_at_its_own_place()
    {
        var layout = LayOut(Box);
        var cores = layout.Walls.SelectMany(wall => wall.Cores.Select(core => (wall.Identity.GlobalId, core.Id))).ToList();
        var bars = Assert.Single(layout.SetOut.Storeys).Bars;
        Assert.NotEmpty(cores);
        Assert.Equal(cores.Order(), bars.Select(bar => (bar.Wall, bar.Core)).Order());
        Assert.All(bars, bar => Assert.Equal(CoreOf(layout, bar).Point, bar.Point.Plan));
        Assert.Equal(Enumerable.Range(1, bars.Length), bars.Select(bar => bar.Number));
    }

    /// <summary>Of a box that starts at the origin, x and y are the model's own; a walk around it is no longer than its four sides.</summary>
    [Fact]
    public void Bars_are_measured_from_the_outer_faces_and_numbered_around_the_box()
    {
        var layout = LayOut(Box);
        var storey = layout.SetOut.Storeys[0];
        Assert.All(storey.Bars, bar => AssertAt(bar, bar.Point.X, bar.Point.Y));
        var walk = storey.Bars.Zip(storey.Bars.Skip(1), (from, to) => (to.Point - from.Point).Length).Sum();
        Assert.InRange(walk, A + B, 2 * (A + B));
        Assert.Equal(4, storey.Bars.Count(bar => CoreOf(layout, bar).SharedWith.Length == 1));
        Assert.True((storey.Bars[0].Point.Plan - default(Vector2)).Length < 200, "the walk starts at the origin");
    }

    [Fact]
    public void Each_bar_names_the_ends_of_the_block_that_stands_over_it()
    {
        var layout = LayOut(Box);
        Assert.All(layout.SetOut.Storeys[0].Bars, bar =>
        {
            var piece = layout.Walls.Single(wall => wall.Identity.GlobalId == bar.Block!.Wall).Courses[0].Pieces
                .Single(piece => piece.Length == bar.Block!.Before + bar.Block.After && Math.Abs(Place(layout, bar.Block.Wall, piece.From + bar.Block.Before, bar.Point.Plan)) < 0.01);
            Assert.True(bar.Block!.Wall == bar.Wall ? piece.Cores.Contains(bar.Core, StringComparer.Ordinal) : CoreOf(layout, bar).SharedWith.Contains(bar.Block.Wall, StringComparer.Ordinal));
        });
    }

    [Fact]
    public void Control_points_are_the_four_outer_corners_with_equal_diagonals()
    {
        var storey = LayOut(Box).SetOut.Storeys[0];
        Assert.Equal(
            [(0, 0), (0, B), (A, 0), (A, B)],
            storey.ControlPoints.Where(point => point.Kind == ControlPointKind.WallCorner).Select(point => (point.X.Mm, point.Y.Mm)).Order());
        Assert.Equal(2, storey.Diagonals.Length);
        Assert.All(storey.Diagonals, diagonal => Assert.Equal(Math.Sqrt((A * A) + (B * B)), diagonal.Length.Mm, 0.01));
        Assert.All(storey.ControlPoints, point => Assert.True(point.Number > storey.Bars.Length));
    }

    [Fact]
    public void A_slab_under_the_bars_gives_the_edges_and_zero()
    {
        var storey = LayOut(Box with { Site = Site.None with { Slabs = [Slab(-100, -50, A + 100, B + 50)] } }).SetOut.Storeys[0];
        Assert.Equal(ControlLineKind.SlabEdge, Assert.Single(storey.Outlines).Kind);
        Assert.Equal(new Vector2(-100, -50), storey.Axes.Origin);
        Assert.All(storey.Bars, bar => AssertAt(bar, bar.Point.X + 100, bar.Point.Y + 50));
        Assert.Equal(4, storey.ControlPoints.Count(point => point.Kind == ControlPointKind.SlabCorner));
        Assert.DoesNotContain(storey.Findings, finding => finding.Code.Id == "slab-outline-assumed");
    }

    [Theory]
    [InlineData(-1, -1)] // none
    [InlineData(0, 2000)] // holds the bars of one half only
    public void Where_bars_stand_in_no_slab_the_outer_faces_are_taken_and_said(double from, double to)
    {
        ImmutableArray<SlabFootprint> slabs = to > 0 ? [Slab(from, 0, to, B)] : [];
        var layout = LayOut(Box with { Site = Site.None with { Slabs = slabs } });
        Assert.Equal(ControlLineKind.WallFace, Assert.Single(layout.SetOut.Storeys[0].Outlines).Kind);
        Assert.Contains(layout.Findings, finding => finding.Code.Id == "slab-outline-assumed");
    }

    [Fact]
    public void Grid_lines_come_before_the_slabs_edges()
    {
        ImmutableArray<GridLine> grid = [new("1", 'U', new(500, -900), new(500, 9000)), new("2", 'U', new(3000, -900), new(3000, 9000)), new("A", 'V', new(-900, 700), new(9000, 700))];
        var storey = LayOut(Box with { Site = Site.None with { Grid = grid, Slabs = [Slab(0, 0, A, B)] } }).SetOut.Storeys[0];
        Assert.Equal((new Vector2(500, 700), "1", "A"), (storey.Axes.Origin, storey.Axes.XFrom.Tag, storey.Axes.YFrom.Tag));
        Assert.Equal("1/A 2/A", string.Join(' ', storey.ControlPoints.Where(point => point.Kind == ControlPointKind.GridCrossing).Select(point => point.Tag)));
        Assert.Contains(storey.CheckLines, check => check is { Line.Kind: ControlLineKind.SlabEdge, IsUpright: true } && check.At == Length.FromMm(-500));
    }

    /// <summary>Common practice, no source: corner bars about 4 in from the edges, others about 5 in. A slab 4 in further out is worth a word.</summary>
    [Fact]
    public void Bars_far_from_the_slabs_edges_are_named()
    {
        const double Out = 4 * 25.4;
        var near = LayOut(Box with { Site = Site.None with { Slabs = [Slab(0, 0, A, B)] } });
        var far = LayOut(Box with { Site = Site.None with { Slabs = [Slab(-Out, -Out, A + Out, B + Out)] } });
        Assert.DoesNotContain(near.Findings, finding => finding.Code.Id == "bar-off-edge");
        var findings = far.Findings.Where(finding => finding.Code.Id == "bar-off-edge").Select(finding => finding.Message).ToList();
        Assert.Equal(2, findings.Count);
        Assert.All(findings, message => Assert.Contains("7 15/16\"", message, StringComparison.Ordinal));
    }

    /// <summary>Turned by 30 degrees about any point, all is measured as before.</summary>
    [Fact]
    public void A_turned_building_is_measured_alike()
    {
        var (sin, cos) = Math.SinCos(Math.PI / 6);
        var box = Box;
        Vector2 Turned(Vector2 v) => new((v.X * cos) - (v.Y * sin), (v.X * sin) + (v.Y * cos));
        var turned = box with
        {
            Walls =
            [
                .. box.Walls.Select(wall => wall with
                {
                    Frame = wall.Frame with
                    {
                        Origin = new Vector3(7e6 + Turned(wall.Frame.Origin.Plan).X, -3e6 + Turned(wall.Frame.Origin.Plan).Y, 0),
                        Direction = Turned(wall.Frame.Direction),
                    },
                }),
            ],
        };
        var (plain, moved) = (LayOut(box).SetOut.Storeys[0], LayOut(turned).SetOut.Storeys[0]);
        Assert.Equal(plain.Bars.Length, moved.Bars.Length);
        Assert.All(plain.Bars.Zip(moved.Bars), pair =>
        {
            Assert.Equal((pair.First.Wall, pair.First.Core), (pair.Second.Wall, pair.Second.Core));
            Assert.Equal(pair.First.X.Mm, pair.Second.X.Mm, 0.02);
            Assert.Equal(pair.First.Y.Mm, pair.Second.Y.Mm, 0.02);
            Assert.Null(pair.Second.OnFace);
        });
    }

    [Theory]
    [InlineData("1-3, 5, 8, 9", 9, 8, 5, 3, 2, 1)]
    [InlineData("4", 4, 4)]
    public void Numbers_are_written_as_ranges(string text, params int[] numbers) => Assert.Equal(text, NumberRanges.Of(numbers));

    private static Layout LayOut(WallModel model) => WallSketch.LayOut(model, _us);

    private static SlabFootprint Slab(double x0, double y0, double x1, double y1) =>
        new("slab", "Slab", 0, Region.Of(new Rect(x0, y0, x1, y1)));

    private static Core CoreOf(Layout layout, BarSetOut bar) =>
        layout.Walls.Single(wall => wall.Identity.GlobalId == bar.Wall).Cores.Single(core => core.Id == bar.Core);

    private static void AssertAt(BarSetOut bar, double x, double y)
    {
        const double Rounding = 0.005; // of coordinates of the model
        Assert.InRange(bar.X.Mm, x - Rounding, x + Rounding);
        Assert.InRange(bar.Y.Mm, y - Rounding, y + Rounding);
    }

    /// <summary>How far a place along a wall lies from a point, measured along the wall.</summary>
    private static double Place(Layout layout, string wall, Length s, Vector2 point)
    {
        var frame = layout.Walls.Single(laid => laid.Identity.GlobalId == wall).Frame;
        return s.Mm - Vector2.Dot(point - frame.Origin.Plan, frame.Direction);
    }
}
