using IfcCourser.Catalogs;
using IfcCourser.Modules;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Tests.Modules;

public sealed class PierLengthsTests
{
    /// <summary>
    /// 240 mm units, joints of 10 mm, pieces of 115 mm or more, lap 95.2 mm. One unit: to 240. Two pieces a course, their joint
    /// shifted by 95.2: from 2 x 115 + 10 + 95.2 = 335.2 to 2 x 240 + 10 - 95.2 = 394.8. Two pieces over three, whose two joints
    /// lap the other's one: from 2 x 115 + 10 + 2 x 95.2 = 430.4. Worked by hand.
    /// </summary>
    [Fact]
    public void Octametric_piers_are_bonded_between_these_lengths()
    {
        var bonded = PierLengths.Nominal(Rules("octametric", "de"), Length.Zero).Bonded;
        Assert.Equal([(115, 240), (335.2, 394.8)], bonded.Take(2).Select(range => (range.From.Mm, range.To.Mm)));
        Assert.Equal(430.4, bonded[2].From.Mm);
    }

    /// <summary>624 mm units, pieces of 100 mm, lap 99.6 mm: two pieces from 2 x 100 + 1 + 99.6 = 300.6 on: every pier from 100 mm is bonded.</summary>
    [Fact]
    public void Long_units_bond_every_pier()
    {
        var bonded = PierLengths.Nominal(Rules("aac-mm", "eu"), Length.Zero).Bonded[0];
        Assert.Equal(100, bonded.From.Mm);
        Assert.True(bonded.To >= Length.FromMm(1500));
    }

    /// <summary>8 x 16 in blocks, halves of 7 5/8 in, lap 4 in: 15 5/8 in, then two pieces from 2 x 7 5/8 + 3/8 + 4 = 19 5/8 in.</summary>
    [Theory]
    [InlineData(15.625, true)]
    [InlineData(16, false)]
    [InlineData(19.375, false)]
    [InlineData(19.625, true)]
    [InlineData(23.625, true)]
    public void Block_piers_a_little_longer_than_a_unit_are_not_bonded(double inches, bool bonded) =>
        Assert.Equal(bonded, PierLengths.Nominal(Rules("block-in", "us"), Length.Zero).Contains(Length.FromInches(inches)));

    [Fact]
    public void The_nearest_lengths_that_work_are_named()
    {
        var (under, over) = PierLengths.Nominal(Rules("octametric", "de"), Length.Zero).Nearest(Length.FromMm(300));
        Assert.Equal((240d, 335.2), (under!.Value.Mm, over!.Value.Mm));
    }

    /// <summary>Unit 24, least piece 10, lap 8, joint 2, all lengths in whole millimetres, against every pair of courses; one may start behind the other, as at a corner.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(9)]
    [InlineData(14)]
    [InlineData(26)]
    public void Lengths_are_those_of_all_pairs_of_courses(int shift)
    {
        var catalog = BuiltInCatalogs.Get("aac-mm") with
        {
            UnitLength = Length.FromMm(24),
            HeadJoint = new LengthRange(Length.FromMm(2), Length.FromMm(2), Length.FromMm(2)),
        };
        var rules = Rules("aac-mm", "eu") with { Catalog = catalog, MinPiece = Length.FromMm(10), MinOverlap = Length.FromMm(8) };
        var lengths = PierLengths.Nominal(rules, Length.FromMm(shift));
        Assert.All(Enumerable.Range(1, 72), length => Assert.Equal(IsBonded(length, shift), lengths.Contains(Length.FromMm(length))));
    }

    /// <summary>Tries every pair of courses: centres of joints from the pier's start, the second course's face among what the first laps.</summary>
    private static bool IsBonded(int length, int shift)
    {
        var second = Courses(shift, length).Select(joints => shift > 0 ? [shift - 1, .. joints] : joints).ToList();
        return Courses(0, length).Any(first => second.Any(other => first.All(a => other.All(b => Math.Abs(a - b) >= 8))));
    }

    private static IEnumerable<int[]> Courses(int from, int to)
    {
        if (to - from is >= 10 and <= 24)
        {
            yield return [];
        }

        for (var piece = 10; piece <= 24 && from + piece + 2 < to; piece++)
        {
            foreach (var rest in Courses(from + piece + 2, to))
            {
                yield return [from + piece + 1, .. rest];
            }
        }
    }

    private static LayoutRules Rules(string catalog, string rules) =>
        LayoutRules.For(BuiltInRuleSets.Get(rules), BuiltInCatalogs.Get(catalog), OpeningPolicy.Move);
}
