using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Reinforcement;

/// <summary>The stretches of height of a wall that bars can take at a place of its run, and those that ask for bars at the largest spacing.</summary>
internal sealed class BarHeights
{
    private static readonly Length _aside = Length.FromMm(1);

    private readonly ImmutableArray<ElevationPoint> _outline;
    private readonly ImmutableArray<ElevationRect> _blocks;
    private readonly ImmutableArray<ElevationRect> _gaps;
    private readonly ImmutableArray<Interval> _courses;
    private readonly Interval _run;
    private readonly Length _least;

    /// <param name="site">The wall.</param>
    /// <param name="bars">Which openings end a row of bars, which strips are too low for one.</param>
    public BarHeights(BarSite site, BarRule bars)
    {
        var large = site.Voids.Where(rect => bars.AsksAtOpening(rect.Width, rect.Height)).ToImmutableArray();
        var barriers = site.OwnBarriers.ToImmutableArray();
        _outline = site.Wall.Outline;
        _courses = site.Courses;
        _run = new Interval(Length.Zero, site.Wall.Frame.Length);
        _blocks = [.. site.Voids, .. site.Barriers];
        _gaps = [.. large, .. barriers.Where(lintel => large.Any(rect => lintel.Left < rect.Right && lintel.Right > rect.Left && lintel.Top > rect.Top))];
        _least = bars.SpacingFromHeight;
        Levels = [.. _blocks.SelectMany(rect => new[] { rect.Bottom, rect.Top }).Concat(_outline.Select(point => point.Z)).Distinct().Order()];
    }

    /// <summary>Heights, rising, at which stretches begin or end, but along sloping tops.</summary>
    public ImmutableArray<Length> Levels { get; }

    /// <summary>Whether the outline slopes at a place, or nearly there.</summary>
    public bool IsSloped(Length place) => _outline.Zip(_outline.Skip(1).Append(_outline[0]), (a, b) => (a, b)).Any(side =>
        side.a.Z != side.b.Z && side.a.S != side.b.S
        && Length.Min(side.a.S, side.b.S) <= place + _aside && Length.Max(side.a.S, side.b.S) >= place - _aside);

    /// <summary>What a bar can take, from the bottom up: clear of openings and of lintels that no bar passes.</summary>
    public ImmutableArray<Interval> At(Length place) => Free(place, _blocks);

    /// <summary>
    /// What asks for bars at the largest spacing: masonry between openings that have bars beside them and their lintels, unless it is too low.
    /// Smaller openings don't end a row of bars.
    /// </summary>
    public ImmutableArray<Interval> Asking(Length place) => [.. Free(place, _gaps).Where(stretch => stretch.Size >= _least)];

    /// <summary>The stretch that shares most with a height, the lowest where equal; null where none shares any.</summary>
    public static int? Sharing(ImmutableArray<Interval> stretches, Interval heights)
    {
        int? best = null;
        for (var i = 0; i < stretches.Length; i++)
        {
            var share = Shared(stretches[i], heights);
            best = share > Length.Zero && (best is not { } other || share > Shared(stretches[other], heights)) ? i : best;
        }

        return best;
    }

    private ImmutableArray<Interval> Free(Length place, ImmutableArray<ElevationRect> blocks)
    {
        var (from, top) = Column(place);
        var free = ImmutableArray.CreateBuilder<Interval>();
        foreach (var block in blocks.Where(block => block.Left < place && block.Right > place).OrderBy(block => block.Bottom))
        {
            AddUpTo(block.Bottom);
            from = Length.Max(from, block.Top);
        }

        AddUpTo(top);
        return free.ToImmutable();

        void AddUpTo(Length height)
        {
            var stretch = new Interval(from, Length.Min(height, top));
            if (!stretch.IsEmpty && (_courses.IsEmpty || _courses.Any(course => course.Overlaps(stretch))))
            {
                free.Add(stretch);
            }
        }
    }

    /// <summary>From the outline's lowest to its highest point, of both sides of a step the lesser.</summary>
    private (Length Bottom, Length Top) Column(Length place)
    {
        var sides = new[] { place - _aside, place + _aside }.Where(_run.Contains).Select(Crossings).Where(heights => heights.Count > 0).ToList();
        return sides.Count == 0 ? default : (sides.Max(heights => heights.Min()), sides.Min(heights => heights.Max()));
    }

    private List<Length> Crossings(Length place)
    {
        var heights = new List<Length>(4);
        for (var i = 0; i < _outline.Length; i++)
        {
            var (a, b) = (_outline[i], _outline[(i + 1) % _outline.Length]);
            if (a.S != b.S && Length.Min(a.S, b.S) <= place && Length.Max(a.S, b.S) >= place)
            {
                heights.Add(a.Z == b.Z ? a.Z : a.Z + Length.FromMm((b.Z - a.Z).Mm * ((place - a.S).Mm / (b.S - a.S).Mm)));
            }
        }

        return heights;
    }

    private static Length Shared(Interval a, Interval b) => Length.Max(Length.Zero, Length.Min(a.To, b.To) - Length.Max(a.From, b.From));
}
