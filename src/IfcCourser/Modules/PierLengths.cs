using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Modules;

/// <summary>
/// The lengths of piers whose courses can be bonded: two courses that alternate, of pieces no shorter than the least and
/// no longer than the unit, whose head joints lap. Exact: for each number of joints in the two courses and each order of
/// them along the pier, the lengths that fit are one interval, found as longest and shortest paths over what may lie between
/// two neighbours.
/// </summary>
internal sealed class PierLengths
{
    /// <summary>Piers of more pieces than this in a course are bonded like walls.</summary>
    private const int MostJoints = 4;

    private const int PiecesLookedAt = 3;

    private readonly Length _least;
    private readonly Length _unit;
    private readonly Length _lap;
    private readonly Length _narrow;
    private readonly Length _wide;
    private readonly Length _shift;
    private readonly Length _half;

    /// <summary>Where the second course starts behind the first, the joint before it is one that the first course laps.</summary>
    private readonly int _faces;

    private PierLengths(LayoutRules rules, Length narrow, Length wide, Length shift)
    {
        (_least, _unit, _lap) = (rules.MinPiece, rules.Catalog.UnitLength, rules.MinOverlap);
        (_narrow, _wide, _shift, _half) = (narrow, wide, shift, rules.Catalog.HeadJoint.Nominal / 2);
        _faces = shift > Length.Zero ? 1 : 0;
        Longest = _unit * PiecesLookedAt;
        Bonded = Merged(All().OrderBy(range => range.From));
    }

    /// <summary>Piers longer than this are not judged.</summary>
    public Length Longest { get; }

    /// <summary>Intervals of lengths that can be bonded, rising; ends included.</summary>
    public ImmutableArray<Interval> Bonded { get; }

    /// <summary>The lengths that joints of any width within their limits allow.</summary>
    /// <param name="rules">Unit, least piece, overlap, joints.</param>
    /// <param name="shift">How far the second course starts behind the first, as at a corner, where another wall's face stands
    /// a joint before it; zero where both start together.</param>
    public static PierLengths Possible(LayoutRules rules, Length shift) =>
        new(rules, rules.Catalog.HeadJoint.Min, rules.Catalog.HeadJoint.Max, shift);

    /// <summary>The lengths to aim for: with joints of nominal width.</summary>
    /// <param name="rules">Unit, least piece, overlap, joints.</param>
    /// <param name="shift">How far the second course starts behind the first.</param>
    public static PierLengths Nominal(LayoutRules rules, Length shift) =>
        new(rules, rules.Catalog.HeadJoint.Nominal, rules.Catalog.HeadJoint.Nominal, shift);

    public bool Contains(Length pier) => pier > Longest || Bonded.Any(range => range.Contains(pier));

    /// <summary>The nearest lengths that can be bonded, under and over one that can't.</summary>
    public (Length? Under, Length? Over) Nearest(Length pier)
    {
        var under = Bonded.Where(range => range.To <= pier).Select(range => (Length?)range.To).LastOrDefault();
        var over = Bonded.Where(range => range.From >= pier).Select(range => (Length?)range.From).FirstOrDefault();
        return (under, over);
    }

    private IEnumerable<Interval> All() =>
        from first in Enumerable.Range(0, MostJoints + 1)
        from second in Enumerable.Range(0, MostJoints + 1)
        from order in Orders(first, second + _faces)
        let range = Range(order)
        where range is not null
        select range.Value;

    /// <summary>All orders of the joints of two courses along the pier: false for one of the first course, true for one of the second.</summary>
    private static IEnumerable<ImmutableArray<bool>> Orders(int first, int second)
    {
        if (first == 0 && second == 0)
        {
            return [[]];
        }

        var withFirst = first == 0 ? [] : Orders(first - 1, second).Select(order => order.Add(false));
        var withSecond = second == 0 ? [] : Orders(first, second - 1).Select(order => order.Add(true));
        return withFirst.Concat(withSecond);
    }

    /// <summary>The lengths that fit an order of joints; null where none does.</summary>
    private Interval? Range(ImmutableArray<bool> order)
    {
        var end = order.Length + 1;
        var places = new Differences(end + 1);
        Course(places, PlacesOf(order, second: false), Length.Zero, end);
        Course(places, [.. PlacesOf(order, second: true).Skip(_faces)], _shift, end);
        if (_faces > 0)
        {
            places.Between(0, PlacesOf(order, second: true)[0], _shift - _half, _shift - _half);
        }

        for (var i = 0; i < order.Length; i++)
        {
            for (var j = i + 1; j < order.Length; j++)
            {
                if (order[i] != order[j])
                {
                    places.Between(i + 1, j + 1, _lap, null);
                }
            }
        }

        return places.Solve() ? new Interval(places.Least(0, end), places.Most(0, end)) : null;
    }

    private static List<int> PlacesOf(ImmutableArray<bool> order, bool second) =>
        [.. Enumerable.Range(0, order.Length).Where(i => order[i] == second).Select(i => i + 1)];

    /// <summary>States what may lie between the joints of a course, and between them and the face it starts at.</summary>
    /// <param name="places">Place 0 is the pier's start, then come the joints in their order.</param>
    /// <param name="joints">Places of the course's joints.</param>
    /// <param name="start">Where its first piece starts.</param>
    /// <param name="end">Place of the pier's end.</param>
    private void Course(Differences places, List<int> joints, Length start, int end)
    {
        var last = 0;
        foreach (var joint in joints)
        {
            var (offset, halves) = last == 0 ? (start, 1) : (Length.Zero, 2);
            places.Between(last, joint, offset + _least + (_narrow * halves / 2), offset + _unit + (_wide * halves / 2));
            last = joint;
        }

        var (rest, ends) = last == 0 ? (start, 0) : (Length.Zero, 1);
        places.Between(last, end, rest + _least + (_narrow * ends / 2), rest + _unit + (_wide * ends / 2));
    }

    private static ImmutableArray<Interval> Merged(IEnumerable<Interval> ranges)
    {
        var merged = new List<Interval>();
        foreach (var range in ranges)
        {
            if (merged.Count > 0 && range.From <= merged[^1].To)
            {
                merged[^1] = merged[^1] with { To = Length.Max(merged[^1].To, range.To) };
            }
            else
            {
                merged.Add(range);
            }
        }

        return [.. merged];
    }
}
