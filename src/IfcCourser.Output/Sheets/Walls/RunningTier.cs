namespace IfcCourser.Output.Sheets.Walls;

/// <summary>
/// A tier of running dimensions from one origin (ISO 129-1): one line, each number at the end of its own extension
/// line, across it. Numbers that would touch step aside, in order, as little as possible.
/// </summary>
/// <param name="Axis">Along which it measures.</param>
/// <param name="Origin">Zero of the tier, along the axis.</param>
/// <param name="Measured">Where the measured points lie, across the axis.</param>
/// <param name="Line">Where the dimension line lies, across the axis.</param>
internal sealed record RunningTier(DimensionAxis Axis, double Origin, double Measured, double Line, TextSide Side)
{
    /// <summary>Least distance between the middles of neighbouring numbers, paper millimetres.</summary>
    public const double Pitch = 3.6;

    /// <summary>What a view shows along the axis: the tier's line ends there, however far its origin lies.</summary>
    public (double From, double To) Shown { get; init; } = (double.MinValue, double.MaxValue);

    public void Draw(Canvas canvas, SheetLengths lengths, IEnumerable<Station> stations)
    {
        var mm = canvas.PerPaper;
        var ordered = stations.OrderBy(station => station.At).DistinctBy(station => Math.Round(station.At, 1)).ToArray();
        var places = Spread([.. ordered.Select(station => station.At)], Pitch * mm);
        var steps = ordered.Zip(places, (station, place) => Math.Abs(station.At - place)).Any(step => step > 0.05 * mm);
        var reach = (steps ? 4.5 : 2) * mm;
        if (Origin >= Shown.From && Origin <= Shown.To)
        {
            canvas.Add(ArcItem.Circle(Pen.Dimension, Across(Origin, Line), 0.8 * mm));
        }

        for (var i = 0; i < ordered.Length; i++)
        {
            canvas.Write(Dimension(lengths, ordered[i], places[i], LineFrom(ordered, i), reach, mm));
        }
    }

    /// <summary>
    /// The least squared displacement that keeps neighbours a pitch apart: isotonic regression of p(i) - i * pitch by
    /// pooling adjacent violators.
    /// </summary>
    public static ImmutableArray<double> Spread(ImmutableArray<double> ascending, double pitch)
    {
        var pools = new List<(double Sum, int Count)>();
        for (var i = 0; i < ascending.Length; i++)
        {
            var pool = (Sum: ascending[i] - (i * pitch), Count: 1);
            while (pools.Count > 0 && pools[^1].Sum / pools[^1].Count > pool.Sum / pool.Count)
            {
                pool = (pool.Sum + pools[^1].Sum, pool.Count + pools[^1].Count);
                pools.RemoveAt(pools.Count - 1);
            }

            pools.Add(pool);
        }

        var places = pools.SelectMany(pool => Enumerable.Repeat(pool.Sum / pool.Count, pool.Count));
        return [.. places.Select((place, i) => place + (i * pitch))];
    }

    private DimensionItem Dimension(SheetLengths lengths, Station station, double place, double lineFrom, double reach, double mm)
    {
        var text = station.Prefix + lengths.Dimension(Math.Abs(station.At - Origin));
        var half = TextMetrics.Width(text, DimensionItem.TextHeight) / 2 * mm;
        var sign = Side == TextSide.After ? 1 : -1;
        return new DimensionItem(
            DimensionKind.Running,
            Axis,
            Across(Origin, Measured),
            Across(station.At, Measured),
            Line,
            lineFrom,
            Across(place, Line + (sign * (reach + half))),
            Axis == DimensionAxis.Horizontal ? 90 : 0,
            station.Prefix,
            text);
    }

    /// <summary>From the neighbour nearer to the origin, so that the tier's line is drawn once.</summary>
    private double LineFrom(Station[] ordered, int i)
    {
        var at = ordered[i].At;
        var neighbour = at >= Origin ? i - 1 : i + 1;
        if (neighbour < 0 || neighbour >= ordered.Length)
        {
            return Math.Clamp(Origin, Shown.From, Shown.To);
        }

        return at >= Origin ? Math.Max(Origin, ordered[neighbour].At) : Math.Min(Origin, ordered[neighbour].At);
    }

    private Point Across(double along, double across) =>
        Axis == DimensionAxis.Horizontal ? new Point(along, across) : new Point(across, along);
}
