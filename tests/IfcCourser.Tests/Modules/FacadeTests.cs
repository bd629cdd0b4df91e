using System.Collections.Immutable;
using IfcCourser.Catalogs;
using IfcCourser.Geometry;
using IfcCourser.Modules;
using IfcCourser.Rules;
using IfcCourser.Tests.Support;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Tests.Modules;

public sealed class FacadeTests
{
    /// <summary>
    /// A window at 989 mm of a wall needs 10 mm to stand on its lines of 125 mm. The one in line over it, in a wall that starts
    /// 200 mm further out, would need 60 mm on that wall's own lines: on the lower wall's it moves the same 10 mm.
    /// </summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Stacked_openings_of_two_storeys_keep_their_jambs_in_line(bool mirrored)
    {
        var lower = Storey(0, 0, (989, 1990));
        var upper = mirrored ? Mirrored(Storey(3000, -200, (1189, 2190))) : Storey(3000, -200, (1189, 2190));
        var placed = Settled(_stacked with { Set = _stacked.Set with { Datum = Datum.Start } }, lower, upper);

        var below = placed[0].Openings[0].Placed;
        var above = InModel(upper, placed[1].Openings[0].Placed);
        Assert.Equal((below.Left.Mm, below.Right.Mm), above);
        Assert.All(placed.SelectMany(wall => wall.Openings), opening => Assert.True(opening.OnModule));
        Assert.Equal(999, below.Left.Mm);
    }

    /// <summary>The upper wall's own start is its datum: its window, 50 mm from a line there, does not stay over the one below.</summary>
    [Fact]
    public void Without_the_rule_each_wall_has_lines_of_its_own()
    {
        var lower = Storey(0, 0, (999, 2000));
        var upper = Storey(3000, -200, (1199, 2200));
        var placed = Settled(_stacked with { Set = _stacked.Set with { StackOpenings = false, Datum = Datum.Start } }, lower, upper);
        Assert.Equal((0d, 50d), (Shift(placed[0]), Shift(placed[1])));
    }

    /// <summary>Two windows in line need 20 mm each to 999 mm; one of 900 mm beside them 1 mm to the left for one of its jambs.</summary>
    [Fact]
    public void Windows_above_each_other_in_one_wall_move_as_one()
    {
        var wall = Storey(0, 0, (979, 1980), (979, 1980)) with { Outline = WallSketch.Rectangle(Length.FromMm(6000), Length.FromMm(6000)) };
        wall = wall with { Openings = [wall.Openings[0], WallSketch.Opening(1, 979, 1980, 3769, 5020), WallSketch.Opening(2, 3000, 3900, 769, 2020)] };
        var start = _stacked with { Set = _stacked.Set with { Datum = Datum.Start } };
        var placed = Settled(start, wall)[0].Openings;
        Assert.Equal([20d, 20, -1], placed.Select(opening => (opening.Placed.Left - opening.Design.Left).Mm));
    }

    /// <summary>Walls that stand beside, behind, or two storeys apart without one between, are facades of their own.</summary>
    [Theory]
    [InlineData(0, 3000, 0, 1)]
    [InlineData(0, 3300, 0, 1)]
    [InlineData(0, 4100, 0, 2)]
    [InlineData(0, 0, 0, 2)]
    [InlineData(6001, 3000, 0, 2)]
    [InlineData(0, 3000, 240, 2)]
    [InlineData(0, 3000, 100, 1)]
    public void Walls_that_stand_on_each_other_are_one_facade(double along, double up, double behind, int facades)
    {
        var other = Storey(up, along, (999, 2000));
        other = other with { Frame = other.Frame with { Origin = new Vector3(along, behind, up) } };
        Assert.Equal(facades, Facade.Stacked([Storey(0, 0, (999, 2000)), other]).Length);
    }

    /// <summary>
    /// On a grid of 125 mm from (30, 40): a wall that starts at x = 1000 has its first line at 30 - 1000 = -970, or 30 mm; one
    /// that runs back from x = 7000 sees starts of masonry as ends: 7000 - 30 + 1 = 6971, or 96 mm; one along y from y = 500 has it at 40 - 500 = -460, or 40 mm.
    /// </summary>
    [Theory]
    [InlineData(1000, 0, 1, 0, 30)]
    [InlineData(7000, 0, -1, 0, 96)]
    [InlineData(0, 500, 0, 1, 40)]
    public void The_building_grid_gives_all_walls_the_same_lines(double x, double y, double dx, double dy, double start)
    {
        var wall = Storey(0, 0);
        wall = wall with { Frame = wall.Frame with { Origin = new Vector3(x, y, 0), Direction = new Vector2(dx, dy) } };
        var rules = _stacked with { Set = _stacked.Set with { Datum = Datum.Grid, GridOrigin = new GridOrigin(Length.FromMm(30), Length.FromMm(40)) } };
        Assert.Equal(start, Settled(rules, wall)[0].Lines.Start.Mm);
    }

    private static readonly LayoutRules _stacked = LayoutRules.For(
        BuiltInRuleSets.Get("eu") with { StackOpenings = true }, BuiltInCatalogs.Get("aac-mm"), OpeningPolicy.Move);

    /// <summary>A wall of 6 m and eleven courses along x.</summary>
    private static Wall Storey(double up, double along, params (double Left, double Right)[] openings)
    {
        var wall = WallSketch.Straight(
            Length.FromMm(6000), Length.FromMm(2769), Length.FromMm(240), [.. openings.Select(o => (o.Left, o.Right, 769d, 2020d))]);
        return wall with { Frame = wall.Frame with { Origin = new Vector3(along, 0, up) } };
    }

    /// <summary>The same wall drawn from its other end: its other face is the left one.</summary>
    private static Wall Mirrored(Wall wall)
    {
        var (frame, length) = (wall.Frame, wall.Frame.Length);
        return wall with
        {
            Frame = frame with { Origin = new Vector3(frame.Origin.X + length.Mm, frame.Origin.Y - frame.Thickness.Mm, frame.Origin.Z), Direction = new Vector2(-1, 0) },
            Openings = [.. wall.Openings.Select(opening => opening with { Model = opening.Model with { Left = length - opening.Model.Right, Right = length - opening.Model.Left } })],
        };
    }

    private static (double Left, double Right) InModel(Wall wall, ElevationRect rect)
    {
        double X(Length s) => wall.Frame.Origin.X + (s.Mm * wall.Frame.Direction.X);
        return (Math.Min(X(rect.Left), X(rect.Right)), Math.Max(X(rect.Left), X(rect.Right)));
    }

    private static double Shift(PlacedOpenings wall) => (wall.Openings[0].Placed.Left - wall.Openings[0].Design.Left).Mm;

    private static ImmutableArray<PlacedOpenings> Settled(LayoutRules rules, params Wall[] walls) => OpeningPlacement.Settle(
        [.. walls.Select(wall => (wall, Enumerable.Range(0, 11).Select(i => new Interval(Length.FromMm(20 + (250 * i)), Length.FromMm(269 + (250 * i)))).ToImmutableArray()))],
        rules);
}
