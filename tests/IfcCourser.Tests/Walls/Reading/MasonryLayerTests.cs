using IfcCourser.Findings;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Tests.Walls.Reading;

/// <summary>Walls 4000 long and 2500 high, layers across y from 0.</summary>
public sealed class MasonryLayerTests
{
    [Fact]
    public void The_type_counts_where_the_material_says_nothing_and_the_walls_name_where_there_is_no_type()
    {
        var text = new ModelText();
        var typed = text.Straight("Block wall", 4000, 240, 2500, material: "Default Wall");
        var type = text.Add("IFCWALLTYPE('1type000000000000000AA',$,'Partition',$,$,$,$,$,$,.SOLIDWALL.)");
        text.Add($"IFCRELDEFINESBYTYPE('1rel0000000000000000AA',$,$,$,(#{typed}),#{type})");
        text.Straight("Block wall 2", 4000, 240, 2500, y: 3000, material: "Default Wall");
        var model = text.Walls();
        Assert.Equal("Block wall 2", Assert.Single(model.Walls).Identity.Name);
        var skipped = Assert.Single(model.Skipped);
        Assert.Equal(FindingCodes.NoMasonryLayer, skipped.Reason.Code);
        Assert.Equal(["Default Wall", "Partition"], skipped.Choice!.Names.Select(name => name.Name), StringComparer.Ordinal);
        Assert.Null(skipped.Choice.Thickness);
    }

    [Fact]
    public void The_choice_tells_layer_thickness_and_word()
    {
        var text = new ModelText();
        var wall = text.Wall("A", text.Box(0, 0, 0, 4000, 265, 2500), material: null);
        text.Layers(wall, 0, true, ("Plaster", 15), ("Concrete block", 240), ("Gypsum block", 10));
        var choice = Assert.Single(text.Walls().Walls).Choice!;
        Assert.Equal((2, 3, Mm(240)), (choice.Layer, choice.Layers, choice.Thickness));
        Assert.Equal([null, "block", "gypsum", null], choice.Names.Select(name => name.Word), StringComparer.Ordinal);
        Assert.Equal([null, true, false, null], choice.Names.Select(name => name.IsMasonry));
        Assert.Equal([1, 2, 3, null], choice.Names.Select(name => name.Layer));
    }

    /// <summary>Between two leaves of one thickness the higher priority is taken: the second, from y = 160.</summary>
    [Fact]
    public void Of_two_equal_leaves_the_one_of_higher_priority_is_laid_out()
    {
        var text = new ModelText();
        var wall = text.Wall("A", text.Box(0, 0, 0, 4000, 270, 2500), material: null);
        int Layer(string material, double thickness, string priority) =>
            text.Add($"IFCMATERIALLAYER(#{text.Add($"IFCMATERIAL('{material}',$,$)")},{text.Length(thickness)},$,$,$,$,{priority})");
        var set = text.Add($"IFCMATERIALLAYERSET((#{Layer("Brick", 110, "10")},#{Layer("Air", 50, "$")},#{Layer("Brick", 110, "90")}),$,$)");
        text.Material(wall, text.Add($"IFCMATERIALLAYERSETUSAGE(#{set},.AXIS2.,.POSITIVE.,0.,$)"));
        var read = Assert.Single(text.Walls().Walls);
        Assert.Equal(270, read.Frame.Origin.Y, 1e-6);
        Assert.Equal("The layer 110 mm thick is laid out; not laid out: \"Brick\", 110 mm.", Assert.Single(read.Findings, finding => finding.Code == FindingCodes.SecondLeaf).Message);
    }

