using IfcCourser.Geometry;
using IfcCourser.Ifc;

namespace IfcCourser.Tests.Ifc;

public sealed class IfcWallReaderTests
{
    public const string House = IfcSource.Project +
        """
        #10=IFCBUILDINGSTOREY('1YvctVUKr0kugbFTf53O9L',$,'EG',$,$,$,$,$,.ELEMENT.,0.);
        #11=IFCRELCONTAINEDINSPATIALSTRUCTURE('2YvctVUKr0kugbFTf53O9L',$,$,$,(#20,#30),#10);
        #20=IFCWALLSTANDARDCASE('3YvctVUKr0kugbFTf53O9L',$,'W1',$,'old type',#21,#23,$);
        #21=IFCLOCALPLACEMENT($,#22);
        #22=IFCAXIS2PLACEMENT3D(#24,$,$);
        #23=IFCPRODUCTDEFINITIONSHAPE($,$,());
        #24=IFCCARTESIANPOINT((100.,200.,300.));
        #30=IFCWALL('0ZvctVUKr0kugbFTf53O9L',$,'W2',$,'only a name',$,$,$);
        #40=IFCOPENINGELEMENT('1ZvctVUKr0kugbFTf53O9L',$,'O1',$,'Opening',#41,$,$);
        #41=IFCLOCALPLACEMENT(#21,#42);
        #42=IFCAXIS2PLACEMENT3D(#43,$,$);
        #43=IFCCARTESIANPOINT((1000.,0.,900.));
        #44=IFCRELVOIDSELEMENT('2ZvctVUKr0kugbFTf53O9L',$,$,$,#20,#40);
        #45=IFCWINDOW('3ZvctVUKr0kugbFTf53O9L',$,'F1',$,$,#41,$,$,1200.,1010.);
        #46=IFCRELFILLSELEMENT('0avctVUKr0kugbFTf53O9L',$,$,$,#40,#45);
        #50=IFCRELASSOCIATESMATERIAL('1avctVUKr0kugbFTf53O9L',$,$,$,(#20),#51);
        #51=IFCMATERIALLAYERSETUSAGE(#52,.AXIS2.,.NEGATIVE.,87.5);
        #52=IFCMATERIALLAYERSET((#53,#54),'Outer wall');
        #53=IFCMATERIALLAYER(#55,15.,$);
        #54=IFCMATERIALLAYER(#56,160.,.U.);
        #55=IFCMATERIAL('Putz');
        #56=IFCMATERIAL('Porenbeton');
        #60=IFCRELDEFINESBYPROPERTIES('2avctVUKr0kugbFTf53O9L',$,$,$,(#20),#61);
        #61=IFCPROPERTYSET('3avctVUKr0kugbFTf53O9L',$,'Pset_WallCommon',$,(#62,#63));
        #62=IFCPROPERTYSINGLEVALUE('LoadBearing',$,IFCBOOLEAN(.T.),$);
        #63=IFCPROPERTYSINGLEVALUE('Depth',$,IFCLENGTHMEASURE(250.),$);
        #64=IFCRELDEFINESBYPROPERTIES('0bvctVUKr0kugbFTf53O9L',$,$,$,(#20),#65);
        #65=IFCELEMENTQUANTITY('1bvctVUKr0kugbFTf53O9L',$,'BaseQuantities',$,$,(#66,#67));
        #66=IFCQUANTITYLENGTH('Length',$,$,5000.);
        #67=IFCQUANTITYAREA('NetSideArea',$,$,12.5);
        #70=IFCRELDEFINESBYTYPE('2bvctVUKr0kugbFTf53O9L',$,$,$,(#20),#71);
        #71=IFCWALLTYPE('3bvctVUKr0kugbFTf53O9L',$,'AW 17.5',$,$,$,$,$,$,.STANDARD.);
        #80=IFCRELCONNECTSPATHELEMENTS('0cvctVUKr0kugbFTf53O9L',$,$,$,$,#20,#30,(),(),.ATSTART.,.ATEND.);
        #81=IFCRELCONNECTSPATHELEMENTS('1cvctVUKr0kugbFTf53O9L',$,$,$,$,#20,#30,(),(),.ATSTART.,.ATEND.);
        """;

