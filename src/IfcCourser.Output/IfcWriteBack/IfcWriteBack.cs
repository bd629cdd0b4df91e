using IfcCourser.Findings;
using IfcCourser.Ifc;
using IfcCourser.Layouts;

namespace IfcCourser.Output.IfcWriteBack;

/// <summary>
/// The model with the layout's facts as property and quantity sets on its walls and openings. The original bytes are kept
/// (see <see cref="Step21.StepAppender"/>); what an earlier run added is replaced.
/// </summary>
public static class IfcWriteBack
{
    /// <summary>Writes the model; the same model and layout give the same bytes.</summary>
    /// <param name="model">The model that the layout was made from.</param>
    public static void Write(IfcModel model, Layout layout, Stream output)
    {
        var addition = new Addition(model, layout.Model.Date, []);
        AddSets(addition, layout);
        addition.Write(output);
    }

    /// <summary>Adds the sets of all walls and their openings.</summary>
    internal static void AddSets(Addition addition, Layout layout)
    {
        var coursed = layout.Walls.ToDictionary(wall => wall.Identity.StepId);
        var skipped = layout.Skipped.ToDictionary(wall => wall.Identity.StepId);
        var written = new HashSet<long>();
        foreach (var record in addition.Model.Walls)
        {
            if (coursed.TryGetValue(record.StepId, out var wall))
            {
                WallSets.Coursed(addition.Sets, wall, layout.Rules);
                Openings(addition.Sets, wall, written);
            }
            else if (skipped.TryGetValue(record.StepId, out var other))
            {
                WallSets.Skipped(addition.Sets, other);
            }
        }
    }

    /// <summary>What a reader of the written model should know.</summary>
    public static ImmutableArray<Finding> Findings(IfcModel model) => model.File.HasSignature
        ? [new Finding(FindingCodes.SignatureDropped, "The written model leaves out the SIGNATURE section of the file.")]
        : [];

    /// <summary>An opening that several walls share, or a filling of several openings, gets the set of the first.</summary>
    private static void Openings(SetWriter sets, WallLayout wall, HashSet<long> written)
    {
        foreach (var opening in wall.Openings)
        {
            long?[] elements = [opening.Opening.StepId, opening.Opening.FillingStepId];
            var fresh = elements.OfType<long>().Where(written.Add).ToList();
            if (fresh.Count > 0)
            {
                WallSets.Opening(sets, opening, fresh);
            }
        }
    }
}
