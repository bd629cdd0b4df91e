using IfcCourser.Catalogs;
using IfcCourser.Findings;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Tests.Support;
using IfcCourser.Units;

namespace IfcCourser.Tests.Runs;

public sealed class BondBeamTests
{
    private static readonly BondBeamRule _usBeams = BuiltInRuleSets.Get("us").BondBeams!;

    /// <summary>
    /// The state rule of WAC 246-359-440 (3) (checkvalues.csv R-011, read): bond beams each 4 ft and at the top, laps of 20 in, lintels 20 in past each side of
    /// openings. Worked by hand: the middle of course n lies 3/8 + 8 (n - 1) + 3 13/16 in over the base; the sixth's, 44 3/16 in, is the last below 48 in, and
    /// the twelfth's, 92 3/16 in, lies 48 in over it. The window, sill on course 4 and head on course 9, interrupts the sixth.
    /// </summary>
    [Fact]
    public void The_published_wall_has_beams_each_4_ft_and_20_in_past_its_opening()
    {
        var rules = Blocks(_usBeams with
        {
            LargestSpacing = Inches(48),
            Openings = _usBeams.Openings! with { Extension = Inches(20) },
            Bars = _usBeams.Bars with { Lap = Inches(20) },
        });
        var wall = WallSketch.LayOut(
            WallSketch.Straight(Inches(479.625), Inches(96), Inches(7.625), (95.625 * 25.4, 144 * 25.4, 32 * 25.4, 72.375 * 25.4)),
            rules);

        Assert.Equal([6, 12], wall.Courses.Where(course => course.Kind == CourseKind.BondBeam).Select(course => course.Number));
        Assert.Equal(Inches(48), wall.Courses[5].Top);
        var (left, right) = (wall.Openings[0].Placed.Left, wall.Openings[0].Placed.Right);
        Assert.All(wall.Courses[5].Pieces, piece => Assert.True(piece.IsTrough));
        Assert.Equal(FindingCodes.BondBeamInterrupted, Assert.Single(wall.Findings, finding => finding.At?.Course == 6 && finding.Code.Id.StartsWith("bond-beam", StringComparison.Ordinal)).Code);
        foreach (var why in new[] { "over-opening", "under-opening" })
        {
            var beam = wall.BondBeams.Single(beam => beam.Why.Contains(why, StringComparer.Ordinal));
            Assert.True(beam.From + Inches(2) <= left - Inches(20) && beam.To - Inches(2) >= right + Inches(20), why);
        }

        var top = wall.BondBeams.Single(beam => beam.Course == 12);
        Assert.Equal(("1 No. 4", Inches(0), Inches(479.625)), (top.Bars, top.From, top.To));
        Assert.Equal([(1, 153.875, 173.875), (1, 305.75, 325.75)], top.Laps.Select(lap => (lap.Bar, lap.From.Inches, lap.To.Inches)));
    }

    /// <summary>A layout has volumes to the cubic centimetre. By hand: (7 5/8 - 2 x 1 1/4) x (7 5/8 - 1 1/2) = 31 25/64 in2, over 239 5/8 in; checkvalues.csv has no trough of its own.</summary>
    [Fact]
    public void Grout_fills_the_hollow_from_end_to_end()
    {
        var wall = WallSketch.LayOut(WallSketch.Straight(Inches(239.625), Inches(96), Inches(7.625)), Blocks(_usBeams));
        var beam = Assert.Single(wall.BondBeams);
        Assert.Equal((31 + (25 / 64.0)) * 239.625 * 0.0254 * 0.0254 * 0.0254, beam.GroutVolume, 6);
        Assert.Equal(beam.GroutVolume, wall.Quantities.BeamGrout);
        Assert.Equal(wall.Courses[^1].Pieces.Length, wall.Quantities.TroughUnits);
    }

    /// <summary>
    /// Where no trough is made for the width, the beam is formed: wall thickness by its height by length. Twelve courses of 8 in end
    /// at 96 in; an eighth of an inch more is less than a joint, and the beam is struck off there.
    /// </summary>
    [Theory]
    [InlineData(96, 7.625)]
    [InlineData(96.125, 7.75)]
    public void A_wall_without_a_trough_of_its_width_has_a_formed_beam_up_to_its_top(double height, double formed)
    {
        var rules = Blocks(_usBeams);
        var wall = WallSketch.LayOut(WallSketch.Straight(Inches(239.625), Inches(height), Inches(7.625)), rules with { Catalog = rules.Catalog with { Troughs = [] } });
        var beam = Assert.Single(wall.BondBeams);
        Assert.Equal(BondBeamKind.Formed, beam.Kind);
        Assert.Empty(wall.Courses[^1].Pieces);
        Assert.Equal((Inches(88.375), Inches(height)), (beam.Bottom, beam.Top));
        Assert.Equal(7.625 * formed * 239.625 * 0.0254 * 0.0254 * 0.0254, beam.GroutVolume, 6);
        Assert.Contains(wall.Findings, finding => finding.Code == FindingCodes.BondBeamFormed);
    }

