using System.Collections.Immutable;
using IfcCourser.Geometry;

namespace IfcCourser.Tests.Geometry;

public sealed class RowHullTests
{
    /// <summary>A U of 1000 x 800 with a notch of 400 x 600 from above, and a part of 300 x 800 at 1500: 1800 x 800 in all.</summary>
    [Fact]
    public void What_lies_between_left_and_right_is_filled()
    {
        ImmutableArray<Vector2> u = [new(0, 0), new(1000, 0), new(1000, 800), new(700, 800), new(700, 200), new(300, 200), new(300, 800), new(0, 800)];
        var region = Region.Of([u]).Union(Region.Of(new Rect(1500, 0, 1800, 800)));
        Assert.Equal([new(0, 0), new(1800, 0), new(1800, 800), new(0, 800)], RowHull.Of(region).Outline);
    }

    /// <summary>A gable of 2000 with eaves at 500 and its ridge at 1500 stays what it is; 100 wider on both sides it has 200 x 1500 more.</summary>
    [Fact]
    public void Slopes_stay_slopes_and_nothing_is_filled_above_them()
    {
        var gable = Region.Of([[new(0, 0), new(2000, 0), new(2000, 500), new(1000, 1500), new(0, 500)]]);
        Assert.Equal(gable.Outline, RowHull.Of(gable).Outline);
        Assert.Equal(gable.Area + (200 * 1500), RowHull.Of(gable, 100).Area, 1.0);
    }
}
