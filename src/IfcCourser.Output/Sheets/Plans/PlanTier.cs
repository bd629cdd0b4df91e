using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Walls;

namespace IfcCourser.Output.Sheets.Plans;

/// <summary>
/// Running dimensions along one side of a plan, all from zero (ISO 129-1); points of equal distance share one number. Each is
/// drawn from the point nearest to the tier.
/// </summary>
/// <param name="Axis">Along which it measures.</param>
/// <param name="Line">Where the dimension line lies, across the axis.</param>
internal sealed record PlanTier(DimensionAxis Axis, double Line, TextSide Side)
{
    /// <summary>Zero of the tier, along the axis.</summary>
    public double Origin { get; init; }

    /// <summary>Whether it counts against the axis, so that numbers below zero bear no sign.</summary>
    public bool IsDownward { get; init; }

    /// <summary>What a sheet shows along the axis: the tier's line ends there, however far its zero lies.</summary>
    public (double From, double To) Shown { get; init; } = (double.MinValue, double.MaxValue);

    public void Draw(Canvas canvas, SheetLengths lengths, IEnumerable<PlanStation> stations)
    {
        var mm = canvas.PerPaper;
        var merged = stations.GroupBy(station => Math.Round(Along(station.At), 1)).OrderBy(same => same.Key).Select(Merged).ToArray();
        if (merged.Length == 0)
        {
            return;
        }

        var places = RunningTier.Spread([.. merged.Select(station => Along(station.At))], RunningTier.Pitch * mm);
        var steps = merged.Zip(places, (station, place) => Math.Abs(Along(station.At) - place)).Max() / mm;
        var reach = (steps > 0.05 ? Math.Clamp(steps, 4.5, 12) : 2) * mm;
        if (Origin >= Shown.From && Origin <= Shown.To)
        {
            canvas.Add(ArcItem.Circle(Pen.Dimension, Across(Origin), 0.8 * mm));
        }

        canvas.TakeLine(new LineItem(Pen.Dimension, Across(Start), Across(merged.Select(station => Along(station.At)).Max())));
        for (var i = 0; i < merged.Length; i++)
        {
            var item = Dimension(lengths, merged[i], places[i], LineFrom(merged, i), reach, mm);
            canvas.Write(item);
            canvas.TakeLine(new LineItem(Pen.Dimension, item.To, item.LineEnd));
        }
    }

    private DimensionItem Dimension(SheetLengths lengths, PlanStation station, double place, double lineFrom, double reach, double mm)
    {
        var prefix = string.Join(", ", new[] { NumberRanges.Of(station.Numbers), station.Word }.Where(part => part.Length > 0));
        prefix = prefix.Length > 0 ? prefix + "   " : prefix;
        var minus = Math.Round(Along(station.At) - Origin, 1) < 0 && !IsDownward ? "-" : string.Empty;
        var text = prefix + minus + lengths.Dimension(Math.Abs(Along(station.At) - Origin));
        var half = TextMetrics.Width(text, DimensionItem.TextHeight) / 2 * mm;
        var middle = Line + ((Side == TextSide.After ? 1 : -1) * (reach + half));
        return new DimensionItem(
            DimensionKind.Running,
            Axis,
            Axis == DimensionAxis.Horizontal ? new Point(Origin, station.At.Y) : new Point(station.At.X, Origin),
            station.At,
            Line,
            lineFrom,
            Axis == DimensionAxis.Horizontal ? new Point(place, middle) : new Point(middle, place),
            Axis == DimensionAxis.Horizontal ? 90 : 0,
            prefix + minus,
            text);
    }

    private PlanStation Merged(IEnumerable<PlanStation> same)
    {
        var all = same.ToArray();
        var nearest = Side == TextSide.Before ? all.MinBy(station => Beside(station.At))! : all.MaxBy(station => Beside(station.At))!;
        var words = all.Select(station => station.Word).Where(word => word.Length > 0).Distinct(StringComparer.Ordinal);
        return new PlanStation(nearest.At, [.. all.SelectMany(station => station.Numbers)], string.Join(", ", words));
    }

    /// <summary>Where the line begins: at zero, or where the sheet's part of the plan does.</summary>
    private double Start => Math.Clamp(Origin, Shown.From, Shown.To);

    /// <summary>From the neighbour nearer to zero, so that the tier's line is drawn once.</summary>
    private double LineFrom(PlanStation[] ordered, int i)
    {
        var at = Along(ordered[i].At);
        var neighbour = at >= Origin ? i - 1 : i + 1;
        return neighbour < 0 || neighbour >= ordered.Length ? Start
            : at >= Origin ? Math.Max(Origin, Along(ordered[neighbour].At)) : Math.Min(Origin, Along(ordered[neighbour].At));
    }

    private double Along(Point point) => Axis == DimensionAxis.Horizontal ? point.X : point.Y;

    private double Beside(Point point) => Axis == DimensionAxis.Horizontal ? point.Y : point.X;

    private Point Across(double along) => Axis == DimensionAxis.Horizontal ? new Point(along, Line) : new Point(Line, along);
}