    /// <summary>Worked by hand: 1/2 + 12 x 8 - 1/8 = 96 3/8 in at the eaves, where the gable's twelfth course ends.</summary>
    [Fact]
    public void Beams_at_the_eaves_run_on_through_gables_and_have_bent_bars_at_each_corner()
    {
        var layout = Gables(BeamedTops.Level);
        Assert.All(layout.Walls, wall => Assert.Equal(CourseKind.BondBeam, wall.Courses[11].Kind));
        Assert.All([0, 2], i => Assert.Equal(["top"], layout.Walls[i].BondBeams.Single(beam => beam.Course == 12).Why));
        Assert.All([1, 3], i => Assert.Equal(["corner"], layout.Walls[i].BondBeams.Single(beam => beam.Course == 12).Why));
        Assert.Equal(4, layout.Walls.SelectMany(wall => wall.BondBeams).Where(beam => beam.Course == 12).Sum(beam => beam.Corners.Length));
    }

    /// <summary>
    /// Worked by hand: each slope runs 120 in and rises 60 in, so that a beam 7 7/8 in deep across it is u = 7 7/8 x sqrt(1 + 1/4) in deep upright. It
    /// covers 120 u less the triangle under the eaves' level, u by 2 u, halved: 120 u - u x u in2. No block reaches into it but by a dust of a corner.
    /// </summary>
    [Fact]
    public void A_raked_beam_is_as_deep_as_a_course_and_ends_on_the_beam_at_the_eaves()
    {
        var layout = Gables(BeamedTops.Raked);
        var upright = 7.875 * Math.Sqrt(1.25);
        var volume = ((120 * upright) - (upright * upright)) * 7.875 * 0.0254 * 0.0254 * 0.0254;
        Assert.All([1, 3], i =>
        {
            var gable = layout.Walls[i];
            var raked = gable.BondBeams.Where(beam => beam.Kind == BondBeamKind.Raked).ToList();
            Assert.Equal([(0d, 120d), (120d, 240d)], raked.Select(beam => (beam.From.Inches, beam.To.Inches)));
            Assert.All(raked, beam => Assert.Equal(volume, beam.GroutVolume, 6));
            Assert.Equal(CourseKind.BondBeam, gable.Courses[11].Kind);
            double Above(double s, double z) => z - 96.375 - Math.Max(0, (Math.Min(s, 240 - s) / 2) - upright);
            foreach (var piece in gable.Courses.SelectMany(course => course.Pieces))
            {
                // A corner of an uncut piece may reach in as a triangle of slope 1 : 2 that is less than 1 mm along its edges: no mason saws that off.
                var corner = Math.Max(Above(piece.From.Inches, piece.Top.Inches), Above(piece.To.Inches, piece.Top.Inches));
                Assert.True(piece.Outline?.Max(point => Above(point.S.Inches, point.Z.Inches)) <= 0.001
                    || (piece.Outline is null && Math.Max(corner, 0) * Math.Max(corner, 0) * 25.4 * 25.4 <= (piece.Length + piece.Height).Mm), piece.Id);
            }

        });
        Assert.Empty(LayoutLaws.Breaches(layout));
    }

    [Fact]
    public void No_solid_lintel_stops_a_beam_where_a_trough_lintel_spans_the_opening()
    {
        // The head lies under the twelfth course, which is the top's beam; the catalog's first lintel for 40 in is a solid one.
        var wall = WallSketch.LayOut(
            WallSketch.Straight(Inches(239.875), Inches(96.375), Inches(7.875), (96 * 25.4, 136 * 25.4, 0, 88.5 * 25.4)),
            LayoutRules.For(BuiltInRuleSets.Get("us"), BuiltInCatalogs.Get("aac-in"), OpeningPolicy.Keep));
        Assert.Equal(LintelKind.Trough, Assert.Single(wall.Lintels).Kind);
        var beam = Assert.Single(wall.BondBeams);
        Assert.Equal((Length.Zero, Inches(239.875)), (beam.From, beam.To));
        Assert.Equal(["over-opening", "top"], beam.Why);
    }

    /// <summary>A box of 240 in sides, two of them gables whose eaves lie at 96 3/8 in and whose ridges lie 60 in higher.</summary>
    private static Layout Gables(BeamedTops tops)
    {
        var (side, eaves, us) = (Inches(240), Inches(96.375), BuiltInRuleSets.Get("us"));
        var box = WallSketch.Box(side, side, eaves, Inches(7.875));
        var model = box with
        {
            Walls =
            [
                .. box.Walls.Select((wall, i) => i % 2 == 0 ? wall : wall with
                {
                    Outline = [new(Length.Zero, Length.Zero), new(side, Length.Zero), new(side, eaves), new(side / 2, eaves + Inches(60)), new(Length.Zero, eaves)],
                }),
            ],
        };
        return WallSketch.LayOut(model, LayoutRules.For(us with { BondBeams = us.BondBeams! with { Tops = tops } }, BuiltInCatalogs.Get("aac-in"), OpeningPolicy.Move));
    }

    private static LayoutRules Blocks(BondBeamRule beams) =>
        LayoutRules.For(BuiltInRuleSets.Get("us") with { BondBeams = beams, MovementJoints = null }, BuiltInCatalogs.Get("block-in"), OpeningPolicy.Move);

    private static Length Inches(double inches) => Length.FromInches(inches);
}
