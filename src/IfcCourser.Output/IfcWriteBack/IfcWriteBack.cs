using IfcCourser.Findings;
using IfcCourser.Ifc;
using IfcCourser.Layouts;
using IfcCourser.Step21;

namespace IfcCourser.Output.IfcWriteBack;

/// <summary>
/// The model with the layout's facts as property and quantity sets on its walls and openings. The original bytes are kept
/// (see <see cref="StepAppender"/>); what an earlier run added is replaced.
/// </summary>
public static class IfcWriteBack
{
    /// <summary>Writes the model; the same model and layout give the same bytes.</summary>
    /// <param name="model">The model that the layout was made from.</param>
    public static void Write(IfcModel model, Layout layout, Stream output)
    {
        var dropped = StepFrame.Find(model.File, Generator.Name) is null ? EarlierSets.Find(model) : [];
        var appender = new StepAppender(model.File, Generator.Name, dropped);
        var guids = new IfcGuid(model.File, appender.Dropped);
        var sets = new SetWriter(model, appender, guids, OwnerHistory.Add(model, appender, layout.Model.Date));
        var coursed = layout.Walls.ToDictionary(wall => wall.Identity.StepId);
        var skipped = layout.Skipped.ToDictionary(wall => wall.Identity.StepId);
        var written = new HashSet<long>();
        foreach (var record in model.Walls)
        {
            if (coursed.TryGetValue(record.StepId, out var wall))
            {
                WallSets.Coursed(sets, wall, layout.Rules);
                Openings(sets, wall, written);
            }
            else if (skipped.TryGetValue(record.StepId, out var other))
            {
                WallSets.Skipped(sets, other);
            }
        }

        appender.Write(output, TimeStamp(layout.Model.Date), $"{Generator.Name} {Generator.Version}");
    }

    /// <summary>What a reader of the written model should know.</summary>
    public static ImmutableArray<Finding> Findings(IfcModel model) => model.File.HasSignature
        ? [new Finding(FindingCodes.SignatureDropped, "The written model leaves out the SIGNATURE section of the file.")]
        : [];

    /// <summary>FILE_NAME asks for date and time (ISO 10303-21:2016, 8.2.2); a date alone is its first second.</summary>
    private static string TimeStamp(string date) => date.Contains('T', StringComparison.Ordinal) ? date : $"{date}T00:00:00";

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
