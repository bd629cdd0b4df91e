using System.Globalization;
using IfcCourser.Catalogs;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Runs;
using IfcCourser.Slabs;
using IfcCourser.Tests.Support;
using IfcCourser.Units;

namespace IfcCourser.Tests.Slabs;

/// <summary>A box of four walls, and readings of its slab made from a formula.</summary>
internal static class SlabCase
{
    public static readonly Layout Inch = LayOut("us", "aac-in", Length.FromInches(159.875), Length.FromInches(111.875), Length.FromInches(7.875));

    public static readonly Layout Metric = LayOut("eu", "aac-mm", Length.FromMm(4999), Length.FromMm(3749), Length.FromMm(240));

    /// <summary>Readings at most so far apart, mm, over the box and a little beyond; so much less where negative.</summary>
    public static IEnumerable<Vector2> Grid(double step, double margin = 100)
    {
        var (width, height) = (5000 + (2 * margin), 4000 + (2 * margin));
        var (columns, rows) = ((int)Math.Ceiling(width / step), (int)Math.Ceiling(height / step));
        for (var i = 0; i <= columns; i++)
        {
            for (var j = 0; j <= rows; j++)
            {
                yield return new Vector2((width * i / columns) - margin, (height * j / rows) - margin);
            }
        }
    }

    /// <summary>A file with model coordinates and heights, mm.</summary>
    public static string Csv(IEnumerable<Vector2> places, Func<Vector2, double> height) => "x_mm,y_mm,z_mm\n" + string.Concat(places.Select(place =>
        string.Create(CultureInfo.InvariantCulture, $"{place.X:R},{place.Y:R},{height(place):R}\n")));

    public static SlabSurvey Survey(Layout layout, string csv, string? units = null, Length? thickest = null)
    {
        var file = ReadingsReader.Read(csv, "readings.csv", units);
        Assert.True(file.IsOk, file.Fault?.ToString());
        var survey = SlabSurveys.Of(layout, file.Value, null, thickest);
        Assert.True(survey.IsOk, survey.Fault?.ToString());
        return survey.Value;
    }

    public static string Fault(string csv, string? units = null)
    {
        var file = ReadingsReader.Read(csv, "readings.csv", units);
        var fault = file.IsOk ? SlabSurveys.Of(Metric, file.Value, null, null).Fault : file.Fault;
        Assert.NotNull(fault);
        return fault.ToString();
    }

    private static Layout LayOut(string rules, string catalog, Length a, Length b, Length thickness)
    {
        var model = WallSketch.Box(a, b, Length.FromMm(2500), thickness);
        var facts = new ModelFacts("box.ifc", new string('0', 64), "IFC4", 1, null, null, "2026-01-01");
        return LayoutBuilder.Build(model, LayoutRules.For(BuiltInRuleSets.Get(rules), BuiltInCatalogs.Get(catalog), OpeningPolicy.Move), facts);
    }
}
