using System.Collections.Immutable;
using IfcCourser.Catalogs;
using IfcCourser.Geometry;
using IfcCourser.Modules;
using IfcCourser.Units;

namespace IfcCourser.Tests.Modules;

/// <summary>Courses of 249 mm on a 20 mm bed with 1 mm joints: undersides at 20 + 250 n, tops at 269 + 250 n; the least rip is 100 mm. Worked by hand.</summary>
public sealed class LintelRowsTests
{
    [Theory]
    [InlineData(2020, 2269, 8, 8, 0, 0)]
    [InlineData(2020, 2519, 8, 9, 0, 0)]
    [InlineData(2140, 2389, 8, 9, 119, 129)]
    [InlineData(2121, 2370, 8, 9, 100, 148)]
    [InlineData(2169, 2418, 8, 9, 148, 100)]
    [InlineData(2140, 2519, 8, 9, 119, 0)]
    [InlineData(2180, 2519, 8, 9, 159, 0)]
    [InlineData(2020, 2144, 8, 8, 0, 124)]
    [InlineData(2145, 2269, 8, 8, 124, 0)]
    public void A_lintel_that_can_be_built_in_says_what_is_cut_below_and_above(double bottom, double top, int first, int last, double seat, double closer) =>
        Assert.Equal(
            new LintelRows(first, last, Length.FromMm(seat), Length.FromMm(closer)),
            LintelRows.Of(Length.FromMm(bottom), Length.FromMm(top), Courses(20, 249, 11), BuiltInCatalogs.Get("aac-mm")));

    /// <summary>A seat of 59 or 99 mm, a closer of 89 mm, a top over the wall's, and both seat and closer in one course.</summary>
    [Theory]
    [InlineData(2080, 2329)]
    [InlineData(2120, 2369)]
    [InlineData(2180, 2429)]
    [InlineData(2520, 3018)]
    [InlineData(2121, 2168)]
    public void A_lintel_among_pieces_that_no_saw_cuts_can_not_be_built_in(double bottom, double top) =>
        Assert.Null(LintelRows.Of(Length.FromMm(bottom), Length.FromMm(top), Courses(20, 249, 11), BuiltInCatalogs.Get("aac-mm")));

    /// <summary>Blocks that are never ripped: only half a course up, where units of 113 mm lie below and above: 113 + 12 + 238 + 12 + 113 = 2 x 238 + 12.</summary>
    [Theory]
    [InlineData(125, true)]
    [InlineData(124, false)]
    [InlineData(150, false)]
    public void Where_units_are_never_ripped_other_heights_must_fit(double overLine, bool fits)
    {
        var bottom = Length.FromMm(12 + 2000 + overLine);
        var rows = LintelRows.Of(bottom, bottom + Length.FromMm(238), Courses(12, 238, 11), BuiltInCatalogs.Get("octametric"));
        Assert.Equal(fits ? (113, 113) : (0, 0), ((int)(rows?.Seat.Mm ?? 0), (int)(rows?.Closer.Mm ?? 0)));
    }

    private static ImmutableArray<Interval> Courses(double bed, double height, int count) =>
        [.. Enumerable.Range(0, count).Select(i => new Interval(Length.FromMm(bed + (250 * i)), Length.FromMm(bed + (250 * i) + height)))];
}
