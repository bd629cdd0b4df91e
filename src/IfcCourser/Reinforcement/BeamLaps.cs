using System.Collections.Immutable;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Reinforcement;

/// <summary>Where the bars of a bond beam go on in each other.</summary>
internal static class BeamLaps
{
    /// <summary>
    /// The fewest equal bars no longer than the stock: n bars cover n pitches and a lap. Every second bar of the beam starts with half
    /// a pitch, so that laps lie in the middle of their neighbours' bars.
    /// </summary>
    /// <param name="from">The beam's start.</param>
    /// <param name="to">The beam's end.</param>
    /// <param name="bars">Bars, lap and stock.</param>
    public static ImmutableArray<BarLap> Of(Length from, Length to, BeamBars bars)
    {
        var (start, length) = (from + bars.Cover.End, to - from - (bars.Cover.End * 2));
        if (length <= bars.Stock)
        {
            return [];
        }

        var pieces = (length - bars.Lap).CeilingTo(bars.Stock - bars.Lap) / (bars.Stock - bars.Lap);
        var pitch = (length - bars.Lap) / pieces;
        BarLap At(int bar, Length place) => new(bar, start + place, start + place + bars.Lap);
        return
        [
            .. Enumerable.Range(1, bars.Count).SelectMany(bar => bar % 2 == 1
                ? Enumerable.Range(1, (int)pieces - 1).Select(i => At(bar, pitch * i))
                : Enumerable.Range(1, (int)pieces).Select(i => At(bar, (pitch * i) - (pitch / 2)))),
        ];
    }
}
