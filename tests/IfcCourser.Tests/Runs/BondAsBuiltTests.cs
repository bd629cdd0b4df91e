using System.Collections.Immutable;
using CsCheck;
using IfcCourser.Catalogs;
using IfcCourser.Coursing;
using IfcCourser.Findings;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Runs;
using IfcCourser.Slabs;
using IfcCourser.Tests.Support;
using IfcCourser.Units;

namespace IfcCourser.Tests.Runs;

/// <summary>Walls coursed again around bars that stand where they were not planned.</summary>
public sealed class BondAsBuiltTests
{
    private static readonly LayoutRules _inch = LayoutRules.For(BuiltInRuleSets.Get("us"), BuiltInCatalogs.Get("aac-in"), OpeningPolicy.Move);

    /// <summary>
    /// Worked by hand. Three units of 23 7/8 in and two joints make 71 7/8 in. A course beside one of three whole units has its joints 6 in or
    /// more from 24 and 48 in; three pieces can't have that, so it has four and at least two are cut: two cuts in every second course are the
    /// least. The joint in its middle stands from 30 to 42 in (18 and 54 in are the outermost places of the others, and no piece is over 24 in).
    /// A bar within 2 in of it leaves at least one of these two ends by 3 in and more, so there is a bond around it, and it takes no cut more.
    /// </summary>
    [Fact]
    public void A_bar_too_near_a_joint_is_laid_around_at_no_cost_where_that_can_be()
    {
        var layout = Alone();
        var planned = Assert.Single(layout.Walls);
        var (core, at) = MiddleBarNearAJoint(planned);
        Assert.True(Length.Abs(at - core.At) > (at < core.At ? core.PlayMinus : core.PlayPlus), "the plan happens to have room there");
        var (changed, bars, changes) = BondAsBuilt.Of(layout, [Off(planned, core, (at - core.At).Mm)]);
        var wall = Assert.Single(changed.Walls);
        Assert.Equal(BarAnswer.BondMoves, Assert.Single(bars).Answer);
        Assert.Equal(at, wall.Cores.Single(same => same.Id == core.Id).At);
        Assert.Equal(2 * (wall.Courses.Length / 2), LengthCuts(wall));
        Assert.Equal(LengthCuts(planned), LengthCuts(wall));
        Assert.Equal([core.Id], Assert.Single(changes).Bars);
        Assert.DoesNotContain(wall.Findings, finding => finding.Code == FindingCodes.CoreOnJoint);
        Assert.Empty(LayoutLaws.Breaches(changed));
    }

    /// <summary>
    /// By hand: an opening of 48 in asks for a bar within 16 in of each jamb. The bar at its right, moved by 14 in, stands further off than that, for it
    /// was planned 3 in or more from the jamb.
    /// </summary>
    [Fact]
    public void A_bar_as_built_too_far_from_an_opening_is_named()
    {
        var layout = WallSketch.LayOut(WallSketch.Alone(WallSketch.Straight(
            Length.FromInches(191.875), Length.FromInches(96), Length.FromInches(7.875), (Length.FromInches(48).Mm, Length.FromInches(96).Mm, Length.FromInches(24).Mm, Length.FromInches(72).Mm))), _inch);
        var wall = layout.Walls[0];
        var jamb = wall.Openings[0].Placed.Right;
        var bar = wall.Cores.Where(core => core.At > jamb).MinBy(core => core.At)!;
        Assert.InRange((bar.At - jamb).Inches, 3, 16);
        var (changed, _, _) = BondAsBuilt.Of(layout, [Off(wall, bar, Length.FromInches(14).Mm)]);
        Assert.DoesNotContain(wall.Findings, finding => finding.Code == FindingCodes.BarFarFromJamb);
        Assert.Equal(jamb, Assert.Single(changed.Walls[0].Findings, finding => finding.Code == FindingCodes.BarFarFromJamb).At!.S);
    }

    /// <summary>A bar that a new bond would clear, were there effort left to look for one.</summary>
    [Fact]
    public void A_search_that_was_cut_short_is_told()
    {
        var planned = Alone().Walls[0];
        var (core, at) = MiddleBarNearAJoint(planned);
        WallAsBuilt AsBuilt() => new(planned, [Off(planned, core, (at - core.At).Mm)], [], _inch);
        var (searched, spent) = (AsBuilt(), AsBuilt());
        spent.Effort.SpendPieces(BondEffort.Most);
        var (full, quick) = (searched.Solve(), spent.Solve());
        Assert.Single(full.Cleared);
        Assert.DoesNotContain(full.Wall.Findings, finding => finding.Code == FindingCodes.BondSearchEnded);
        Assert.Empty(quick.Cleared);
        Assert.Single(quick.Wall.Findings, finding => finding.Code == FindingCodes.BondSearchEnded);
    }

    /// <summary>Two inches from the wall's end there is less than the clearance of three, whatever the joints.</summary>
    [Fact]
    public void A_bar_too_near_the_end_of_a_wall_is_left()
    {
        var layout = Alone();
        var wall = layout.Walls[0];
        var (changed, bars, changes) = BondAsBuilt.Of(layout, [Off(wall, wall.Cores[0], 50.8 - wall.Cores[0].At.Mm)]);
        Assert.Equal(BarAnswer.Left, Assert.Single(bars).Answer);
        Assert.Empty(changes);
        Assert.Equal(wall.Courses.SelectMany(course => course.Pieces).Select(piece => (piece.From, piece.To)), changed.Walls[0].Courses.SelectMany(course => course.Pieces).Select(piece => (piece.From, piece.To)));
    }

