using IfcCourser.Ifc;
using IfcCourser.Layouts;

namespace IfcCourser.Output.IfcWriteBack.Parts;

/// <summary>
/// The model with every coursed wall as the blocks, lintels and bars it is built of. The sets are those of the coursed model; the bodies
/// of the walls, of their own parts and of their openings are left out, since geometry belongs to the wall or to its parts, not to both.
/// </summary>
public static class IfcParts
{
    /// <summary>Whether a model was written here: it holds no bodies to be coursed any more.</summary>
    public static bool Made(IfcModel model) => EarlierSets.HavePieces(model);

    /// <summary>Writes the model; the same model and layout give the same bytes.</summary>
    /// <param name="model">The model that the layout was made from.</param>
    public static void Write(IfcModel model, Layout layout, Stream output)
    {
        var left = BodiesLeftOut.Of(model, layout);
        var addition = new Addition(model, layout.Model.Date, left.Dropped);
        left.Replace(addition.Appender);
        IfcWriteBack.AddSets(addition, layout);
        var geometry = new GeometryWriter(model, addition.Appender);
        var styles = new PartStyles(model, geometry);
        var shapes = new SharedShapes(geometry, styles);
        var blocks = new BlockParts(addition, geometry, shapes, layout.Rules.Catalog);
        var bars = new BarParts(addition, geometry, shapes, layout);
        var grids = new ModuleGrids(addition, geometry, styles);
        foreach (var wall in layout.Walls)
        {
            var place = new WallPlace(model, geometry, wall.Identity.StepId, wall.Frame);
            var steel = bars.Add(wall, place);
            Aggregate.Add(addition, wall, [.. blocks.Add(wall, place), .. steel]);
            grids.Add(wall);
        }

        blocks.AddSets();
        grids.AddContainment();
        styles.AddLayers();
        addition.Write(output);
    }
}
