namespace IfcCourser.Cli;

/// <content>What help says below the options, and completion.</content>
internal static partial class Messages
{
    public const string Examples = "Examples:";

    public const string AboutCompletion = "Print the script that has a shell complete commands, options and names; its first line says where it goes.";

    public static string ArgumentShell(IEnumerable<string> shells) => $"One of {string.Join(", ", shells)}.";

    /// <param name="verb">As it is written; empty for the program itself.</param>
    public static IReadOnlyList<string> ExamplesOf(string verb) => verb switch
    {
        "layout" =>
        [
            "layout house.ifc",
            "layout house.ifc --catalog aac-mm --rules eu --job job.toml --out issue-a",
            "layout house-b.ifc --job job.toml --since issue-a/layout.json --out issue-b",
        ],
        "check" => ["check house.ifc --write-baseline accepted.json", "check house.ifc --baseline accepted.json --junit check.xml"],
        "slab" =>
        [
            "slab issue-a/layout.json --readings readings.csv --out slab",
            "slab issue-a/layout.json --readings readings.csv --apply --out as-built",
            "slab issue-a/layout.json --readings tops.csv --stage levelled --out first-course",
        ],
        "batch" => ["batch lots.csv --out lots", "batch lots.csv --out lots --shard 2/8", "batch lots.csv --out lots --collect"],
        "compare" => ["compare issue-a/layout.json issue-b/layout.json --html changes.html"],
        "catalog show" => ["catalog show aac-mm"],
        "catalog verify" => ["catalog verify mine.toml"],
        "catalog ids" => ["catalog ids aac-mm --out ids"],
        "completion" => ["completion bash"],
        _ => ["catalog list"],
    };
}