    [Fact]
    public void In_a_reference_view_the_item_that_a_shape_aspect_names_is_the_layer()
    {
        var text = new ModelText();
        var (plaster, block) = (text.Box(0, 0, 0, 4000, 15, 2500), text.Box(0, 15, 0, 3900, 190, 2400));
        Constituents(text, [("Plaster", "Plaster", null), ("Core", "Aerated block", null)], [plaster, block], [("Plaster", plaster), ("Core", block)]);
        var read = Assert.Single(text.Walls().Walls);
        Assert.Equal((Mm(175), 190), (read.Frame.Thickness, Math.Round(read.Frame.Origin.Y, 6)));
        Assert.Equal([(0, 0), (3900, 0), (3900, 2400), (0, 2400)], WallReaderTests.Points(read));
        Assert.DoesNotContain(read.Findings, finding => finding.Code == FindingCodes.LayersByWidth);
    }

    /// <summary>Two constituents of one material: the second one's own name counts, so each is 100 thick, not 250.</summary>
    [Fact]
    public void Numbered_constituents_of_one_material_are_two_leaves()
    {
        var text = new ModelText();
        var items = new[] { text.Box(0, 0, 0, 4000, 100, 2500), text.Box(0, 100, 0, 4000, 150, 2500), text.Box(0, 150, 0, 4000, 250, 2500) };
        Constituents(
            text, [("Block", "Block", null), ("Air", "Air", null), ("Block (2)", "Block", null)], items, [("Block", items[0]), ("Air", items[1]), ("Block (2)", items[2])]);
        var read = Assert.Single(text.Walls().Walls);
        Assert.Equal((Mm(100), 100), (read.Frame.Thickness, Math.Round(read.Frame.Origin.Y, 6)));
        Assert.Single(read.Findings, finding => finding.Code == FindingCodes.SecondLeaf);
    }

    /// <summary>
    /// The exporter's aspects name the 50 thick item the block, but the block is 175 wide by its quantity: the items stand in
    /// the order of the constituents from the left, so the block is the item from y = 15 to 190.
    /// </summary>
    [Fact]
    public void Where_widths_contradict_the_aspects_the_order_of_the_items_counts()
    {
        var text = new ModelText();
        var (insulation, block, plaster) = (text.Box(0, 190, 0, 4000, 240, 2500), text.Box(0, 15, 0, 4000, 190, 2500), text.Box(0, 0, 0, 4000, 15, 2500));
        Constituents(
            text,
            [("Insulation", "Insulation", 50), ("Block", "Block", 175), ("Plaster", "Plaster", 15)],
            [plaster, block, insulation],
            [("Insulation", plaster), ("Block", insulation), ("Plaster", block)]);
        var read = Assert.Single(text.Walls().Walls);
        Assert.Equal((Mm(175), 190), (read.Frame.Thickness, Math.Round(read.Frame.Origin.Y, 6)));
        Assert.Single(read.Findings, finding => finding.Code == FindingCodes.LayersByWidth);
    }

    [Fact]
    public void A_layer_that_nothing_locates_is_not_guessed()
    {
        var text = new ModelText();
        Constituents(text, [("Plaster", "Plaster", null), ("Core", "Aerated block", null)], [text.Box(0, 0, 0, 4000, 190, 2500)], []);
        Assert.Equal(FindingCodes.LayerNotLocated, Assert.Single(text.Walls().Skipped).Reason.Code);
        Assert.Equal(Mm(190), Assert.Single(text.Walls(new WallSelection { Walls = WallChoice.All, Width = WidthMatch.Any }).Walls).Frame.Thickness);
    }

    [Fact]
    public void A_layer_set_without_a_direction_is_counted_from_the_right_face_with_a_note()
    {
        var text = new ModelText();
        var wall = text.Wall("A", text.Box(0, 0, 0, 4000, 190, 2500), material: null);
        int Layer(string material, double thickness) => text.Add($"IFCMATERIALLAYER(#{text.Add($"IFCMATERIAL('{material}',$,$)")},{text.Length(thickness)},$,$,$,$,$)");
        text.Material(wall, text.Add($"IFCMATERIALLAYERSET((#{Layer("Plaster", 15)},#{Layer("Block", 175)}),$,$)"));
        var read = Assert.Single(text.Walls().Walls);
        Assert.Equal((Mm(175), 190), (read.Frame.Thickness, Math.Round(read.Frame.Origin.Y, 6)));
        Assert.Single(read.Findings, finding => finding.Code == FindingCodes.LayerSideAssumed);
    }

