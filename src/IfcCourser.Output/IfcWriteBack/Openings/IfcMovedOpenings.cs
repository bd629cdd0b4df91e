using IfcCourser.Geometry;
using IfcCourser.Ifc;
using IfcCourser.Layouts;

namespace IfcCourser.Output.IfcWriteBack.Openings;

/// <summary>The coursed model with its openings where the layout places them: for the designer to compare, accept or refuse.</summary>
public static class IfcMovedOpenings
{
    /// <summary>Writes the model; the same model and layout give the same bytes.</summary>
    /// <param name="model">The model that the layout was made from.</param>
    public static void Write(IfcModel model, Layout layout, Stream output)
    {
        var addition = new Addition(model, layout.Model.Date, []);
        IfcWriteBack.AddSets(addition, layout);
        var moved = OpeningChange.Of(model, layout).Where(change => change.IsMoved).ToList();
        var fillings = model.Walls.SelectMany(record => record.Openings.Concat(record.Parts.SelectMany(part => part.Openings)))
            .GroupBy(opening => opening.StepId)
            .ToDictionary(group => group.Key, group => group.First().Fillings.Select(filling => filling.StepId).ToArray());
        var mover = new PlacementMover(model, addition.Appender, moved.SelectMany(change => All(change.Opening.Opening.StepId!.Value)));
        foreach (var change in moved)
        {
            var opening = change.Opening.Opening.StepId!.Value;
            var along = change.Wall.Frame.Direction * change.Along.Mm;
            mover.Move(opening, fillings.GetValueOrDefault(opening, []), new Vector3(along.X, along.Y, change.Up.Mm));
        }

        addition.Write(output);

        IEnumerable<long> All(long opening) => fillings.GetValueOrDefault(opening, []).Prepend(opening);
    }
}
