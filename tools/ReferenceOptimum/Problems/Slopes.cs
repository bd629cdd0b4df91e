using System.Collections.Immutable;
using IfcCourser.Layouts;
using IfcCourser.Rules;

namespace ReferenceOptimum.Problems;

/// <summary>Where a wall's outline leaves less than a course's height at the ends of a run: pieces there are cut by the slope.</summary>
internal static class Slopes
{
    private const long Dust = 1_000;

    /// <summary>A run of a course with its slopes.</summary>
    /// <param name="wall">The wall, with its outline.</param>
    /// <param name="pieces">The run's pieces.</param>
    /// <param name="bottom">Where the run's pieces begin, if nothing slopes.</param>
    /// <param name="top">Where they end.</param>
    /// <param name="rules">Sizes of pieces.</param>
    public static Run Of(WallLayout wall, ImmutableArray<Piece> pieces, long bottom, long top, LayoutRules rules)
    {
        var (from, to) = (pieces[0].From.Nanometres, pieces[^1].To.Nanometres);
        var edges = wall.Outline.Zip([.. wall.Outline.Skip(1), wall.Outline[0]])
            .Select(side => (A: (S: side.First.S.Nanometres, Z: side.First.Z.Nanometres), B: (S: side.Second.S.Nanometres, Z: side.Second.Z.Nanometres)))
            .Select(side => side.A.S <= side.B.S ? side : (A: side.B, B: side.A))
            .Where(side => side.A.S < side.B.S).ToList();
        if (edges.TrueForAll(side => side.A.Z == side.B.Z))
        {
            return new Run(from, to, default, default);
        }

        var breaks = new SortedSet<long>([from, to]);
        breaks.UnionWith(edges.SelectMany(side => new[] { side.A.S, side.B.S }
            .Concat(new[] { bottom, top }.Where(z => (side.A.Z < z) != (side.B.Z < z)).Select(z => side.A.S + (long)((double)(side.B.S - side.A.S) * (z - side.A.Z) / (side.B.Z - side.A.Z))))));
        var places = breaks.Where(s => s >= from && s <= to).ToList();
        var crest = Math.Min(top, places.Zip(places.Skip(1)).Where(step => step.Second - step.First > Dust).SelectMany(step => new[] { step.First + 1, step.Second - 1 }).Max(s => Heights(s).Top));
        var full = places.Zip(places.Skip(1)).Where(step => step.Second - step.First > Dust && Heights((step.First + step.Second) / 2) is var at && at.Bottom <= bottom + Dust && at.Top >= crest - Dust).ToList();
        var middle = places.Where(s => Heights(s).Top >= crest - Dust).DefaultIfEmpty(to).First();
        var (start, end) = full.Count > 0 ? (full[0].First - from, to - full[^1].Second) : (middle - from, to - middle);
        return new Run(from, to, Rake(start, (pieces[0].To - pieces[0].From).Nanometres), Rake(end, (pieces[^1].To - pieces[^1].From).Nanometres));

        (long Bottom, long Top) Heights(long s)
        {
            var heights = edges.Where(side => side.A.S <= s && side.B.S >= s)
                .Select(side => side.A.Z + (long)((double)(side.B.Z - side.A.Z) * (s - side.A.S) / (side.B.S - side.A.S))).ToList();
            return heights.Count == 0 ? (long.MaxValue, long.MinValue) : (heights.Min(), heights.Max());
        }

        // Where the layout's own piece is too short, none is held to it: a bound must allow what the layout does.
        Rake Rake(long extent, long own)
        {
            var (unit, size) = (rules.Catalog.UnitLength.Nanometres, to - from);
            var least = Math.Min(extent + rules.MinPiece.Nanometres, Math.Min(unit, size <= unit ? size : size / 2));
            return extent <= Dust ? default : new Rake(extent, own >= least ? least : 0);
        }
    }
}
