using CsCheck;
using IfcCourser.Reinforcement;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Tests.Reinforcement;

public sealed class BeamLapsTests
{
    /// <summary>
    /// Worked by hand: 479 5/8 in less 2 in at each end is 475 5/8; three bars of at most 240 in with laps of 20 in cover it in pitches
    /// of (475 5/8 - 20) / 3 = 151 7/8; the second bar's laps lie half a pitch, 75 15/16 in, before.
    /// </summary>
    [Fact]
    public void Bars_are_equal_and_laps_of_neighbours_lie_half_a_pitch_apart()
    {
        var laps = BeamLaps.Of(Length.Zero, Inches(479.625), new BeamBars(2, BarSizes.Find("No. 4")!, "steel", Inches(20), Inches(240), new BeamCover(Inches(2), Inches(0.5), Inches(1.5))));
        Assert.Equal(
            [(1, 153.875), (1, 305.75), (2, 77.9375), (2, 229.8125), (2, 381.6875)],
            laps.Select(lap => (lap.Bar, lap.From.Inches)));
        Assert.All(laps, lap => Assert.Equal(Inches(20), lap.To - lap.From));
    }

    [Fact]
    public void A_bar_of_the_stock_length_has_no_lap() =>
        Assert.Empty(BeamLaps.Of(Inches(4), Inches(248), new BeamBars(2, BarSizes.Find("No. 4")!, "steel", Inches(20), Inches(240), new BeamCover(Inches(2), Inches(0.5), Inches(1.5)))));

    /// <summary>No bar is longer than the stock, none has a lap more than the length asks for, and no lap lies beside one of the next bar.</summary>
    [Fact]
    public void No_bar_is_too_long_and_no_laps_lie_side_by_side() => Gen
        .Select(Gen.Int[1000, 60000], Gen.Int[200, 900], Gen.Int[0, 5000], Gen.Int[1, 4])
        .ForAll((length, lap, more, count) =>
        {
            var bars = new BeamBars(count, BarSizes.Find("12 mm")!, "steel", Length.FromMm(lap), Length.FromMm((5 * lap) + more), new BeamCover(Length.FromMm(50), Length.FromMm(20), Length.FromMm(30)));
            var laps = BeamLaps.Of(Length.Zero, Length.FromMm(length), bars);
            for (var bar = 1; bar <= count; bar++)
            {
                var own = laps.Where(l => l.Bar == bar).ToList();
                var ends = own.Select(l => l.To).Append(Length.FromMm(length - 50));
                Assert.All(own.Select(l => l.From).Prepend(Length.FromMm(50)).Zip(ends), piece => Assert.True(piece.Second - piece.First <= bars.Stock + Length.FromMm(0.001)));
                Assert.True(own.Count <= Math.Ceiling((length - 100 - lap) / (double)(bars.Stock - bars.Lap).Mm), "too many laps");
            }

            Assert.All(laps, lap => Assert.DoesNotContain(laps, other => other.Bar == lap.Bar + 1 && other.From < lap.To && other.To > lap.From));
        });

    private static Length Inches(double inches) => Length.FromInches(inches);
}
