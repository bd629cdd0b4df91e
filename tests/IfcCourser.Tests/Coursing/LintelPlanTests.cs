using System.Collections.Immutable;
using IfcCourser.Catalogs;
using IfcCourser.Coursing;
using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Tests.Support;
using IfcCourser.Units;

namespace IfcCourser.Tests.Coursing;

/// <summary>
/// aac-mm: courses of 249 mm on a 20 mm bed, undersides at 20 + 250 n; bearing 200 mm, least piece 100 mm, joints 1 mm, so that
/// an end leaves 101 mm or nothing. Solid lintels to 1.5 m, trough lintels to 2.25 m (one course) and 2.75 m (two). Worked by hand.
/// </summary>
public sealed class LintelPlanTests
{
    private static readonly LayoutRules _rules = LayoutRules.For(BuiltInRuleSets.Get("eu"), BuiltInCatalogs.Get("aac-mm"), OpeningPolicy.Keep);

    [Fact]
    public void A_lintel_lies_on_the_heads_course_line_with_a_bearing_each_side() =>
        AssertLies((799, 2200, 2020, 2269), LintelKind.Solid, Assert.Single(Plan((999, 2000, 2020)).Lintels));

    [Theory]
    [InlineData(1500, LintelKind.Solid, 2269)]
    [InlineData(1501, LintelKind.Trough, 2269)]
    [InlineData(2250, LintelKind.Trough, 2269)]
    [InlineData(2251, LintelKind.Trough, 2519)]
    [InlineData(2750, LintelKind.Trough, 2519)]
    [InlineData(2751, LintelKind.Formed, 2519)]
    [InlineData(4900, LintelKind.Formed, 2519)]
    [InlineData(5100, LintelKind.Formed, 2769)]
    public void The_first_lintel_that_spans_is_taken_else_a_beam_of_a_tenth_of_the_span_is_formed(double width, LintelKind kind, double top)
    {
        var (lintels, findings) = Plan((999, 999 + width, 2020));
        AssertLies((799, 1199 + width, 2020, top), kind, Assert.Single(lintels));
        Assert.Equal(kind == LintelKind.Formed, findings.Any(finding => finding.Code == FindingCodes.LintelFormed));
        Assert.All(findings, finding => Assert.Contains("shored", finding.Message, StringComparison.Ordinal));
    }

    /// <summary>100 mm would be left to the wall's start or end: the lintel runs on; 101 mm hold a joint and the least piece.</summary>
    [Theory]
    [InlineData(300, 0, 300)]
    [InlineData(301, 101, 200)]
    [InlineData(201, 0, 201)]
    [InlineData(150, 0, 150)]
    public void A_lintel_that_would_leave_less_than_the_least_piece_runs_on_to_the_walls_end(double left, double from, double bearing)
    {
        var (lintels, findings) = Plan((left, left + 1000, 2020));
        Assert.Equal((from, bearing), (lintels[0].From.Mm, lintels[0].BearingLeft.Mm));
        Assert.Equal(bearing < 200, findings.Any(finding => finding.Code == FindingCodes.BearingShort));

        var mirrored = Plan((7999 - left - 1000, 7999 - left, 2020)).Lintels[0];
        Assert.Equal((7999 - from, bearing), (mirrored.To.Mm, mirrored.BearingRight.Mm));
    }

    /// <summary>The next opening's jamb, 300 or 301 mm away in the lintel's course.</summary>
    [Theory]
    [InlineData(300, 2300)]
    [InlineData(301, 2200)]
    public void It_runs_on_to_the_jamb_of_an_opening_beside_it(double pier, double to)
    {
        var (lintels, _) = Plan((999, 2000, 2020), (2000 + pier, 3200, 2520));
        Assert.Equal(to, lintels[0].To.Mm);
    }

    /// <summary>A pier of 400 mm can't hold two bearings of 200 mm and a joint: one lintel; 401 mm hold just these; up to 501 mm one lintel runs on to the other.</summary>
    [Theory]
    [InlineData(400, 1, 0)]
    [InlineData(401, 2, 1)]
    [InlineData(450, 2, 1)]
    [InlineData(501, 2, 1)]
    [InlineData(502, 2, 102)]
    public void Openings_share_a_lintel_where_their_pier_can_not_hold_two_bearings(double pier, int count, double gap)
    {
        var (lintels, findings) = Plan((999, 2000, 2020), (2000 + pier, 3000 + pier, 2020));
        Assert.Equal(count, lintels.Length);
        Assert.Equal((799, 3200 + pier), (lintels[0].From.Mm, lintels[^1].To.Mm));
        Assert.Empty(findings);
        if (count == 2)
        {
            Assert.Equal(gap, (lintels[1].From - lintels[0].To).Mm);
        }
    }

