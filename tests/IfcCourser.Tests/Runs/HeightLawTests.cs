using CsCheck;
using IfcCourser.Geometry;
using IfcCourser.Tests.Support;

namespace IfcCourser.Tests.Runs;

/// <summary>The laws of the layout over stepped slabs and under head gaps.</summary>
public sealed class HeightLawTests
{
    [Fact]
    public void Every_layout_over_a_stepped_slab_keeps_the_laws() => Gen.Select(WallGen.AloneOrBox, Gen.Int[0, 300], Gen.Int[0, 4]).ForAll(
        (given, step, partition) =>
        {
            var model = given.Model with
            {
                Walls =
                [
                    .. given.Model.Walls.Select((wall, i) => wall with
                    {
                        Frame = i == 1 ? wall.Frame with { Origin = wall.Frame.Origin + new Vector3(0, 0, step) } : wall.Frame,
                        LoadBearing = i != partition,
                    }),
                ],
            };
            Assert.Empty(LayoutLaws.Breaches(WallSketch.LayOut(model, given.Rules)));
        },
        cases: 40);
}
