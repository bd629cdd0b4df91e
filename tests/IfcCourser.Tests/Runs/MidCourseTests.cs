using IfcCourser.Catalogs;
using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Tests.Support;
using IfcCourser.Units;

namespace IfcCourser.Tests.Runs;

/// <summary>Heads that do not lie on course lines, in whole layouts. aac-mm: undersides at 20 + 250 n.</summary>
public sealed class MidCourseTests
{
    /// <summary>
    /// Head 120 mm over a line: the blocks under both bearings are whole in length or reach the least piece beyond the
    /// bearing, keep 119 mm under it and full height behind its end; over it blocks keep 129 mm.
    /// </summary>
    [Theory]
    [InlineData(OpeningPolicy.Keep)]
    [InlineData(OpeningPolicy.Move)]
    public void A_lintel_in_mid_course_is_let_into_notched_blocks(OpeningPolicy policy)
    {
        var laid = LaidOut(policy, 2140);
        var lintel = Assert.Single(laid.Lintels);
        Assert.Equal(2140, lintel.Bottom.Mm);

        var seat = laid.Courses[8].Pieces.Where(piece => lintel.RestsOn.Contains(piece.Id, StringComparer.Ordinal)).ToList();
        Assert.Equal(2, seat.Count);
        Assert.All(seat, piece =>
        {
            Assert.True(piece.Length >= Length.FromMm(300));
            Assert.True(piece.Cut.HasFlag(Cuts.Notch));
            Assert.Equal(119, HeightAt(piece, piece.From < lintel.From ? piece.To : piece.From).Mm);
            Assert.Equal(249, HeightAt(piece, piece.From < lintel.From ? piece.From : piece.To).Mm);
        });

        var over = laid.Courses[9].Pieces.Where(piece => piece.From >= lintel.From && piece.To <= lintel.To).ToList();
        Assert.NotEmpty(over);
        Assert.All(over, piece => Assert.Equal((129d, Cuts.Height), (piece.Height.Mm, piece.Cut & Cuts.Height)));
        Assert.DoesNotContain(laid.Findings, finding => finding.Code == FindingCodes.OverlapShort || finding.Code == FindingCodes.OutlineNotFilled);
    }

    /// <summary>Head 60 mm over a line, where a seat of 59 mm can't be cut: moved openings go up 190 mm, with a warning that says how far down would do too.</summary>
    [Fact]
    public void Where_no_seat_can_be_cut_the_head_goes_up_to_the_line()
    {
        var laid = LaidOut(OpeningPolicy.Move, 2080);
        Assert.Equal((2270d, 2270d), (laid.Openings[0].Placed.Top.Mm, laid.Lintels[0].Bottom.Mm));
        var raised = laid.Findings.Single(finding => finding.Code == FindingCodes.HeadRaised);
        Assert.Equal(Severity.Warning, raised.Code.Severity);
        Assert.Contains("goes up 190 mm", raised.Message, StringComparison.Ordinal);
        Assert.Contains("lower it 60 mm", raised.Message, StringComparison.Ordinal);
    }

    /// <summary>The same kept: the opening stays, its lintel lies on the next line, and no block hangs in the 190 mm between.</summary>
    [Fact]
    public void A_kept_head_leaves_a_gap_that_is_named()
    {
        var laid = LaidOut(OpeningPolicy.Keep, 2080);
        var (placed, lintel) = (laid.Openings[0].Placed, laid.Lintels[0]);
        Assert.Equal((2080d, 2270d), (placed.Top.Mm, lintel.Bottom.Mm));
        Assert.DoesNotContain(
            laid.Courses[8].Pieces, piece => piece.From < placed.Right && piece.To > placed.Left);
        Assert.Contains(laid.Findings, finding => finding.Code == FindingCodes.HeadOffCourse && finding.Message.Contains("190 mm under its lintel", StringComparison.Ordinal));
        Assert.Contains(laid.Findings, finding => finding.Code == FindingCodes.OutlineNotFilled);
    }

    /// <summary>A garage front of 5 m: no example lintel spans it; a beam is formed and shored, and its courses are left out.</summary>
    [Fact]
    public void A_garage_front_is_laid_out_under_a_formed_beam()
    {
        var wall = WallSketch.Straight(Length.FromMm(7999), Length.FromMm(3019), Length.FromMm(240), (999, 6000, 0, 2270));
        var laid = WallSketch.LayOut(wall, Rules(OpeningPolicy.Keep));
        var beam = Assert.Single(laid.Lintels);
        Assert.Equal((LintelKind.Formed, 799d, 6200d, 2270d, 2769d), (beam.Kind, beam.From.Mm, beam.To.Mm, beam.Bottom.Mm, beam.Top.Mm));
        Assert.Contains("shored", laid.Findings.Single(finding => finding.Code == FindingCodes.LintelFormed).Message, StringComparison.Ordinal);
        Assert.DoesNotContain(
            laid.Courses.SelectMany(course => course.Pieces),
            piece => piece.From < beam.To && piece.To > beam.From && piece.Bottom < beam.Top && piece.Top > beam.Bottom);
    }

    private static WallLayout LaidOut(OpeningPolicy policy, double head) => WallSketch.LayOut(
        WallSketch.Straight(Length.FromMm(5999), Length.FromMm(2769), Length.FromMm(240), (2499, 3500, 1019, head)), Rules(policy));

    private static LayoutRules Rules(OpeningPolicy policy) => LayoutRules.For(BuiltInRuleSets.Get("eu"), BuiltInCatalogs.Get("aac-mm"), policy);

    /// <summary>How high a piece stands just inside one of its ends.</summary>
    private static Length HeightAt(Piece piece, Length end)
    {
        var inside = end == piece.From ? end + Length.FromMm(1) : end - Length.FromMm(1);
        return new ElevationOutline(piece.Outline!.Value).HighestWithin(Length.Min(end, inside), Length.Max(end, inside)) - piece.Bottom;
    }
}
