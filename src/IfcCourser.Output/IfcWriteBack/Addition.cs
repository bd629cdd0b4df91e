using IfcCourser.Ifc;
using IfcCourser.Step21;

namespace IfcCourser.Output.IfcWriteBack;

/// <summary>A copy of a model that things are added to: numbers, GlobalIds and owner history for all that adds.</summary>
internal sealed class Addition
{
    private readonly string _date;

    /// <param name="date">ISO 8601, for header and owner history.</param>
    /// <param name="dropped">Instances to be left out beside what an earlier run added.</param>
    public Addition(IfcModel model, string date, IEnumerable<long> dropped)
    {
        Model = model;
        _date = date;
        var earlier = StepFrame.Find(model.File, Generator.Name) is null ? EarlierSets.Find(model) : [];
        Appender = new StepAppender(model.File, Generator.Name, earlier.Concat(dropped));
        Guids = new IfcGuid(model.File, Appender.Dropped);
        Owner = OwnerHistory.Add(model, Appender, date);
        Sets = new SetWriter(model, Appender, Guids, Owner);
    }

    public IfcModel Model { get; }

    public StepAppender Appender { get; }

    public IfcGuid Guids { get; }

    /// <summary>A reference to the owner history, or <c>$</c>.</summary>
    public StepValue Owner { get; }

    public SetWriter Sets { get; }

    public void Write(Stream output) => Appender.Write(output, TimeStamp(_date), $"{Generator.Name} {Generator.Version}");

    /// <summary>FILE_NAME asks for date and time (ISO 10303-21:2016, 8.2.2); a date alone is its first second.</summary>
    private static string TimeStamp(string date) => date.Contains('T', StringComparison.Ordinal) ? date : $"{date}T00:00:00";
}
