using CsCheck;
using IfcCourser.Geometry;
using IfcCourser.Slabs;
using IfcCourser.Units;

namespace IfcCourser.Tests.Slabs;

/// <summary>Slabs of known shape under a box of four walls.</summary>
public sealed class SlabSurveyTests
{
    private const double Close = 1e-6;

    /// <summary>IBC 2104.1.2.1 and TMS 602 3.3 B: the first bed is 1/4 to 3/4 in; the datum is the lowest with 1/4 in everywhere.</summary>
    [Fact]
    public void A_level_slab_takes_the_least_bed_everywhere()
    {
        var survey = SlabCase.Survey(SlabCase.Inch, SlabCase.Csv(SlabCase.Grid(800), _ => 3));
        Assert.Equal(3 + (25.4 / 4), survey.Datum, Close);
        Assert.All(survey.Beds, bed => Assert.Equal(25.4 / 4, bed.Mean, Close));
        Assert.Equal(RemedyKind.RaiseDatum, Assert.Single(survey.Remedies).Kind);
        Assert.Equal(survey.Field.Area * 25.4 / 4, survey.Field.Mortar(survey.Chosen.Raised), survey.Field.Area * Close);
    }

    /// <summary>On a plane the bed is that under the middle of each block, and the highest corner of all has the least.</summary>
    [Fact]
    public void A_sloping_slab_is_measured_exactly()
    {
        static double Plane(Vector2 p) => 2 + (p.X / 1000) - (p.Y / 2000);
        var survey = SlabCase.Survey(SlabCase.Metric, SlabCase.Csv(SlabCase.Grid(700), Plane));
        var highest = survey.Beds.SelectMany(bed => bed.Block.Loop).Max(Plane);
        Assert.Equal(highest + 10, survey.Datum, Close);
        Assert.All(survey.Beds, bed => Assert.Equal(survey.Datum - Plane(bed.Block.Middle), bed.Mean, 1e-5));
        Assert.Equal(10, survey.Beds.Min(bed => bed.Least), Close);
    }

    /// <summary>Trapezoids: beds 10, 14 and 19 mm at 0, 5 and 10 m under a wall 300 mm thick take 0.04275 m3; 1/4, 1/2 and 3/4 in at 0, 10 and 20 ft under 7 7/8 in take 0.5469 ft3 (checkvalues.csv Q-LVL-02).</summary>
    [Theory]
    [InlineData(300, 5000, 10, 14, 19, 0.04275e9, 10)]
    [InlineData(7.875 * 25.4, 3048, 6.35, 12.7, 19.05, 0.546875 * 304.8 * 304.8 * 304.8, 10)]
    public void Mortar_under_a_strip_is_that_of_its_trapezoids(double thickness, double half, double first, double middle, double last, double expected, double within)
    {
        var volume = Strip(0, half, thickness, first, middle).Volume + Strip(half, 2 * half, thickness, middle, last).Volume;
        Assert.Equal(expected, volume, within);
    }

    /// <summary>
    /// IBC 2104.1.2.1, TMS 602 3.3 B (checkvalues.csv J-006, J-007, J-011): a bed takes up 1/2 in, no more; 1 1/4 in under a fully grouted course on concrete. A bed that is 1 in
    /// thick where the slab is lowest is too thick in a partially grouted wall (J-009), not in a fully grouted one (J-010).
    /// </summary>
    [Theory]
    [InlineData(0.75, 0.75, false)]
    [InlineData(0.75, 1.25, true)]
    [InlineData(0.49, 0.75, true)]
    [InlineData(0.51, 0.75, false)]
    [InlineData(0.99, 1.25, true)]
    [InlineData(1.01, 1.25, false)]
    public void The_bed_takes_up_what_lies_between_its_limits(double spread, double thickest, bool fits)
    {
        var loop = SlabCase.Survey(SlabCase.Inch, SlabCase.Csv(SlabCase.Grid(800), _ => 0)).Beds.SelectMany(bed => bed.Block.Loop).ToArray();
        var (from, to) = (loop.Min(p => p.X), loop.Max(p => p.X));
        var survey = SlabCase.Survey(
            SlabCase.Inch, SlabCase.Csv(SlabCase.Grid(800), p => spread * 25.4 * (p.X - from) / (to - from)), thickest: Length.FromInches(thickest));
        Assert.Equal(fits, survey.Findings.All(finding => finding.Code.Id != "slab-out-of-level"));
        Assert.Equal(spread * 25.4, survey.Spread, 1e-5);
    }

