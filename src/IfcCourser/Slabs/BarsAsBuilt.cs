using System.Collections.Immutable;
using System.Globalization;
using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Slabs;

/// <summary>Holds measured bars to their cores.</summary>
internal static class BarsAsBuilt
{
    /// <summary>The bars, in the order of the file; a fault where a row names no bar of the layout.</summary>
    public static Outcome<BarList> Of(PlacedReadings readings, Layout layout, string file)
    {
        var bars = ImmutableArray.CreateBuilder<BarAsBuilt>();
        foreach (var bar in readings.Bars)
        {
            if (Planned(bar, layout) is not { } planned)
            {
                return Messages.BarUnknown(file, bar.Line, bar.Wall, bar.Core, bar.Point);
            }

            bars.Add(Held(bar, planned.Wall, planned.Core));
        }

        return new BarList(bars.ToImmutable());
    }

    /// <summary>The bar furthest off along its wall, beside what it may be; null where none was measured, or the rule set has no limit.</summary>
    public static ToleranceCheck? Tolerance(ImmutableArray<BarAsBuilt> bars, SlabTolerances tolerances) => bars.IsEmpty || tolerances.BarAlong is not { } limit ? null : new ToleranceCheck(
        Messages.BarOffAlong, bars.Max(bar => Math.Abs(bar.Along)), limit.Mm, tolerances.SourceOf(SlabTolerancesReader.BarAlong));

    /// <summary>By wall and core, by the number of points.csv, or by a core's id that only one wall has.</summary>
    private static (WallLayout Wall, Core Core)? Planned(PlacedBar bar, Layout layout)
    {
        var setOut = int.TryParse(bar.Point, NumberStyles.None, CultureInfo.InvariantCulture, out var number)
            ? layout.SetOut.Storeys.SelectMany(storey => storey.Bars).FirstOrDefault(known => known.Number == number) : null;
        var (wall, core) = bar.Core is null ? (setOut?.Wall, setOut?.Core) : (bar.Wall, bar.Core);
        var found = layout.Walls.Where(known => wall is null || Is(known.Identity.GlobalId, wall) || Is(known.Identity.Name, wall))
            .SelectMany(known => known.Cores.Where(planned => Is(planned.Id, core)).Select(planned => (Wall: known, Core: planned))).ToArray();
        return found is [var only] ? only : null;
    }

    /// <summary>A bar beside its plan. In the hole of its core it may stand anywhere; outside, the core goes with it as far as its play.</summary>
    internal static BarAsBuilt Held(PlacedBar bar, WallLayout wall, Core core)
    {
        var (along, across) = Off(wall, core, bar.Plan);
        var play = (along < 0 ? core.PlayMinus : core.PlayPlus).Mm;
        var room = ((core.Diameter - (core.Bars?.Diameter ?? BarSizes.Find(core.Bar)?.Diameter ?? Length.Zero)) / 2).Mm;
        var (isInCore, isCorner) = (Math.Abs(along) <= room, !core.SharedWith.IsEmpty);

        // Along one wall of a corner is across the other.
        var where = Math.Abs(across) > room || (isCorner && !isInCore) ? BarPlace.OffAcross
            : !isInCore && Math.Abs(along) > play ? BarPlace.OffAlong
            : BarPlace.Inside;
        var answer = where != BarPlace.Inside ? BarAnswer.Left : isInCore ? BarAnswer.AsPlanned : BarAnswer.CoreMoves;
        return new BarAsBuilt(bar, wall, core, along, across, where, answer);
    }

    private static (double Along, double Across) Off(WallLayout wall, Core core, Vector2 place)
    {
        var (at, next) = (wall.Frame.PointAt(core.At, core.Across, default).Plan, wall.Frame.PointAt(core.At + Length.FromMm(1), core.Across, default).Plan);
        var direction = (next - at).Unit();
        return (Vector2.Dot(place - at, direction), -Vector2.Dot(place - at, direction.Left));
    }

    private static bool Is(string? name, string? wanted) => wanted is not null && string.Equals(name, wanted, StringComparison.Ordinal);
}
