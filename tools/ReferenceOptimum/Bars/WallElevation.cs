using System.Collections.Immutable;
using IfcCourser.Catalogs;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Rules;

namespace ReferenceOptimum.Bars;

/// <summary>The masonry of a wall: what a bar can take at a place, and, where all edges are upright or level, where bars are asked for. Places along the run are doubled.</summary>
internal sealed class WallElevation
{
    private readonly ImmutableArray<Box> _blocks;
    private readonly ImmutableArray<Box> _rowEnds;
    private readonly ImmutableArray<Edge> _edges;
    private readonly ImmutableArray<(long Bottom, long Top)> _courses;
    private readonly long _leastStrip;

    /// <param name="wall">The wall.</param>
    /// <param name="inCorners">Lintels of walls that share a corner, where they bear on it.</param>
    /// <param name="rule">Which openings are large, which strips too low.</param>
    public WallElevation(WallLayout wall, IEnumerable<ElevationRect> inCorners, BarRule rule)
    {
        _courses = [.. wall.Courses.Select(course => (course.Bottom.Nanometres, course.Top.Nanometres))];
        Voids = [.. wall.Openings.Where(opening => opening.Interrupts).Select(opening => Box.Of(opening.Placed))];
        Large = [.. wall.Openings.Where(opening => opening.Interrupts && IsLarge(opening.Placed, rule)).Select(opening => Box.Of(opening.Placed))];
        Solid = [.. wall.Lintels.Where(lintel => lintel.Kind != LintelKind.Trough).Select(lintel => Box.Of(new ElevationRect(lintel.From, lintel.To, lintel.Bottom, lintel.Top)))];
        Outline = [.. wall.Outline.Select(point => (point.S.Nanometres * 2, point.Z.Nanometres))];
        _blocks = [.. Voids, .. Solid, .. inCorners.Select(Box.Of)];
        _rowEnds = [.. Large, .. Solid.Where(lintel => Large.Any(rect => lintel.Left2 < rect.Right2 && lintel.Right2 > rect.Left2 && lintel.Top > rect.Top))];
        _edges = [.. Outline.Zip([.. Outline.Skip(1), Outline[0]]).Where(side => side.First.S2 != side.Second.S2)
            .Select(side => side.First.S2 < side.Second.S2 ? new Edge(side.First.S2, side.Second.S2, side.First.Z, side.Second.Z) : new Edge(side.Second.S2, side.First.S2, side.Second.Z, side.First.Z))];
        _leastStrip = rule.SpacingFromHeight.Nanometres;
    }

    public ImmutableArray<Box> Voids { get; }

    /// <summary>Openings that have bars beside them.</summary>
    public ImmutableArray<Box> Large { get; }

    /// <summary>Lintels that no bar passes.</summary>
    public ImmutableArray<Box> Solid { get; }

    public ImmutableArray<(long S2, long Z)> Outline { get; }

    public static bool IsUpright(WallLayout wall) => wall.Outline.Zip([.. wall.Outline.Skip(1), wall.Outline[0]]).All(side => side.First.S == side.Second.S || side.First.Z == side.Second.Z);

    public static bool IsLarge(ElevationRect opening, BarRule rule) =>
        (opening.Width >= rule.OpeningsFrom || opening.Height >= rule.OpeningsFrom) && opening.Width.Mm * opening.Height.Mm >= rule.OpeningsFromCm2 * 100.0;

    /// <summary>Stretches of height that bars can take at a place, from the bottom up.</summary>
    public List<(long From, long To)> Free(long at2) => Free(at2, _blocks);

    /// <summary>Where bars are asked for: at a height in the middle between any two edges, from one end of a row of bars to the other.</summary>
    public IEnumerable<BarRow> Rows()
    {
        List<long> levels = [.. _blocks.SelectMany(block => new[] { block.Bottom, block.Top }).Concat(Outline.Select(point => point.Z)).Distinct().Order()];
        List<long> places = [.. _rowEnds.SelectMany(block => new[] { block.Left2, block.Right2 }).Concat(Outline.Select(point => point.S2)).Distinct().Order()];
        foreach (var height in levels.Zip(levels.Skip(1), (low, high) => (low + high) / 2))
        {
            long? from = null;
            foreach (var (left, right) in places.Zip(places.Skip(1)))
            {
                var asks = Free((left + right) / 2, _rowEnds).Exists(free => free.From < height && free.To > height && free.To - free.From >= _leastStrip);
                if (!asks && from is { } start)
                {
                    yield return new BarRow(height, start, left);
                }

                from = asks ? from ?? left : null;
            }

            if (from is { } open)
            {
                yield return new BarRow(height, open, places[^1]);
            }
        }
    }

    private List<(long From, long To)> Free(long at2, ImmutableArray<Box> blocks)
    {
        var left = _edges.Where(edge => edge.From2 < at2 && edge.To2 >= at2).Select(edge => edge.At(at2)).ToList();
        var right = _edges.Where(edge => edge.From2 <= at2 && edge.To2 > at2).Select(edge => edge.At(at2)).ToList();
        var sides = new[] { left, right }.Where(side => side.Count > 0).ToList();
        var free = new List<(long From, long To)>();
        if (sides.Count == 0)
        {
            return free;
        }

        var (from, top) = (sides.Max(side => side.Min()), sides.Min(side => side.Max()));
        foreach (var block in blocks.Where(block => block.Left2 < at2 && block.Right2 > at2).OrderBy(block => block.Bottom))
        {
            Add(from, Math.Min(block.Bottom, top));

            from = Math.Max(from, block.Top);
        }

        Add(from, top);
        return free;

        // Mortar over the last course is no masonry.
        void Add(long low, long high)
        {
            if (high > low && _courses.Any(course => course.Bottom < high && course.Top > low))
            {
                free.Add((low, high));
            }
        }
    }

    /// <summary>An edge of the outline that is not upright.</summary>
    private readonly record struct Edge(long From2, long To2, long FromZ, long ToZ)
    {
        public long At(long at2) => FromZ + (long)((ToZ - FromZ) * ((at2 - From2) / (double)(To2 - From2)));
    }

    /// <summary>An upright rectangle, its sides doubled.</summary>
    internal readonly record struct Box(long Left2, long Right2, long Bottom, long Top)
    {
        public static Box Of(ElevationRect rect) => new(rect.Left.Nanometres * 2, rect.Right.Nanometres * 2, rect.Bottom.Nanometres, rect.Top.Nanometres);

        public bool IsBeside(long from, long to) => Bottom < to && Top > from;
    }
}