    /// <summary>ACI 117-10 4.4.1 (checkvalues.csv T-ACI-sog): the top of a slab on ground lies within 3/4 in of its level.</summary>
    [Theory]
    [InlineData(0.74, true)]
    [InlineData(-0.74, true)]
    [InlineData(0.76, false)]
    [InlineData(-0.76, false)]
    public void A_slab_off_its_level_is_told(double inches, bool isWithin)
    {
        var survey = SlabCase.Survey(SlabCase.Inch, SlabCase.Csv(SlabCase.Grid(800), _ => inches * 25.4));
        Assert.Equal(isWithin, survey.Findings.All(finding => finding.Code.Id != "slab-off-level"));
        Assert.Equal((inches + 0.25 - 0.5) * 25.4, survey.Chosen.Raised, Close);
    }

    /// <summary>A bed of 3/16 in is too thin (checkvalues.csv J-008): no bed may be asked for that is at most so thick, and the slab may not come so near.</summary>
    [Fact]
    public void A_bed_under_its_least_is_refused()
    {
        var file = ReadingsReader.Read(SlabCase.Csv(SlabCase.Grid(800), _ => 0), "readings.csv", null).Value!;
        Assert.Contains("1/4\"", SlabSurveys.Of(SlabCase.Inch, file, null, Length.FromInches(3.0 / 16)).Fault!.ToString(), StringComparison.Ordinal);
        Assert.True(SlabSurveys.Of(SlabCase.Inch, file, null, Length.FromInches(1.0 / 4)).IsOk);
    }

    /// <summary>Trim, grind, fill, raise the datum and units of another height are all weighed, and the cheapest that brings the bed into its limits comes first.</summary>
    [Fact]
    public void All_ways_are_weighed()
    {
        static double Cone(Vector2 p) => 26 * Math.Max(0, 1 - ((p - new Vector2(1000, 0)).Length / 3000));
        var survey = SlabCase.Survey(SlabCase.Metric, SlabCase.Csv(SlabCase.Grid(300), Cone));
        Assert.Equal(Enum.GetValues<RemedyKind>(), survey.Remedies.Select(remedy => remedy.Kind).Order());
        Assert.Equal(survey.Remedies.Where(remedy => remedy.IsPossible).Min(remedy => remedy.Effort), survey.Chosen.Effort);
        var other = SlabRemedies.Of(survey.Field, SlabCase.Metric.Rules.Catalog with { OtherHeights = [Length.FromMm(239)] }).Single(remedy => remedy.Kind == RemedyKind.OtherUnits);
        Assert.Equal((false, true), (survey.Remedies.Single(remedy => remedy.Kind == RemedyKind.OtherUnits).IsPossible, other.IsPossible));
        Assert.True(other.Volume > 0 && other.Area > 0 && other.Mortar > 0);
    }

    /// <summary>The fewest units of other heights against every height of the course to a tenth of a millimetre, on random beds of whole millimetres.</summary>
    [Fact]
    public void No_height_of_the_course_needs_fewer_other_units() => Gen.Select(Gen.Int[-60, 60].Array[5], Gen.Int[1, 80]).ForAll(
        (beds, lower) =>
        {
            var catalog = SlabCase.Metric.Rules.Catalog with { OtherHeights = [SlabCase.Metric.Rules.Catalog.UnitHeight - Length.FromMm(lower)] };
            var (blocks, limits) = (FirstCourseBlock.Of(SlabCase.Metric.Walls), catalog.LevellingBed);
            var field = new BedField([.. beds.Select((bed, i) => new BlockFacets(blocks[i], [Strip(0, 1000, 240, bed, bed)], 0) { OverReadings = [] })], limits);
            int? fewest = null;
            for (var raised = -200.0; raised <= 200; raised += 0.1)
            {
                var at = Math.Round(raised, 1);
                bool Fits(double bed) => bed >= limits.Min.Mm && bed <= limits.Max.Mm;
                if (beds.All(bed => Fits(bed + at) || Fits(bed + at + lower)) && beds.Count(bed => !Fits(bed + at)) is var others && (fewest is null || others < fewest))
                {
                    fewest = others;
                }
            }

            Assert.Equal(fewest, UnitHeights.Of(field, catalog)?.Blocks);
        },
        cases: 40,
        seed: "0000000000f6");