    [Theory]
    [InlineData("IFC2X3")]
    [InlineData("IFC4")]
    [InlineData("IFC4X3_ADD2")]
    public void WallsAreReadInFileOrderWithTheirNames(string schema)
    {
        using var model = IfcSource.Model(House, schema);
        Assert.Equal([20L, 30L], model.Walls.Select(wall => wall.StepId));
        var wall = model.Walls[0];
        Assert.Equal(("3YvctVUKr0kugbFTf53O9L", "W1", "AW 17.5", "EG"), (wall.GlobalId, wall.Name, wall.TypeName, wall.Storey));
        Assert.Equal(new Vector3(100, 200, 300), wall.Placement.Origin);
        Assert.Equal(23, wall.Representation);
        Assert.True(wall.IsLoadBearing);
        Assert.Equal("only a name", model.Walls[1].TypeName);
        Assert.Null(model.Walls[1].IsLoadBearing);
        Assert.Null(model.Walls[1].Representation);
        Assert.Empty(model.Findings);
    }

    [Fact]
    public void LayersAreReadWithOffsetAndSense()
    {
        using var model = IfcSource.Model(House, "IFC2X3");
        var use = model.Walls[0].Material!;
        Assert.Equal((IfcMaterialKind.LayerSetUsage, "Outer wall", 87.5, false, "AXIS2"), (use.Kind, use.Name, use.Offset, use.IsPositive, use.Axis));
        Assert.Equal([new IfcLayer(null, "Putz", null, 15), new IfcLayer(null, "Porenbeton", null, 160)], use.Layers);
        Assert.Null(model.Walls[1].Material);
    }

    [Fact]
    public void OpeningsComeWithWhatFillsThem()
    {
        using var model = IfcSource.Model(House);
        var opening = Assert.Single(model.Walls[0].Openings);
        Assert.Equal(new Vector3(1100, 200, 1200), opening.Placement.Origin);
        Assert.Equal("Opening", opening.ObjectType);
        var window = Assert.Single(opening.Fillings);
        Assert.True(window.IsWindow);
        Assert.Equal((1200.0, 1010.0), (window.OverallHeight, window.OverallWidth));
    }

    [Fact]
    public void NumbersOfSetsAreInSiUnits()
    {
        using var model = IfcSource.Model(House);
        var sets = model.PropertySets(20);
        Assert.Equal("Pset_WallCommon BaseQuantities", string.Join(' ', sets.Select(set => set.Name)));
        Assert.Equal(0.25, sets[0].Values[1].Si);
        Assert.Equal([5.0, 12.5], sets[1].Values.Select(value => value.Si!.Value));
    }

    [Fact]
    public void PathConnectionsAreSeenFromBothWallsAndOnce()
    {
        using var model = IfcSource.Model(House);
        Assert.Equal([new IfcPathConnection(30, "ATEND", "ATSTART")], model.Walls[0].Connections);
        Assert.Equal([new IfcPathConnection(20, "ATSTART", "ATEND")], model.Walls[1].Connections);
    }