    /// <summary>Two openings of 1000 mm: over a pier of 200 mm each spans alone (solid, to 1.5 m); one of 199 mm carries nothing, so that 2199 mm are spanned.</summary>
    [Theory]
    [InlineData(200, LintelKind.Solid)]
    [InlineData(199, LintelKind.Trough)]
    public void A_pier_shorter_than_a_bearing_carries_nothing(double pier, LintelKind kind) =>
        Assert.Equal(kind, Assert.Single(Plan((999, 1999, 2020), (1999 + pier, 2999 + pier, 2020)).Lintels).Kind);

    /// <summary>
    /// Heads one course apart over a pier of 301 mm: the lower opening's lintel of two courses and the upper one's of one course
    /// stand side by side in the upper course: each takes half of the pier less the joint.
    /// </summary>
    [Fact]
    public void Lintels_of_different_heights_share_a_pier_by_halves()
    {
        var (lintels, findings) = Plan((999, 3500, 2020), (3801, 4801, 2270));
        AssertLies((799, 3650, 2020, 2519), LintelKind.Trough, lintels[0]);
        AssertLies((3651, 5001, 2270, 2519), LintelKind.Solid, lintels[1]);
        Assert.Equal(2, findings.Count(finding => finding.Code == FindingCodes.BearingShort));
    }

    /// <summary>
    /// 120 mm over a course line: 119 mm of the blocks are the seat, and 250 - 120 - 1 = 129 mm close the course over it. 60 mm
    /// over it no saw cuts the seat (59 mm); 180 mm over it none cuts the closer (69 mm): on the next line, and a gap is named.
    /// </summary>
    [Theory]
    [InlineData(120, 2140, FindingCodesOf.MidCourse)]
    [InlineData(60, 2270, null)]
    [InlineData(180, 2270, null)]
    public void A_head_in_mid_course_carries_its_lintel_there_where_pieces_can_be_cut(double overLine, double bottom, string? code)
    {
        var (lintels, findings) = Plan((999, 2000, 2020 + overLine));
        AssertLies((799, 2200, bottom, bottom + 249), LintelKind.Solid, Assert.Single(lintels));
        Assert.Equal(code, findings.SingleOrDefault()?.Code.Id);
    }

    /// <summary>A beam that is formed has any height: it is seated in mid-course and ends with a course, 379 mm high or as much as a tenth of its span.</summary>
    [Fact]
    public void A_formed_beam_is_seated_in_mid_course_and_ends_with_a_course() =>
        AssertLies((799, 5200, 2180, 2769), LintelKind.Formed, Assert.Single(Plan((999, 5000, 2180)).Lintels));

    /// <summary>Under the last course's top only a beam finds room: seated 150 mm over the line it is 349 mm high, on the line it would be 249.</summary>
    [Fact]
    public void Under_the_walls_top_a_beam_is_formed_where_no_lintel_finds_room()
    {
        var (lintels, findings) = Plan((999, 3600, 2670));
        AssertLies((799, 3800, 2670, 3019), LintelKind.Formed, Assert.Single(lintels));
        Assert.Contains(findings, finding => finding.Code == FindingCodes.LintelFormed);
    }

    [Fact]
    public void Where_a_head_lies_under_the_walls_top_with_no_room_its_lintel_is_missing()
    {
        var (lintels, findings) = Plan((999, 2000, 2960));
        Assert.Empty(lintels);
        Assert.Equal(FindingCodes.LintelMissing, Assert.Single(findings).Code);
        Assert.Empty(Plan((999, 2000, 3005)).Findings);
    }

