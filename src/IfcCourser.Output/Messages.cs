using IfcCourser.Findings;
using IfcCourser.Slabs;

namespace IfcCourser.Output;

/// <summary>Every message of the writers and readers that a user reads.</summary>
internal static class Messages
{
    private const string AskForAnother = "Have it written again, by another program if need be.";
    private const string WriteAnother = "Write it anew with --write-baseline.";

    private const string LayOutAgain = "Correct the file, or write it anew with the layout command.";

    public static string Of(BarPlace place) => place switch
    {
        BarPlace.Inside => "inside",
        BarPlace.OffAlong => "off along the wall: core too near a joint",
        _ => "off across the wall: out of the core",
    };

    /// <summary>What is done about a bar as built.</summary>
    public static string Of(BarAnswer answer) => answer switch
    {
        BarAnswer.AsPlanned => "core as planned",
        BarAnswer.CoreMoves => "core drilled around it",
        BarAnswer.BondMoves => "blocks laid around it",
        _ => "left: engineer and building official",
    };

    /// <summary>What the two decide about a bar that is left.</summary>
    public static string AskedOf(BarPlace place) => place == BarPlace.OffAcross
        ? "Out of the core whatever the bond: may the wall keep it there, or is it replaced? Neither bent nor drilled in anew without approval."
        : "No bond of full and cut blocks keeps its core clear of joints, openings and ends: may it stay, or is it replaced? Neither bent nor drilled in anew without approval.";

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

    public static Fault BaselineNotJson(string path, long? line) => new(path, (int?)line + 1, null, "this is no JSON", WriteAnother);

    public static Fault NoBaseline(string path) => new(path, null, null, "this is no baseline of accepted findings", WriteAnother);

    public static Fault BadBaselineEntry(string path, int number) => new(
        path, null, null, FormattableString.Invariant($"entry {number} under \"accepted\" has no code, or a count that is no whole number"), "Correct or delete the entry.");

    public static Fault NoZip(string path, Exception e) => new(path, null, null, $"this is no zip file that can be read: {e.Message.TrimEnd('.')}", AskForAnother);

    public static Fault TooManyEntries(string path, int most) => new(path, null, null, FormattableString.Invariant($"the file has more than {most} entries"), AskForAnother);

    public static Fault UnpacksTooLarge(string path, int most) => new(
        path, null, null, FormattableString.Invariant($"the file unpacks to more than {most / 1024 / 1024} MB"), "Take out large documents and pictures.");

    public static Fault EntryOutside(string path, string entry) => new(path, null, null, $"the entry \"{Shown(entry)}\" would lie outside the file", AskForAnother);

    public static Fault EntryTwice(string path, string entry) => new(path, null, null, $"the entry \"{Shown(entry)}\" is there twice", AskForAnother);

    public static Fault XmlTooLarge(string path, string entry) => new(path, null, null, $"{Shown(entry)} is too large for what it should be", AskForAnother);

    public static Fault XmlTooDeep(string path, string entry, int deepest) => new(
        path, null, null, FormattableString.Invariant($"{Shown(entry)} has elements more than {deepest} deep"), AskForAnother);

    /// <summary>What the reader says, up to its own place, which is given here.</summary>
    public static Fault BadXml(string path, string entry, System.Xml.XmlException e) => new(
        path, null, null, FormattableString.Invariant($"{Shown(entry)}{(e.LineNumber > 0 ? FormattableString.Invariant($", line {e.LineNumber},") : string.Empty)} can't be read: {e.Message.Split(". ")[0].Split(" Line ")[0].TrimEnd('.')}"), AskForAnother);

    public static Fault NoBcfVersion(string path) => new(path, null, null, "there is no bcf.version in it: this is no BCF file", "Name a .bcf file of version 2.1 or 3.0.");

    public static Fault UnknownBcfVersion(string path, string? version) => new(
        path, null, null, $"this is BCF {Shown(version ?? "of no version")}; 2.1 and 3.0 are read", "Have it written as 2.1 or 3.0.");

    public static Fault NoTopic(string path, string entry) => new(path, null, null, $"{Shown(entry)} has no topic with a GUID", AskForAnother);

    public static Fault TopicTwice(string path, string guid) => new(path, null, null, $"topic {guid} is there twice", AskForAnother);

    /// <summary>A name from a file of others: not too long, and nothing that a terminal would obey.</summary>
    private static string Shown(string name)
    {
        const int Longest = 80;
        var plain = string.Concat(name.Select(c => char.IsControl(c) ? '?' : c));
        return plain.Length > Longest ? plain[..Longest] + "..." : plain;
    }
}
