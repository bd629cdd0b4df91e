using IfcCourser.Geometry;
using IfcCourser.Ifc.Bodies;
using IfcCourser.Tests.Walls;

namespace IfcCourser.Tests.Ifc.Bodies;

/// <summary>Shapes that refer to themselves, unfold without end or hold no values: each ends as a body that can't be read. Found by fuzzing or by reading the code.</summary>
public sealed class HostileShapeTests
{
    /// <summary>Reading ends; xunit stops a test that does not.</summary>
    private const int MostMs = 60_000;

    [Theory(Timeout = MostMs)]
    [InlineData("IFCBOOLEANRESULT(.DIFFERENCE.,#{self},#{self})")]
    [InlineData("IFCBOOLEANRESULT(.UNION.,#{block},#{self})")]
    [InlineData("IFCCSGSOLID(#{self})")]
    [InlineData("IFCMAPPEDITEM(#{self},#{self})")]
    [InlineData("IFCEXTRUDEDAREASOLID(#{self},$,#{self},1000.)")]
    [InlineData("IFCFACETEDBREP(#{self})")]
    [InlineData("IFCEXTRUDEDAREASOLID()")]
    [InlineData("IFCBLOCK($,1e400,NaN,-1.)")]
    [InlineData("IFCBLOCK($,1e300,1e300,1e300)")]
    public async Task An_item_that_is_a_part_of_itself_or_has_no_size_is_not_read(string item)
    {
        var text = new ModelText();
        var block = text.Add($"IFCBLOCK(#{text.Axes(0, 0, 0)},1000.,240.,1000.)");
        await Ends(text, text.Add(item.Replace("{self}", FormattableString.Invariant($"{block + 1}"), StringComparison.Ordinal).Replace("{block}", FormattableString.Invariant($"{block}"), StringComparison.Ordinal)), TestContext.Current.CancellationToken);
    }

    /// <summary>Twenty levels, each of which names the one below it thirty times: 30^20 parts.</summary>
    [Theory(Timeout = MostMs)]
    [InlineData("IFCCOMPOSITEPROFILEDEF(.AREA.,$,({below}),$)")]
    [InlineData("IFCCOMPOSITECURVE(({below}),.F.)", "IFCCOMPOSITECURVESEGMENT(.CONTINUOUS.,.T.,{below})")]
    public async Task Parts_named_over_and_over_in_parts_of_parts_come_to_an_end(params string[] levels)
    {
        const int Times = 30;
        const int Levels = 20;
        var text = new ModelText();
        var below = text.Polyline((0, 0), (1000, 0), (1000, 240));
        for (var level = 0; level < Levels; level++)
        {
            foreach (var kind in Enumerable.Reverse(levels))
            {
                var one = FormattableString.Invariant($"#{below}");
                below = text.Add(kind.Replace("({below})", $"({string.Join(',', Enumerable.Repeat(one, Times))})", StringComparison.Ordinal).Replace("{below}", one, StringComparison.Ordinal));
            }
        }

        await Ends(text, text.Add($"IFCEXTRUDEDAREASOLID(#{text.Add($"IFCARBITRARYCLOSEDPROFILEDEF(.AREA.,$,#{below})")},$,$,1000.)"), TestContext.Current.CancellationToken);
        await Ends(text, text.Add($"IFCEXTRUDEDAREASOLID(#{below},$,$,1000.)"), TestContext.Current.CancellationToken);
    }

    [Theory]
    [InlineData("()")]
    [InlineData("($)")]
    [InlineData("(#999999)")]
    [InlineData("$")]
    public void An_axis_without_a_curve_is_none(string items)
    {
        var text = new ModelText();
        var shape = text.Add($"IFCPRODUCTDEFINITIONSHAPE($,$,(#{text.Add($"IFCSHAPEREPRESENTATION($,'Axis','Curve2D',{items})")}))");
        using var model = text.Read();
        Assert.Null(new BodyReader(model.File, model.Units).Axis(shape));
    }

    [Theory]
    [InlineData("IFCCARTESIANPOINT()", "IFCDIRECTION()")]
    [InlineData("IFCCARTESIANPOINT($)", "IFCDIRECTION((0.,0.,0.))")]
    [InlineData("IFCCARTESIANPOINT((1e300,0.,0.))", "IFCDIRECTION((NaN,1.,0.))")]
    public void A_placement_without_numbers_is_that_of_the_origin_and_said(string point, string direction)
    {
        var text = new ModelText();
        var axes = text.Add($"IFCAXIS2PLACEMENT3D(#{text.Add(point)},#{text.Add(direction)},$)");
        var placement = text.Add($"IFCLOCALPLACEMENT($,#{axes})");
        using var model = text.Read();
        Assert.Equal(default, model.Placement(placement).Origin);
        Assert.Contains(model.Findings, finding => finding.Message.Contains($"#{axes} has a location", StringComparison.Ordinal));
    }

    private static async Task Ends(ModelText text, int item, CancellationToken stop)
    {
        var shape = text.Shape(item, "SweptSolid");
        using var model = text.Read();
        var body = await Task.Run(() => new BodyReader(model.File, model.Units).Read(shape, Transform3.Identity), stop);
        Assert.Empty(body.Items);
        await Task.Run(() => new PointReader(model.File, model.Units).Read(shape, Transform3.Identity), stop);
    }
}
