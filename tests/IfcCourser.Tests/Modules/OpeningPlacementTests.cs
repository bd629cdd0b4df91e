using IfcCourser.Geometry;
using IfcCourser.Modules;
using IfcCourser.Rules;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Tests.Modules;

public sealed class OpeningPlacementTests
{
    /// <summary>Voids drawn as leaves: DIN 18101 leaf 860 x 1985 in a DIN 18100 opening 885 x 2005 (from memory); 3'-0" x 7'-0" in 3'-4" x 7'-4" (trade text, read).</summary>
    [Theory]
    [InlineData("de", 860, 1985, 885, 2005)]
    [InlineData("us", 36 * 25.4, 84 * 25.4, 40 * 25.4, 88 * 25.4)]
    public void A_leaf_drawn_as_a_void_gets_its_frame(string rules, double width, double height, double wantedWidth, double wantedHeight)
    {
        var door = Opening(OpeningKind.Door, 1000, 0, width, height);
        var design = OpeningPlacement.Design(door, With(rules, VoidMeaning.Leaf));
        Assert.Equal((Mm(wantedWidth), Mm(wantedHeight)), (design.Width, design.Height));
        Assert.Equal(Mm(1000 - ((wantedWidth - width) / 2)), design.Left);
        Assert.Equal(door.Model, OpeningPlacement.Design(door, With(rules, VoidMeaning.Masonry)));
    }

    /// <summary>Bucks of 1 1/2 in and shims of 1/4 in, common practice: 48 x 48 in grow by 3 or 3 1/2 in.</summary>
    [Theory]
    [InlineData(VoidMeaning.Masonry, 48)]
    [InlineData(VoidMeaning.Rough, 51)]
    [InlineData(VoidMeaning.Frame, 51.5)]
    [InlineData(VoidMeaning.Leaf, 51.5)]
    public void Steps_inside_what_is_drawn_do_not_count(VoidMeaning meaning, double inches)
    {
        var design = OpeningPlacement.Design(Opening(OpeningKind.Window, 1000, 800, 48 * 25.4, 48 * 25.4), With("us", meaning));
        Assert.Equal((Mm(inches * 25.4), Mm(inches * 25.4)), (design.Width, design.Height));
    }

    [Fact]
    public void Voids_without_door_or_window_are_masonry_openings_and_a_sill_stops_at_the_foot()
    {
        var plain = Opening(OpeningKind.Void, 1000, 0, 1000, 1000);
        Assert.Equal(plain.Model, OpeningPlacement.Design(plain, With("us", VoidMeaning.Leaf)));
        Assert.Equal(Length.Zero, OpeningPlacement.Design(Opening(OpeningKind.Window, 1000, 0, 1000, 1000), With("us", VoidMeaning.Rough)).Bottom);
    }

    private static OpeningAllowances With(string rules, VoidMeaning meaning)
    {
        var allowances = BuiltInRuleSets.Get(rules).Allowances;
        return new OpeningAllowances(allowances.Door with { Void = meaning }, allowances.Window with { Void = meaning });
    }

    private static WallOpening Opening(OpeningKind kind, double left, double bottom, double width, double height) =>
        new("O", 1, null, kind, null, null, new ElevationRect(Mm(left), Mm(left + width), Mm(bottom), Mm(bottom + height)), null);

    private static Length Mm(double mm) => Length.FromModelMm(mm);
}
