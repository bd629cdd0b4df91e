using System.Globalization;
using IfcCourser.Geometry;
using IfcCourser.Slabs;

namespace IfcCourser.Tests.Slabs;

/// <summary>Readings files as people write them, and as they should not.</summary>
public sealed class ReadingsTests
{
    private static readonly Vector2[] _places = [.. SlabCase.Grid(600)];

    private static double Shape(Vector2 p) => 12 * Math.Sin(p.X / 2000) * Math.Cos(p.Y / 1700);

    private static double Datum => SlabCase.Survey(SlabCase.Metric, SlabCase.Csv(_places, Shape)).Datum;

    [Theory]
    [InlineData("mm", 1)]
    [InlineData("m", 1000)]
    [InlineData("ft", 304.8)]
    [InlineData("in", 25.4)]
    public void The_unit_leaves_the_answer(string unit, double mm)
    {
        Assert.Equal(Datum, SlabCase.Survey(SlabCase.Metric, Rows($"x_{unit},y ({unit}),z [{unit}]", mm)).Datum, 1e-6);
        Assert.Equal(Datum, SlabCase.Survey(SlabCase.Metric, Rows("x,y,z", mm), unit).Datum, 1e-6);
    }

    [Fact]
    public void Rod_readings_are_taken_from_the_instruments_height()
    {
        var rows = _places.Select((p, i) => string.Create(CultureInfo.InvariantCulture, $"{p.X:R};{p.Y:R};{(i == 0 ? "1500" : string.Empty)};{1500 - Shape(p):R}").Replace('.', ','));
        Assert.Equal(Datum, SlabCase.Survey(SlabCase.Metric, "x_mm;y_mm;hi_mm;rod_mm\n" + string.Join('\n', rows)).Datum, 1e-6);
    }

    /// <summary>Axes of the crew's own, turned by 3 in 5 and moved: control points bring them back.</summary>
    [Fact]
    public void Turned_axes_leave_the_answer()
    {
        static Vector2 Local(Vector2 p) => new(70_000 + (0.8 * p.X) - (0.6 * p.Y), -4_000 + (0.6 * p.X) + (0.8 * p.Y));
        var control = SlabCase.Metric.ShootingList.Take(5).Select(point => Row(Local(point.Point.Plan), string.Empty, "CONTROL", point.Number.ToString(CultureInfo.InvariantCulture)));
        var rows = _places.Select(p => Row(Local(p), Shape(p).ToString("R", CultureInfo.InvariantCulture), "SLAB", string.Empty));
        var survey = SlabCase.Survey(SlabCase.Metric, "x_mm,y_mm,z_mm,code,point\n" + string.Join('\n', control.Concat(rows)));
        Assert.Equal(Datum, survey.Datum, 1e-5);
        Assert.Equal(5, survey.Readings.Fit!.Residuals.Length);
        Assert.All(survey.Readings.Fit.Residuals, residual => Assert.True(residual.Off.Length < 1e-6));
    }

    /// <summary>A crew that writes northings into the column of eastings gets a mirrored plan: that is said, not that points or units are wrong.</summary>
    [Fact]
    public void Exchanged_axes_are_named()
    {
        var control = SlabCase.Metric.ShootingList.Take(5).Select(point => Row(new Vector2(point.Point.Plan.Y, point.Point.Plan.X), string.Empty, "CONTROL", point.Number.ToString(CultureInfo.InvariantCulture)));
        var rows = _places.Select(p => Row(new Vector2(p.Y, p.X), "0", "SLAB", string.Empty));
        Assert.Contains("with x and y exchanged", SlabCase.Fault("x_mm,y_mm,z_mm,code,point\n" + string.Join('\n', control.Concat(rows))), StringComparison.Ordinal);
    }

    /// <summary>Two points pulled 7 mm apart along the line between them; DIN 18202 table 1 (checkvalues.csv T-DIN1-plan) allows what its row says for the distance.</summary>
    [Fact]
    public void A_distance_between_control_points_is_told_beside_its_limit()
    {
        var points = SlabCase.Metric.ShootingList.Select(point => (point.Number, point.Point.Plan)).ToList();
        var (from, to) = (points[0], points.MaxBy(point => (point.Plan - points[0].Plan).Length));
        var apart = (to.Plan - from.Plan).Length;
        var pulled = to.Plan + ((to.Plan - from.Plan) * (7 / apart));
        string[] control =
        [
            Row(from.Plan, string.Empty, "CONTROL", from.Number.ToString(CultureInfo.InvariantCulture)),
            Row(pulled, string.Empty, "CONTROL", to.Number.ToString(CultureInfo.InvariantCulture)),
        ];
        var rows = _places.Select(p => Row(p, Shape(p).ToString("R", CultureInfo.InvariantCulture), "SLAB", string.Empty));
        var survey = SlabCase.Survey(SlabCase.Metric, "x_mm,y_mm,z_mm,code,point\n" + string.Join('\n', control.Concat(rows)));

        var told = Assert.Single(survey.Tolerances, check => check.What.Contains("control points", StringComparison.Ordinal));
        Assert.Equal(7, told.Value, 1e-6);
        Assert.Equal(apart switch { <= 1000 => 10, <= 3000 => 12, <= 6000 => 16, <= 15_000 => 20, <= 30_000 => 24, _ => 30 }, told.Limit);
        Assert.True(told.IsKept);
    }

