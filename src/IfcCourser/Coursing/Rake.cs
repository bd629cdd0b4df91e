using IfcCourser.Geometry;
using IfcCourser.Units;

namespace IfcCourser.Coursing;

/// <summary>How far the wall's top or foot slopes within a course, from each side of a part of the wall.</summary>
/// <param name="To">The slope at the left ends here; the part's left side where nothing slopes.</param>
/// <param name="From">The slope at the right begins here; the part's right side where nothing slopes.</param>
internal readonly record struct Rake(Length To, Length From)
{
    private static readonly Length _dust = Length.FromMm(0.001);

    public static Rake Of(OutlinePart part, CourseBand band)
    {
        var box = part.Box;
        if (part.Points is not { } points
            || !points.Where((point, i) => points[(i + 1) % points.Length] is var next && point.S != next.S && point.Z != next.Z).Any())
        {
            return new Rake(box.Left, box.Right);
        }

        var crest = Length.Min(band.Top, box.Top);
        var top = points.Where(point => point.Z >= crest - _dust).Select(point => point.S).ToList();
        var foot = points.Where(point => point.Z <= band.Bottom + _dust).Select(point => point.S).DefaultIfEmpty(box.Left).ToList();
        return new Rake(Length.Max(top.Min(), foot.Min()), Length.Min(top.Max(), foot.Max()));
    }

    /// <summary>The start of a segment that reaches from <paramref name="left"/> to <paramref name="right"/>.</summary>
    public SegmentEnd StartOf(Length left, Length right, long cutCost, Length least, Length unit) =>
        EndWith(Length.Min(To, right) - left, right - left, cutCost, least, unit);

    /// <summary>The end of a segment that reaches from <paramref name="left"/> to <paramref name="right"/>.</summary>
    public SegmentEnd EndOf(Length left, Length right, long cutCost, Length least, Length unit) =>
        EndWith(right - Length.Max(From, left), right - left, cutCost, least, unit);

    private static SegmentEnd EndWith(Length raked, Length size, long cutCost, Length least, Length unit) => raked <= Length.Zero
        ? SegmentEnd.Upright(cutCost)
        : new SegmentEnd(cutCost, raked, SegmentEnd.LeastWith(raked, size, least, unit));
}
