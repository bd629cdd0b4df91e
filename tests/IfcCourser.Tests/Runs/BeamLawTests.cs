using CsCheck;
using IfcCourser.Rules;
using IfcCourser.Tests.Support;
using IfcCourser.Units;

namespace IfcCourser.Tests.Runs;

/// <summary>The laws of bond beams on generated walls and boxes, one wall of which may be higher than the others.</summary>
public sealed class BeamLawTests
{
    private static readonly BondBeamRule _us = BuiltInRuleSets.Get("us").BondBeams!;

    [Fact]
    public void Every_layout_keeps_the_laws_of_bond_beams() => Gen.Select(WallGen.AloneOrBox, Gen.Int[400, 3000], Gen.Int[0, 1200], Gen.Int[0, 3], Gen.Bool).ForAll(
        (given, spacing, higher, partition, isRaked) =>
        {
            var rules = given.Rules with { Set = given.Rules.Set with { BondBeams = _us with { LargestSpacing = Length.FromMm(spacing), Tops = isRaked ? BeamedTops.Raked : BeamedTops.Level } } };
            var model = given.Model with
            {
                Walls =
                [
                    .. given.Model.Walls.Select((wall, i) => wall with
                    {
                        LoadBearing = i == 0 && partition == 0 ? false : null,
                        Outline = i == 2 ? WallSketch.Rectangle(wall.Frame.Length, wall.Outline.Max(point => point.Z) + Length.FromMm(higher)) : wall.Outline,
                    }),
                ],
            };
            var layout = WallSketch.LayOut(model, rules);
            Assert.Empty(BeamLaws.Breaches(layout));
            Assert.Empty(LayoutLaws.Breaches(layout));
        },
        cases: 25);
}
