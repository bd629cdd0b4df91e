using IfcCourser.Findings;

namespace IfcCourser.Output;

/// <summary>What a user reads from this assembly.</summary>
internal static class Messages
{
    private const string LayOutAgain = "Correct the file, or write it anew with the layout command.";

    public static Fault Unreadable(string file, Exception e) =>
        new(file, null, null, $"the file can't be read: {e.Message.TrimEnd('.')}", "Check the path and its permissions.");

    public static Fault NoJson(string file, long? line) => new(
        file, (int?)line + 1, null, "this is no valid JSON", "Name a layout.json as the layout command wrote it, or write it anew.");

    public static Fault NoLayout(string file) => new(
        file, null, null, "this is no layout: it has no member \"schema\" that says so", "Name a layout.json that the layout command wrote.");

    public static Fault OtherSchema(string file, string schema, string known) => new(
        file, null, null, $"its schema is \"{schema}\", and this version reads \"{known}\"", "Write it anew with the layout command of this version.");

    public static Fault Missing(string file, string path) => new(file, null, null, $"{path} is missing", LayOutAgain);

    public static Fault NotKind(string file, string path, string kind) => new(file, null, null, $"{path} is not {kind}", LayOutAgain);

    public static Fault NoChoice(string file, string path, string text, IEnumerable<string> known) =>
        new(file, null, null, $"{path} is \"{text}\", which is none of {string.Join(", ", known)}", LayOutAgain);

    public static Fault Unsound(string file, string path, string what) => new(file, null, null, $"{path} {what}", LayOutAgain);
}