    [Fact]
    public void Stations_along_a_wall_are_places_of_the_model()
    {
        var wall = SlabCase.Metric.Walls[0];
        var rows = Enumerable.Range(0, 6).SelectMany(i => new[] { 0.0, 240.0 }.Select(t => string.Create(CultureInfo.InvariantCulture, $"{wall.Identity.GlobalId},{wall.Frame.Length.Mm * i / 5:R},{t},{i}")));
        var survey = SlabCase.Survey(SlabCase.Metric, "wall,station_mm,offset_mm,z_mm\n" + string.Join('\n', rows));
        Assert.All(survey.Readings.Levels, reading => Assert.InRange(Vector2.Dot(reading.Plan - wall.Frame.Origin.Plan, wall.Frame.Direction), -0.001, wall.Frame.Length.Mm + 0.001));
    }

    [Fact]
    public void Heights_of_a_bench_mark_leave_the_beds()
    {
        var own = SlabCase.Survey(SlabCase.Metric, SlabCase.Csv(_places, p => 31_250 + Shape(p)));
        var model = SlabCase.Survey(SlabCase.Metric, SlabCase.Csv(_places, Shape));
        Assert.Equal(ReadingHeights.Bench, own.Readings.Heights);
        Assert.All(own.Beds.Zip(model.Beds), pair => Assert.Equal(pair.Second.Mean, pair.First.Mean, 1e-6));
        Assert.Equal(model.Datum + 31_250, own.Datum, 1e-6);
    }

    [Fact]
    public void The_shooting_list_is_a_form_for_the_reader()
    {
        Assert.NotEmpty(SlabCase.Metric.ShootingList);
        var faces = SlabCase.Metric.ShootingList.Select(point => point.Point.Plan).ToArray();
        var survey = SlabCase.Survey(SlabCase.Metric, SlabCase.Csv(faces, _ => 0));
        Assert.DoesNotContain(survey.Findings, finding => finding.Code.Id is "bed-beyond-readings" or "readings-sparse");
    }

    /// <summary>Common practice, no source: at most 8 ft or 2.5 m between readings along a wall.</summary>
    [Fact]
    public void Points_of_the_shooting_list_stand_close_enough() => Assert.All(SlabCase.Metric.ShootingList.GroupBy(point => (point.Wall, point.T)), face =>
    {
        var s = face.Select(point => point.S.Mm).Order().ToArray();
        Assert.All(s.Zip(s.Skip(1)), pair => Assert.InRange(pair.Second - pair.First, 0, 2500));
    });

    [Theory]
    [InlineData("", "has no rows")]
    [InlineData("x_mm,z_mm\n1,2\n", ":1: the header has no column y")]
    [InlineData("x_mm,y_mm\n1,2\n", ":1: the header has no column of heights")]
    [InlineData("x,y_mm,z_mm\n1,2,3\n", ":1: the column x has no unit")]
    [InlineData("x_mm,y_mm,z_mm\n0,0,0\n1,two,3\n", ":3: y_mm is \"two\", which is no length")]
    [InlineData("x_mm,y_mm,z_mm\n0,0,0\n1,,3\n", ":3: y_mm is blank")]
    [InlineData("x_mm,y_mm,z_mm,code\n0,0,0,DOOR\n", ":2: the code is \"DOOR\"")]
    [InlineData("x_mm,y_mm,hi_mm,rod_mm\n0,0,,3\n", ":2: there is a rod reading, but no instrument height")]
    [InlineData("x_mm,y_mm,z_mm\n0,0,0\n100,0,0\n", "2 readings of the slab are too few")]
    [InlineData("x_mm,y_mm,z_mm\n0,0,0\n1000,0,0\n3000,0,0\n", "3 readings of the slab are too few, or lie in one line")]
    [InlineData("x_mm,y_mm,z_mm\n0,0,0\n1000,0,0\n0,1000,0\n0,1000,9\n", ":5: this reading and that of line 4 are of one place and differ by 9 mm")]
    [InlineData("x_mm,y_mm,z_mm\n0,0,0\n1000,0,0\n0,1000,-1200\n", ":4: this reading lies 1200 mm below the slab")]
    [InlineData("x_m,y_m,z_m\n500,500,0\n501,500,0\n500,501,0\n", "all readings lie")]
    [InlineData("x_mm,y_mm,z_mm\n0,0,0\n1000,0,0\n0,40000,0\n", ":4: this reading lies")]
    [InlineData("point,x_mm,y_mm,z_mm,code\n1,0,0,,CONTROL\n,1,1,1,\n", ":2: there is one CONTROL row")]
    [InlineData("point,x_mm,y_mm,z_mm,code\n9999,0,0,,CONTROL\n9998,9,9,,CONTROL\n,1,1,1,\n", ":2: \"9999\" is no point of the layout")]
    [InlineData("point,x_mm,y_mm,z_mm,code,core\n,0,0,0,,\nx,1,1,,BAR,K99\n,1000,0,0,,\n,0,1000,0,,\n", ":3: the row names no bar of the layout (K99, x)")]
    [InlineData("wall,station_mm,offset_mm,z_mm\nNone,0,0,0\n", ":2: no wall is called \"None\"")]
    public void Nonsense_is_refused_with_its_line(string csv, string expected) => Assert.Contains(expected, SlabCase.Fault(csv), StringComparison.Ordinal);

    private static string Rows(string header, double mm) => header + "\n" + string.Concat(_places.Select(p =>
        string.Create(CultureInfo.InvariantCulture, $"{p.X / mm:R},{p.Y / mm:R},{Shape(p) / mm:R}\n")));

    private static string Row(Vector2 at, string z, string code, string point) => string.Create(CultureInfo.InvariantCulture, $"{at.X:R},{at.Y:R},{z},{code},{point}");
}
