using System.Collections.Immutable;
using System.Globalization;

namespace ReferenceOptimum.Problems;

/// <summary>A part of a wall whose joints have nothing to do with those of the rest: equal blocks have equal optima wherever they stand.</summary>
/// <param name="Stretches">Runs to fill, by course and place.</param>
/// <param name="Bars">Bars that may stand near their joints.</param>
internal sealed record Block(BondSizes Sizes, ImmutableArray<BlockStretch> Stretches, ImmutableArray<BlockBar> Bars)
{
    public int FirstCourse => Stretches[0].Course;

    public int LastCourse => Stretches[^1].Course;

    /// <summary>Where its first stretch starts.</summary>
    public long Origin => Stretches.Min(stretch => stretch.From);

    public bool IsPair => LastCourse == FirstCourse + 1;

    /// <summary>Its content as text, places counted from its own start.</summary>
    public string Key()
    {
        var origin = Origin;
        var text = Stretches.Select(s => string.Create(
            CultureInfo.InvariantCulture,
            $"{s.Course - FirstCourse}:{s.From - origin}-{s.To - origin}/{s.Run.Slopes()}[{Places(s.Near2)}][{string.Join(",", s.Bearings.Select(b => $"{b.From2 - (2 * origin)}-{b.To2 - (2 * origin)}"))}]"));
        var bars = Bars.Select(bar => string.Create(
            CultureInfo.InvariantCulture,
            $"{bar.Least2 - (2 * origin)}-{bar.Most2 - (2 * origin)}~{Spaced(bar)}@{string.Join("/", bar.Courses.Select(c => $"{c.Course - FirstCourse}:{Places(c.Fixed2)}"))}"));
        return $"{Sizes}{string.Join(",", Sizes.Parts)}|{string.Join(";", text)}|{string.Join(";", bars)}";

        int Spaced(BlockBar bar) => bar.SpacedFrom is { } other ? Bars.IndexOf(Bars.FirstOrDefault(b => b.Number == other)!) : -1;

        string Places(ImmutableArray<long> places) => string.Join(",", places.Select(place => place - (2 * origin)));
    }

    /// <summary>What is left of it in some courses when nothing is asked of the others.</summary>
    public Block Window(int first, int last)
    {
        var kept = Enumerable.Range(0, Stretches.Length).Where(i => Stretches[i].Course >= first && Stretches[i].Course <= last).ToList();
        return this with
        {
            Stretches = [.. kept.Select(i => Stretches[i])],
            Bars =
            [
                .. Bars.Select(bar => bar with { Courses = [.. bar.Courses.Where(c => c.Course >= first && c.Course <= last)] })
                    .Where(bar => !bar.Courses.IsEmpty),
            ],
        };
    }
}