    [Fact]
    public void A_hump_is_named_where_it_lies()
    {
        static double Cone(Vector2 p) => 40 * Math.Max(0, 1 - (p.Length / 1500));
        var survey = SlabCase.Survey(SlabCase.Metric, SlabCase.Csv(SlabCase.Grid(250), Cone));
        Assert.True(survey.Remedies.Length > 1);
        Assert.All(survey.Beds.Where(bed => bed.High > 0), bed => Assert.True(bed.Block.Loop.Min(corner => corner.Length) < 1500));
        Assert.Contains(survey.Findings, finding => finding.Code.Id == "bed-out-of-range");
    }

    /// <summary>Rooms do not count: a hump in the middle of the box changes nothing.</summary>
    [Fact]
    public void Only_what_lies_under_blocks_counts()
    {
        var level = SlabCase.Survey(SlabCase.Metric, SlabCase.Csv(SlabCase.Grid(200), _ => 0));
        var hump = SlabCase.Survey(SlabCase.Metric, SlabCase.Csv(SlabCase.Grid(200), p => (p - new Vector2(2500, 1900)).Length < 600 ? 80 : 0));
        Assert.Equal(level.Datum, hump.Datum, Close);
        Assert.Single(hump.Remedies);
    }

    /// <summary>The level that costs least is no dearer than any of a fine grid.</summary>
    [Fact]
    public void The_datum_costs_least() => Gen.Select(Gen.Double[5, 60], Gen.Double[0, 4000], Gen.Double[0, 3000], Gen.Double[0, 12], Gen.Int[0, 1])
        .ForAll(
            c =>
            {
                double Shape(Vector2 p) => (c.Item1 * Math.Max(0, 1 - ((p - new Vector2(c.Item2, c.Item3)).Length / 2000))) + (c.Item4 * p.Y / 1000);
                var survey = SlabCase.Survey(SlabCase.Metric, SlabCase.Csv(SlabCase.Grid(400), Shape));
                var field = survey.Field;
                if (field.LowestClear <= field.HighestThin)
                {
                    Assert.Equal(field.LowestClear, survey.Chosen.Raised, Close);
                    return;
                }

                var high = c.Item5 == 0 ? 1.0 : 6.0;
                double Cost(double raised) => (high * field.High(raised).Volume) + (2 * field.Low(raised).Volume);
                var best = Cost(SlabRemedies.LeastEffort(field, high, 2));
                for (var raised = field.HighestThin - 1; raised <= field.LowestClear + 1; raised += 0.05)
                {
                    Assert.True(best <= Cost(raised) + 1, $"{raised} costs {Cost(raised)}, not {best}");
                }
            },
            cases: 20,
            seed: "0000000000c3");

    /// <summary>High and low volumes against sums over a fine raster of each block.</summary>
    [Fact]
    public void Volumes_agree_with_a_raster()
    {
        static double Cone(Vector2 p) => 35 * Math.Max(0, 1 - ((p - new Vector2(1000, 0)).Length / 1800));
        var survey = SlabCase.Survey(SlabCase.Metric, SlabCase.Csv(SlabCase.Grid(300), Cone));
        var (field, raised) = (survey.Field, survey.Chosen.Raised);
        var (high, low, room) = (0.0, 0.0, 0.0);
        const double Step = 5;
        foreach (var block in survey.Beds.Select(bed => bed.Block))
        {
            var (left, right, bottom, top) = (block.Loop.Min(p => p.X), block.Loop.Max(p => p.X), block.Loop.Min(p => p.Y), block.Loop.Max(p => p.Y));
            var (columns, rows) = ((int)Math.Ceiling((right - left) / Step), (int)Math.Ceiling((top - bottom) / Step));
            var cell = (right - left) * (top - bottom) / (columns * rows);
            for (var i = 0; i < columns * rows; i++)
            {
                var place = new Vector2(left + ((right - left) * ((i % columns) + 0.5) / columns), bottom + ((top - bottom) * ((i / columns) + 0.5) / rows));
                var bed = block.Underside + raised - survey.Surface.At(place - survey.Surface.Origin);
                (high, low, room) = (high + (cell * Math.Max(0, 10 - bed)), low + (cell * Math.Max(0, bed - 30)), room + (cell * bed));
            }
        }

        Assert.Equal(room, field.Room(raised), room * 1e-4);
        Assert.Equal(high, field.High(raised).Volume, Math.Max(high, 1) * 0.01);
        Assert.Equal(low, field.Low(raised).Volume, Math.Max(low, 1) * 0.01);
    }