    [Fact]
    public void A_finished_wall_read_back_is_the_same_wall() => WallGen.AloneOrBox.ForAll(
        generated =>
        {
            var layout = WallSketch.LayOut(generated.Model, generated.Rules);
            // Bars of corners are told to both walls once all are laid.
            var read = CornerCores.Fill([.. layout.Walls.Select(wall => (Wall: wall, Bond: new FinishedBond(wall, layout.Rules))).Select(own => own.Bond.With(own.Bond.Laid, own.Wall.Cores))], layout.Rules);
            foreach (var (wall, again) in layout.Walls.Zip(read))
            {
                Assert.Equal(wall.Courses.Select(Told), again.Courses.Select(Told));
                Assert.Equal(wall.Cores.Select(core => (core.At, core.PlayMinus, core.PlayPlus)), again.Cores.Select(core => (core.At, core.PlayMinus, core.PlayPlus)));
                Assert.Equal(wall.Findings.Select(finding => finding.ToString()).Order(StringComparer.Ordinal), again.Findings.Select(finding => finding.ToString()).Order(StringComparer.Ordinal));
                Assert.Equal((wall.Quantities.FullUnits, wall.Quantities.PartUnits, wall.Quantities.TroughUnits), (again.Quantities.FullUnits, again.Quantities.PartUnits, again.Quantities.TroughUnits));
            }
        },
        seed: "3BTbqY7T6k01", cases: 3);

    /// <summary>Bars off by up to 160 mm: the changed layout keeps every law, no bar is out that was in, and no rule is broken that was kept.</summary>
    [Fact]
    public void Bars_as_built_never_make_a_wall_worse() => Gen.Select(WallGen.Short, Gen.Double[-160, 160].Array[8]).ForAll(
        (generated, offs) =>
        {
            var layout = WallSketch.LayOut(generated.Model, generated.Rules with { Set = generated.Rules.Set with { Bars = generated.Rules.Set.Bars ?? _inch.Set.Bars } });
            var measured = layout.Walls.SelectMany(wall => wall.Cores.Select(core => (wall, core))).Select((bar, i) => Off(bar.wall, bar.core, offs[i % offs.Length])).ToImmutableArray();
            var (changed, bars, changes) = BondAsBuilt.Of(layout, measured);
            Assert.Empty(LayoutLaws.Breaches(changed));
            Assert.True(bars.Count(bar => bar.Answer == BarAnswer.Left) <= measured.Count(bar => bar.Where != BarPlace.Inside));
            Assert.Equal(bars.Count(bar => bar.Answer == BarAnswer.BondMoves), changes.Sum(change => change.Bars.Length));
            foreach (var (before, after) in layout.Walls.Zip(changed.Walls))
            {
                Assert.True(Breaches(after) <= Breaches(before), $"{after.Identity.GlobalId}: {Breaches(after)} after {Breaches(before)}");
            }

            foreach (var bar in bars.Where(bar => bar.Answer is BarAnswer.BondMoves or BarAnswer.CoreMoves))
            {
                var wall = changed.Walls.Single(wall => wall.Identity == bar.Wall.Identity);
                Assert.Equal(bar.At, wall.Cores.Single(core => core.Id == bar.Core.Id).At);
            }
        },
        seed: "0000KOIPe_S3", cases: 6);

    private static int Breaches(WallLayout wall) => wall.Findings.Count(finding =>
        finding.Code == FindingCodes.OverlapShort || finding.Code == FindingCodes.PieceShort || finding.Code == FindingCodes.CoreOnJoint);

    private static int LengthCuts(WallLayout wall) => wall.Courses.Sum(course => course.Pieces.Count(piece => piece.Cut.HasFlag(Cuts.Length)));

    private static (int Number, string Pieces) Told(Course course) => (course.Number, string.Join("; ", course.Pieces.Select(piece =>
        $"{piece.Id} {piece.Product} {piece.From} {piece.To} {piece.Bottom} {piece.Top} {piece.Cut} {piece.IsFull} {piece.IsTrough} {string.Join(',', piece.Cores)} {piece.Notch} {piece.Outline?.Length}")));

    private static Layout Alone() => WallSketch.LayOut(WallSketch.Alone(WallSketch.Straight(Length.FromInches(71.875), Length.FromInches(96), Length.FromInches(7.875))), _inch);

    /// <summary>A bar of <see cref="Alone"/>, and a place 2 in beside the middle joint of its second course, out of the bar's play.</summary>
    private static (Core Core, Length At) MiddleBarNearAJoint(WallLayout planned)
    {
        var core = planned.Cores.Single(core => core.At > Length.FromInches(20) && core.At < Length.FromInches(52));
        var joint = planned.Courses.Select(course => course.Pieces).Single(pieces => pieces[0].Id == "C2P1").Select(piece => piece.To).MinBy(to => Length.Abs(to - Length.FromInches(36)));
        return (core, Length.Abs(joint + Length.FromInches(2) - core.At) > Length.FromInches(1.75) ? joint + Length.FromInches(2) : joint - Length.FromInches(2));
    }

    private static BarAsBuilt Off(WallLayout wall, Core core, double along)
    {
        var bar = new PlacedBar(1, "1", wall.Identity.GlobalId, core.Id, wall.Frame.PointAt(core.At, core.Across, default).Plan + (wall.Frame.Direction * along));
        return BarsAsBuilt.Held(bar, wall, core);
    }
}