    /// <summary>Skins as parts: 15 plaster, block of two lengths side by side from y = 15 to 190, 60 insulation.</summary>
    [Fact]
    public void Parts_are_layers_where_the_wall_has_none()
    {
        var text = new ModelText();
        var wall = text.Add($"IFCWALL('{"W".PadRight(22, '0')}',$,'W',$,$,$,$,$,$)");
        int[] parts =
        [
            Part("P", "Plaster", text.Box(0, 0, 0, 4000, 15, 2500)), Part("B1", "Block", text.Box(0, 15, 0, 1500, 190, 2500)),
            Part("B2", "Block", text.Box(1500, 15, 0, 4000, 190, 2500)), Part("I", "Insulation", text.Box(0, 190, 0, 4000, 250, 2500)),
        ];
        text.Add($"IFCRELAGGREGATES('1agg0000000000000000AA',$,$,$,#{wall},({string.Join(",", parts.Select(part => $"#{part}"))}))");
        var read = Assert.Single(text.Walls().Walls);
        Assert.Equal((Mm(4000), Mm(175), 190), (read.Frame.Length, read.Frame.Thickness, Math.Round(read.Frame.Origin.Y, 6)));
        Assert.Equal((3, 4), (read.Choice!.Layer, read.Choice.Layers));

        int Part(string name, string material, int item)
        {
            var part = text.Add($"IFCBUILDINGELEMENTPART('{name.PadRight(22, '0')}',$,'{name}',$,$,$,#{text.Shape(item, "SweptSolid")},$,$)");
            text.Material(part, text.Add($"IFCMATERIAL('{material}',$,$)"));
            return part;
        }
    }

    private static void Constituents(ModelText text, (string Name, string Material, double? Width)[] constituents, int[] items, (string Name, int Item)[] aspects)
    {
        var representation = text.Add($"IFCSHAPEREPRESENTATION($,'Body','SweptSolid',({string.Join(",", items.Select(item => $"#{item}"))}))");
        var shape = text.Add($"IFCPRODUCTDEFINITIONSHAPE($,$,(#{representation}))");
        var wall = text.Add($"IFCWALL('{"W".PadRight(22, '0')}',$,'W',$,$,$,#{shape},$,$)");
        foreach (var (name, item) in aspects)
        {
            text.Add($"IFCSHAPEASPECT((#{text.Add($"IFCSHAPEREPRESENTATION($,'Body','SweptSolid',(#{item}))")}),'{name}',$,.U.,#{shape})");
        }

        var parts = constituents.Select(part => text.Add($"IFCMATERIALCONSTITUENT('{part.Name}',$,#{text.Add($"IFCMATERIAL('{part.Material}',$,$)")},$,$)")).ToList();
        text.Material(wall, text.Add($"IFCMATERIALCONSTITUENTSET('S',$,({string.Join(",", parts.Select(part => $"#{part}"))}))"));
        var widths = constituents.Where(part => part.Width is not null)
            .Select(part => text.Add($"IFCPHYSICALCOMPLEXQUANTITY('{part.Name}',$,(#{text.Add($"IFCQUANTITYLENGTH('Width',$,$,{text.Length(part.Width!.Value)},$)")}),'layer',$,$)"))
            .ToList();
        if (widths.Count > 0)
        {
            var set = text.Add($"IFCELEMENTQUANTITY('1qto0000000000000000AA',$,'Q',$,$,({string.Join(",", widths.Select(width => $"#{width}"))}))");
            text.Add($"IFCRELDEFINESBYPROPERTIES('1rdp0000000000000000AA',$,$,$,(#{wall}),#{set})");
        }
    }

    private static Length Mm(double mm) => Length.FromMm(mm);
}
