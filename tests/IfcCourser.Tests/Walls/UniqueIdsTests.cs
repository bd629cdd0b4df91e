using IfcCourser.Findings;
using IfcCourser.Tests.Support;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Tests.Walls;

public sealed class UniqueIdsTests
{
    private const string Shared = "0UcKJVh1wiUc0jPM8BIIf8";

    [Fact]
    public void The_first_wall_keeps_its_GlobalId_later_ones_are_told_apart_and_named()
    {
        var model = UniqueIds.Of(Model([12, 30], [20]));

        Assert.Equal($"{Shared} {Shared}#30", string.Join(' ', model.Walls.Select(wall => wall.Identity.GlobalId)));
        Assert.Equal($"{Shared}#20", Assert.Single(model.Skipped).Identity.GlobalId);
        Assert.Equal([FindingCodes.DuplicateGlobalId, FindingCodes.DuplicateGlobalId], model.Findings.Select(finding => finding.Code));
        Assert.Contains("#20", model.Findings[0].Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_model_without_doubles_is_left_alone()
    {
        var model = Model([12], []);
        Assert.Same(model, UniqueIds.Of(model));
    }

    private static WallModel Model(long[] walls, long[] skipped)
    {
        var wall = WallSketch.Straight(Length.FromMm(3000), Length.FromMm(2500), Length.FromMm(240));
        return new WallModel
        {
            Walls = [.. walls.Select(id => wall with { Identity = Identity(id) })],
            Skipped = [.. skipped.Select(id => new SkippedWall(Identity(id), new Finding(FindingCodes.NoBody, "no body"), null))],
            Junctions = [],
            Findings = [],
        };
    }

    private static WallIdentity Identity(long stepId) => new(Shared, stepId, null, null, null);
}
