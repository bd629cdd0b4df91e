namespace IfcCourser.Findings;

/// <summary>Why an input could not be read: the file, the line or #id where known, what is wrong and what to do.</summary>
/// <param name="File">Path as the user gave it.</param>
/// <param name="Line">Line number from 1, where known.</param>
/// <param name="StepId">Instance number in a STEP file, where known.</param>
/// <param name="What">What is wrong, a clause without a full stop.</param>
/// <param name="Remedy">What to do, a sentence.</param>
public sealed record Fault(string File, int? Line, long? StepId, string What, string Remedy)
{
    public override string ToString()
    {
        var line = Line is { } l ? $":{l}" : string.Empty;
        var id = StepId is { } i ? $" #{i}" : string.Empty;
        return FormattableString.Invariant($"{File}{line}{id}: {What}. {Remedy}");
    }
}