    /// <summary>Where a joint of 10 mm stands in a pier that two openings would share a lintel over, each has its own, and neither passes the joint.</summary>
    [Fact]
    public void No_lintel_passes_where_it_is_barred()
    {
        var joint = new ElevationRect(Mm(2145), Mm(2155), Mm(0), Mm(3019));
        var (lintels, findings) = Plan([joint], _rules, (999, 2000, 2020), (2300, 3300, 2020));
        Assert.Equal([(799, 2145), (2155, 3500)], lintels.Select(lintel => (lintel.From.Mm, lintel.To.Mm)));
        Assert.Equal(2, findings.Count(finding => finding.Code == FindingCodes.BearingShort));

        var over = Plan([joint with { Left = Mm(1495), Right = Mm(1505) }], _rules, (999, 2000, 2020));
        Assert.Empty(over.Lintels);
        Assert.Equal(FindingCodes.LintelMissing, Assert.Single(over.Findings).Code);
    }

    /// <summary>Lintels of 1.25, 1.5 and 2 m: 1000 mm and two bearings take 1.5 m, 250 mm on each side; the wall's start 300 mm from the jamb leaves 50 mm, so that it runs from there.</summary>
    [Theory]
    [InlineData(999, 749, 2249)]
    [InlineData(300, 0, 1500)]
    [InlineData(352, 102, 1602)]
    public void A_lintel_made_in_lengths_is_the_shortest_with_its_bearings(double left, double from, double to)
    {
        var lengths = _rules.Catalog.Lintels[0] with { Lengths = [Mm(1250), Mm(1500), Mm(2000)] };
        var rules = _rules with { Catalog = _rules.Catalog with { Lintels = [lengths] } };
        var lintel = Plan([], rules, (left, left + 1000, 2020)).Lintels[0];
        Assert.Equal((from, to), (lintel.From.Mm, lintel.To.Mm));
    }

    /// <summary>An opening that another one stands on, a course's height over its head, has no place for a lintel.</summary>
    [Fact]
    public void Where_another_opening_stands_in_the_lintels_place_it_is_missing()
    {
        var openings = ImmutableArray.Create(Opening(0, 999, 2000, 0, 2020), Opening(1, 999, 2000, 2100, 2520));
        var findings = Plan([], _rules, openings).Findings;
        Assert.Contains("Another opening", findings.Single(finding => finding.Code == FindingCodes.LintelMissing).Message, StringComparison.Ordinal);
    }

    private static (ImmutableArray<Lintel> Lintels, ImmutableArray<Finding> Findings) Plan(params (double Left, double Right, double Head)[] openings) =>
        Plan([], _rules, openings);

    private static (ImmutableArray<Lintel> Lintels, ImmutableArray<Finding> Findings) Plan(
        ImmutableArray<ElevationRect> barred, LayoutRules rules, params (double Left, double Right, double Head)[] openings) =>
        Plan(barred, rules, [.. openings.Select((o, i) => Opening(i, o.Left, o.Right, 769, o.Head))]);

    /// <summary>In a wall of 8 m and twelve courses.</summary>
    private static (ImmutableArray<Lintel> Lintels, ImmutableArray<Finding> Findings) Plan(
        ImmutableArray<ElevationRect> barred, LayoutRules rules, ImmutableArray<OpeningLayout> openings)
    {
        var wall = WallSketch.Straight(Mm(7999), Mm(3019), Mm(240));
        var bands = Enumerable.Range(0, 12).Select(i => new CourseBand(i + 1, i, CourseKind.Unit, Mm(20 + (250 * i)), Mm(269 + (250 * i))));
        var lines = new WallLines(
            wall, new LevelGroup("G1", new CourseLines(Mm(20), rules.Catalog)), new ElevationOutline(wall.Outline), WallHeights.Of(wall, wall.Outline.Max(point => point.Z), rules), [.. bands]);
        return new LintelPlan(lines, openings, _ => [], barred, rules).Solve();
    }

    private static OpeningLayout Opening(int number, double left, double right, double bottom, double top)
    {
        var opening = WallSketch.Opening(number, left, right, bottom, top);
        return new OpeningLayout(opening, opening.Model, opening.Model, OnModule: false);
    }

    private static void AssertLies((double From, double To, double Bottom, double Top) place, LintelKind kind, Lintel lintel) =>
        Assert.Equal((place, kind), ((lintel.From.Mm, lintel.To.Mm, lintel.Bottom.Mm, lintel.Top.Mm), lintel.Kind));

    private static Length Mm(double mm) => Length.FromMm(mm);

    private static class FindingCodesOf
    {
        public const string MidCourse = "lintel-in-mid-course";
    }
}
