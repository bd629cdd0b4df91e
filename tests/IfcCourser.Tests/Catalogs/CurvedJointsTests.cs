using IfcCourser.Catalogs;
using IfcCourser.Units;

namespace IfcCourser.Tests.Catalogs;

/// <summary>Worked by hand from the catalogs' joints: octametric units of 240 with joints of 8 to 12 mm, cut to whole millimetres.</summary>
public sealed class CurvedJointsTests
{
    /// <summary>115 thick: (240 + 12) x 115 / (12 - 8 - 1) = 9660 mm.</summary>
    [Fact]
    public void The_least_radius_leaves_the_play_of_a_saw_cut()
    {
        var catalog = BuiltInCatalogs.Get("octametric");
        var thickness = Length.FromMm(115);
        var least = CurvedJoints.LeastRadius(catalog, catalog.UnitLength, thickness);
        Assert.Equal(Length.FromMm(9660), least);
        Assert.NotNull(CurvedJoints.On(catalog, least!.Value, thickness));
        Assert.Null(CurvedJoints.On(catalog, least.Value - Length.FromMm(10), thickness));
    }

    /// <summary>On a radius of 14490 a joint opens by 252 x 115 / 14490 = 2 mm: 9 to 11 mm on the centre line.</summary>
    [Fact]
    public void Joints_on_the_centre_line_leave_room_to_both_faces()
    {
        var joints = CurvedJoints.On(BuiltInCatalogs.Get("octametric"), Length.FromMm(14490), Length.FromMm(115));
        Assert.Equal(new LengthRange(Length.FromMm(9), Length.FromMm(10), Length.FromMm(11)), joints);
    }

    [Fact]
    public void Joints_that_only_take_up_the_saws_grid_follow_no_curve() =>
        Assert.Null(CurvedJoints.LeastRadius(BuiltInCatalogs.Get("aac-in"), Length.FromInches(24), Length.FromInches(8)));
}