    /// <summary>
    /// Noise of at most e over a level slab, by hand: between readings the surface stays within e of the slab, so the datum, 10 mm over the highest place under
    /// a block, lies within e of 10 mm, and each bed within 2 e of 10 mm; the same noise everywhere lifts it by just that.
    /// </summary>
    [Fact]
    public void Noise_moves_the_datum_by_no_more_than_itself() => Gen.Select(Gen.Double[0, 4], Gen.Double[-1, 1].Array[64]).ForAll(
        (most, noise) =>
        {
            var next = 0;
            var survey = SlabCase.Survey(SlabCase.Metric, SlabCase.Csv(SlabCase.Grid(900), _ => most * noise[next++ % noise.Length]));
            Assert.InRange(survey.Datum, 10 - most - Close, 10 + most + Close);
            Assert.All(survey.Beds, bed => Assert.InRange(bed.Mean, 10 - Close, 10 + (2 * most) + Close));
            Assert.Equal(10 + most, SlabCase.Survey(SlabCase.Metric, SlabCase.Csv(SlabCase.Grid(900), _ => most)).Datum, Close);
        },
        cases: 10,
        seed: "0000000000e5");

    /// <summary>Between readings of a plane the surface is the plane, whatever the triangles. Places are to the centimetre: triangles of under a square millimetre are let go.</summary>
    [Fact]
    public void The_surface_is_the_plane_through_readings_of_one() => Gen.Select(Gen.Double[-50, 50], Gen.Double[-0.01, 0.01], Gen.Double[-0.01, 0.01], Gen.Int[0, 500].Array[30])
        .ForAll(
            c =>
            {
                double Plane(Vector2 p) => c.Item1 + (c.Item2 * p.X) + (c.Item3 * p.Y);
                var places = c.Item4.Chunk(2).Select(pair => new Vector2(10 * pair[0], 10 * pair[1])).Distinct().ToArray();
                var surface = SlabSurface.Of([.. places.Select((p, i) => new PlacedReading([i], string.Empty, p, Plane(p)))])!;
                var inside = (places[0] * 0.5) + (places[1] * 0.25) + (places[2] * 0.25);
                Assert.Equal(Plane(inside), surface.At(inside - surface.Origin), 1e-6);
            },
            cases: 100,
            seed: "0000000000d4");

    [Fact]
    public void Blocks_beyond_the_readings_are_named()
    {
        var survey = SlabCase.Survey(SlabCase.Metric, SlabCase.Csv(SlabCase.Grid(500, -400), _ => 0));
        Assert.Contains(survey.Findings, finding => finding.Code.Id == "bed-beyond-readings");
        Assert.All(survey.Beds, bed => Assert.Equal(10, bed.Mean, Close));
    }

    /// <summary>The slab under one of three blocks lies 40 mm higher: a unit 40 mm lower brings it into line with beds of 10 to 30 mm, one 70 mm lower does not.</summary>
    [Theory]
    [InlineData(209, true)]
    [InlineData(179, false)]
    public void Units_of_another_height_are_offered_where_they_fit(double height, bool fits)
    {
        var blocks = FirstCourseBlock.Of(SlabCase.Metric.Walls);
        BlockFacets On(int block, double bed) => new(blocks[block], [Strip(0, 1000, 240, bed, bed)], 0) { OverReadings = [] };
        var field = new BedField([On(0, 20), On(1, -20), On(2, 22)], SlabCase.Metric.Rules.Catalog.LevellingBed);
        var other = UnitHeights.Of(field, SlabCase.Metric.Rules.Catalog with { OtherHeights = [Length.FromMm(height)] });
        Assert.Equal(fits, other is not null);
        Assert.Equal((1, 40), fits ? (other!.Blocks, other.Depth) : (1, 40));
    }

    private static Facet Strip(double from, double to, double thickness, double before, double after) => new(
        [new(new(from, 0), before), new(new(to, 0), after), new(new(to, thickness), after), new(new(from, thickness), before)]);
}
