using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Units;

namespace IfcCourser.Layouts;

/// <summary>The steel and grout of a core.</summary>
/// <param name="Count">Bars beside each other.</param>
/// <param name="Diameter">Of one bar.</param>
/// <param name="Set">From foot to top of each bar that is set after the blocks, heights above the wall's base; one for a storey or for each grout lift.</param>
/// <param name="Splices">Laps, or the stretches that couplers take.</param>
/// <param name="IsCoupled">Whether couplers join the bars.</param>
/// <param name="Starter">Cast into the slab; null where the bar stands over a head or runs on from the wall below.</param>
/// <param name="RunsOnFrom">Core of the wall below whose bar runs on into this one; null where there is none.</param>
/// <param name="GroutVolume">m3, the bars not deducted.</param>
/// <param name="Lifts">Heights of grout placed at once.</param>
public sealed record CoreBars(
    int Count,
    Length Diameter,
    ImmutableArray<Interval> Set,
    ImmutableArray<Interval> Splices,
    bool IsCoupled,
    StarterBar? Starter,
    CoreBelow? RunsOnFrom,
    double GroutVolume,
    ImmutableArray<Interval> Lifts)
{
    /// <summary>Marks in the bar schedule, one for each bar that is set; none before bars are scheduled.</summary>
    public ImmutableArray<string> Marks { get; init; } = [];
}
