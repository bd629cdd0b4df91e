using System.Collections.Immutable;
using IfcCourser.Catalogs;
using IfcCourser.Comparing;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Tests.Support;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Tests.Comparing;

/// <summary>Three walls that don't meet; one thing changed in one of them must be found, and nothing in the others.</summary>
public sealed class LayoutComparisonTests
{
    private static readonly LayoutRules _rules = LayoutRules.For(BuiltInRuleSets.Get("eu"), BuiltInCatalogs.Get("aac-mm"), OpeningPolicy.Keep);

    private static readonly ImmutableArray<Wall> _walls = [Sketch(0), Sketch(1), Sketch(2)];

    [Fact]
    public void A_new_export_with_other_ids_numbers_and_order_changes_nothing()
    {
        var exported = _walls.Reverse().Select((wall, i) => Placed(wall, 0.02) with
        {
            Identity = wall.Identity with { GlobalId = $"N{i}", StepId = 900 + i },
            Openings = [.. wall.Openings.Select(opening => opening with { GlobalId = $"NO{i}" })],
        });

        Assert.True(Compared(_walls, [.. exported]).IsSame);
    }

    [Fact]
    public void Walls_come_and_go()
    {
        var comparison = Compared([_walls[0], _walls[1]], [_walls[1], _walls[2]]);

        Assert.Equal(["W0"], comparison.Removed.Select(wall => wall.GlobalId), StringComparer.Ordinal);
        Assert.Equal(["W2"], comparison.Added.Select(wall => wall.GlobalId), StringComparer.Ordinal);
        Assert.Empty(comparison.Changed);
    }

    [Fact]
    public void A_wall_is_moved() => AssertChanged(wall => Placed(wall, 500), "moved");

    [Fact]
    public void A_wall_is_renamed() => AssertChanged(wall => wall with { Identity = wall.Identity with { Name = "other" } }, "renamed");

    [Fact]
    public void A_wall_is_on_another_storey() => AssertChanged(wall => wall with { Identity = wall.Identity with { Storey = "Attic" } }, "storey");

    [Fact]
    public void An_opening_is_moved() => AssertChanged(
        wall => wall with { Openings = [wall.Openings[0] with { Model = wall.Openings[0].Model.ShiftedBy(Length.FromMm(500), Length.Zero) }] },
        "opening-moved", "pieces", "lintels");

    [Fact]
    public void An_opening_is_removed() => AssertChanged(wall => wall with { Openings = [] }, "opening-removed", "pieces", "lintels");

    [Fact]
    public void An_opening_is_added() => AssertChanged(
        wall => wall with { Openings = [.. wall.Openings, WallSketch.Opening(7, 4000, 4500, 750, 1500)] }, "opening-added", "pieces", "lintels");

    [Fact]
    public void A_wall_is_two_courses_higher() => AssertChanged(
        wall => wall with { Outline = WallSketch.Rectangle(wall.Frame.Length, Length.FromMm(3020)) }, "outline", "pieces");

    [Fact]
    public void A_wall_is_thicker() => AssertChanged(
        wall => wall with { Frame = wall.Frame with { Thickness = Length.FromMm(300) } }, "thickness", "pieces", "lintels");

    [Fact]
    public void A_movement_joint_is_given() => AssertChanged(
        wall => wall with { MovementJoints = [Length.FromMm(4250)] }, "pieces", "movement-joints");

    [Fact]
    public void One_piece_is_another()
    {
        var older = LayOut(_walls);
        var (wall, course) = (older.Walls[1], older.Walls[1].Courses[2]);
        var other = course with { Pieces = course.Pieces.SetItem(1, course.Pieces[1] with { Product = "other" }) };
        var newer = older with { Walls = older.Walls.SetItem(1, wall with { Courses = wall.Courses.SetItem(2, other) }) };

        var change = Assert.Single(Assert.Single(LayoutComparison.Of(older, newer).Changed).Changes);

        Assert.Equal([new ElevationRect(course.Pieces[1].From, course.Pieces[1].To, course.Bottom, course.Top)], Assert.Single(LayoutComparison.Of(older, newer).Changed).Areas);
        Assert.Equal("pieces", change.What);
        Assert.StartsWith("courses 3: ", change.Detail, StringComparison.Ordinal);
    }

    [Fact]
    public void An_opening_that_only_the_layout_moves_is_told_apart_from_the_design()
    {
        var drawn = _walls.Select((wall, i) => i == 1 ? wall with { Openings = [WallSketch.Opening(0, 1030, 2030, 0, 2000)] } : wall).ToImmutableArray();
        var moving = LayoutRules.For(BuiltInRuleSets.Get("eu"), BuiltInCatalogs.Get("aac-mm"), OpeningPolicy.Move);

        var comparison = LayoutComparison.Of(LayOut(drawn), WallSketch.LayOut(Model(drawn), moving));

        Assert.Contains("opening-placed", Assert.Single(comparison.Changed, change => change.New.GlobalId == "W1").Changes.Select(change => change.What), StringComparer.Ordinal);
        Assert.All(comparison.Changed.SelectMany(wall => wall.Changes), change => Assert.NotEqual("opening-moved", change.What, StringComparer.Ordinal));
    }

    /// <summary>Wall 1 is changed; of the kinds named the first must be found, the others may follow from it.</summary>
    private static void AssertChanged(Func<Wall, Wall> change, params string[] what)
    {
        var comparison = Compared(_walls, _walls.SetItem(1, change(_walls[1])));

        Assert.Empty(comparison.Added);
        Assert.Empty(comparison.Removed);
        var changed = Assert.Single(comparison.Changed);
        Assert.Equal("W1", changed.Old.GlobalId);
        Assert.Contains(what[0], changed.Changes.Select(one => one.What), StringComparer.Ordinal);
        Assert.All(changed.Changes, one => Assert.Contains(one.What, what, StringComparer.Ordinal));
    }

    private static LayoutComparison Compared(ImmutableArray<Wall> older, ImmutableArray<Wall> newer) => LayoutComparison.Of(LayOut(older), LayOut(newer));

    private static Layout LayOut(ImmutableArray<Wall> walls) => WallSketch.LayOut(Model(walls), _rules);

    private static WallModel Model(ImmutableArray<Wall> walls) => new() { Walls = walls, Skipped = [], Junctions = [], Findings = [] };

    private static Wall Sketch(int number)
    {
        var wall = WallSketch.Straight(Length.FromMm(5999), Length.FromMm(2520), Length.FromMm(240), (1000, 2000, 0, 2000));
        return Placed(wall with { Identity = new WallIdentity($"W{number}", 10 + number, $"wall {number}", "Ground floor", null) }, number * 8000);
    }

    /// <summary>Moved along x; its body's box with it.</summary>
    private static Wall Placed(Wall wall, double mm)
    {
        var origin = wall.Frame.Origin + new Vector3(mm, 0, 0);
        return wall with
        {
            Frame = wall.Frame with { Origin = origin },
            Body = new BodyFacts(0, 0, origin, origin + new Vector3(wall.Frame.Length.Mm, wall.Frame.Thickness.Mm, 2520)),
        };
    }
}
