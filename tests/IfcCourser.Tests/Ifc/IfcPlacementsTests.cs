using IfcCourser.Geometry;

namespace IfcCourser.Tests.Ifc;

public sealed class IfcPlacementsTests
{
    [Fact]
    public void PlacementsAreChainedFromTheInsideOut()
    {
        // The parent stands at (1000, 0, 0) turned a quarter left; the child 2 m along the parent's x axis, 3 m up.
        using var model = IfcSource.Model(IfcSource.Project +
            """
            #10=IFCLOCALPLACEMENT($,#11);
            #11=IFCAXIS2PLACEMENT3D(#12,#13,#14);
            #12=IFCCARTESIANPOINT((1000.,0.,0.));
            #13=IFCDIRECTION((0.,0.,1.));
            #14=IFCDIRECTION((0.,5.,0.));
            #20=IFCLOCALPLACEMENT(#10,#21);
            #21=IFCAXIS2PLACEMENT3D(#22,$,$);
            #22=IFCCARTESIANPOINT((2000.,0.,3000.));
            """);
        var placement = model.Placement(20);
        Assert.Equal(new Vector3(1000, 2000, 3000), placement.Origin);
        Assert.Equal(new Vector3(0, 1, 0), placement.X);
        Assert.Equal(new Vector3(-1, 0, 0), placement.Y);
        Assert.Equal(new Vector3(0, 0, 1), placement.Z);
    }

    /// <summary>IfcFirstProjAxis (ISO 16739-1, 8.7): the reference direction is projected onto the plane square to the axis.</summary>
    [Theory]
    [InlineData("(1.,0.,1.)", 1, 0)]
    [InlineData("(0.,1.,-7.)", 0, 1)]
    [InlineData("(0.,0.,2.)", 1, 0)]
    [InlineData("(0.,0.,0.)", 1, 0)]
    public void TheReferenceDirectionIsMadeSquareToTheAxis(string direction, double x, double y)
    {
        using var model = IfcSource.Model(IfcSource.Project +
            $"#10=IFCLOCALPLACEMENT($,#11);#11=IFCAXIS2PLACEMENT3D(#12,$,#14);#12=IFCCARTESIANPOINT((0.,0.,0.));#14=IFCDIRECTION({direction});");
        var placement = model.Placement(10);
        Assert.Equal(new Vector3(x, y, 0), placement.X);
        Assert.Equal(1, placement.Determinant, 12);
    }

    [Fact]
    public void ACycleOfPlacementsIsAFindingAndEnds()
    {
        using var model = IfcSource.Model(IfcSource.Project +
            "#10=IFCLOCALPLACEMENT(#20,#11);#20=IFCLOCALPLACEMENT(#10,#11);#11=IFCAXIS2PLACEMENT3D(#12,$,$);#12=IFCCARTESIANPOINT((1.,0.,0.));");
        _ = model.Placement(20);
        Assert.Equal("placement-cycle", Assert.Single(model.Findings).Code.Id);
    }

    [Fact]
    public void AGridPlacementIsTakenAtItsOriginWithAFinding()
    {
        using var model = IfcSource.Model(IfcSource.Project + "#10=IFCGRIDPLACEMENT(#11,$);#20=IFCLOCALPLACEMENT(#10,#21);#21=IFCAXIS2PLACEMENT3D(#22,$,$);#22=IFCCARTESIANPOINT((5.,6.));");
        Assert.Equal(new Vector3(5, 6, 0), model.Placement(20).Origin);
        Assert.Equal("placement-not-read", Assert.Single(model.Findings).Code.Id);
    }

    [Fact]
    public void AMissingOrBrokenPointIsTheOrigin()
    {
        using var model = IfcSource.Model(IfcSource.Project + "#10=IFCLOCALPLACEMENT($,#11);#11=IFCAXIS2PLACEMENT3D(#12,#77,$);#12=IFCCARTESIANPOINT((1.E400));");
        Assert.Equal(Transform3.Identity, model.Placement(10));
        Assert.Equal(Transform3.Identity, model.Placement(null));
    }
}
