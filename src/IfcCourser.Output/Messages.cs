using IfcCourser.Findings;

namespace IfcCourser.Output;

/// <summary>Every message of the writers and readers that a user reads.</summary>
internal static class Messages
{
    private const string WriteAnother = "Write it anew with --write-baseline.";

    public static Fault NotReadable(string path, Exception e) => new(
        path, null, null, $"this can't be read: {e.Message.Split(" : '")[0].TrimEnd('.')}", "Check its name and who may read it.");

    public static Fault BaselineNotJson(string path, long? line) => new(path, (int?)line + 1, null, "this is no JSON", WriteAnother);

    public static Fault NoBaseline(string path) => new(path, null, null, "this is no baseline of accepted findings", WriteAnother);

    public static Fault BadBaselineEntry(string path, int number) => new(
        path, null, null, FormattableString.Invariant($"entry {number} under \"accepted\" has no code, or a count that is no whole number"), "Correct or delete the entry.");
}