    [Fact]
    public void ConstituentsListsAndSingleMaterialsAreLayersWithoutThickness()
    {
        using var model = IfcSource.Model(IfcSource.Project +
            """
            #10=IFCWALL('3YvctVUKr0kugbFTf53O9L',$,$,$,$,$,$,$,$);
            #11=IFCWALL('0ZvctVUKr0kugbFTf53O9L',$,$,$,$,$,$,$,$);
            #12=IFCWALL('1ZvctVUKr0kugbFTf53O9L',$,$,$,$,$,$,$,$);
            #20=IFCRELASSOCIATESMATERIAL('2ZvctVUKr0kugbFTf53O9L',$,$,$,(#10),#21);
            #21=IFCMATERIALCONSTITUENTSET('S',$,(#22,#99));
            #22=IFCMATERIALCONSTITUENT('Core',$,#30,$,'LoadBearing');
            #23=IFCRELASSOCIATESMATERIAL('3ZvctVUKr0kugbFTf53O9L',$,$,$,(#11),#24);
            #24=IFCMATERIALLIST((#30,#31));
            #25=IFCRELASSOCIATESMATERIAL('0avctVUKr0kugbFTf53O9L',$,$,$,(#40),#31);
            #30=IFCMATERIAL('Block',$,'Concrete');
            #31=IFCMATERIAL('Wood',$,$);
            #40=IFCWALLTYPE('1avctVUKr0kugbFTf53O9L',$,'T',$,$,$,$,$,$,.SOLIDWALL.);
            #41=IFCRELDEFINESBYTYPE('2avctVUKr0kugbFTf53O9L',$,$,$,(#12),#40);
            """);
        Assert.Equal([new IfcLayer("Core", "Block", "LoadBearing", null)], model.Walls[0].Material!.Layers);
        Assert.Equal([new IfcLayer(null, "Block", "Concrete", null), new IfcLayer(null, "Wood", null, null)], model.Walls[1].Material!.Layers);
        Assert.Equal(IfcMaterialKind.Single, model.Walls[2].Material!.Kind);
        Assert.Equal("Wood", model.Walls[2].Material!.Name);
    }

    [Fact]
    public void PartsBelongToTheirWallAndAPartFindsTheStoreyOfItsWhole()
    {
        using var model = IfcSource.Model(IfcSource.Project +
            """
            #10=IFCBUILDINGSTOREY('1YvctVUKr0kugbFTf53O9L',$,'EG',$,$,$,$,$,.ELEMENT.,0.);
            #11=IFCRELCONTAINEDINSPATIALSTRUCTURE('2YvctVUKr0kugbFTf53O9L',$,$,$,(#20),#10);
            #20=IFCWALL('3YvctVUKr0kugbFTf53O9L',$,'whole',$,$,$,$,$,.ELEMENTEDWALL.);
            #21=IFCWALL('0ZvctVUKr0kugbFTf53O9L',$,'leaf',$,$,$,$,$,$);
            #22=IFCBUILDINGELEMENTPART('1ZvctVUKr0kugbFTf53O9L',$,'part',$,$,$,#30,$,$);
            #23=IFCRELAGGREGATES('2ZvctVUKr0kugbFTf53O9L',$,$,$,#20,(#21,#22));
            #24=IFCRELAGGREGATES('3ZvctVUKr0kugbFTf53O9L',$,$,$,#21,(#20));
            #30=IFCPRODUCTDEFINITIONSHAPE($,$,());
            """);
        Assert.Equal("leaf part", string.Join(' ', model.Walls[0].Parts.Select(part => part.Name)));
        Assert.Equal(30, model.Walls[0].Parts[1].Representation);
        Assert.Equal("EG", model.Walls[1].Storey);
    }

    [Fact]
    public void MissingReferencesAndTooFewAttributesAreToleratedWithFindings()
    {
        using var model = IfcSource.Model(IfcSource.Project +
            """
            #10=IFCWALL('3YvctVUKr0kugbFTf53O9L',$,$,$,$,#77,#78,$,$);
            #11=IFCWALL();
            #12=IFCRELVOIDSELEMENT('2ZvctVUKr0kugbFTf53O9L',$,$,$,#10,#79);
            #13=IFCRELFILLSELEMENT('3ZvctVUKr0kugbFTf53O9L',$,$,$,$,$);
            #14=IFCRELASSOCIATESMATERIAL('0avctVUKr0kugbFTf53O9L',$,$,$,(#10),#80);
            """);
        Assert.Equal(2, model.Walls.Length);
        Assert.Equal(string.Empty, model.Walls[1].GlobalId);
        Assert.Equal("reference-missing reference-missing", string.Join(' ', model.Findings.Select(finding => finding.Code.Id)));
        Assert.Contains("#10", model.Findings[0].Message, StringComparison.Ordinal);
    }
}
