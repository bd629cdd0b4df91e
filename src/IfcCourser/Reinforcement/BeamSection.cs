using System.Collections.Immutable;
using IfcCourser.Catalogs;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Reinforcement;

/// <summary>Where bars lie in a bond beam's section.</summary>
/// <param name="Across">Of the middle of each bar, from the wall's left face.</param>
/// <param name="Height">Of their middles, above the beam's underside.</param>
/// <param name="IsCrowded">Whether cover, or the clear distance between bars, is less than it should be.</param>
internal sealed record BeamSection(ImmutableArray<Length> Across, Length Height, bool IsCrowded)
{
    /// <summary>Between bars: 1 in or their diameter, TMS 402-16 6.1.3.1 (from memory); 20 mm or their diameter, EN 1992-1-1:2004 8.2 (from memory), is less.</summary>
    private static readonly Length _leastClear = Length.FromInches(1);

    /// <summary>
    /// Bars on the bottom's cover, spread from side to side; a bar that would lie in the wall's middle, where upright bars stand, lies to the left of them.
    /// </summary>
    /// <param name="thickness">Of the wall.</param>
    /// <param name="trough">Null where the beam is formed.</param>
    /// <param name="upright">Diameter of the wall's upright bars; zero where it has none.</param>
    /// <param name="bars">Of the beam.</param>
    public static BeamSection Of(Length thickness, TroughUnit? trough, Length upright, BeamBars bars)
    {
        var (diameter, cover) = (bars.Size.Diameter, trough is null ? bars.Cover.Concrete : bars.Cover.Grout);
        var first = (trough?.Shell ?? Length.Zero) + cover + (diameter / 2);
        var width = thickness - (first * 2);
        var beside = (upright + diameter) / 2;
        var places = ImmutableArray.CreateBuilder<Length>();
        for (var i = 0; i < bars.Count; i++)
        {
            var place = bars.Count == 1 ? thickness / 2 : first + (width * i / (bars.Count - 1));
            places.Add(upright > Length.Zero && Length.Abs(place - (thickness / 2)) < beside ? (thickness / 2) - beside : place);
        }

        var isTight = places.Zip(places.Skip(1)).Any(pair => pair.Second - pair.First - diameter < Length.Max(diameter, _leastClear));
        return new BeamSection(places.ToImmutable(), (trough?.Bottom ?? Length.Zero) + cover + (diameter / 2), width < Length.Zero || places[0] < first || isTight);
    }
}
