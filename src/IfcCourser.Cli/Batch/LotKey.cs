using System.Collections.Immutable;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using IfcCourser.Jobs;
using IfcCourser.Layouts;
using IfcCourser.Output.Json;

namespace IfcCourser.Cli.Batch;

/// <summary>
/// A hash of all that decides a lot's files: the model's bytes and file name, the options, the catalog and rules, how the plan
/// stands on the lot, and the program. Equal keys mean equal files; the lot's own name is in none of them.
/// </summary>
internal static class LotKey
{
    /// <summary>Not the version alone: each build has its own identity, equal for equal sources.</summary>
    private static readonly string _program = string.Join(
        ' ', new[] { typeof(Layout), typeof(LayoutJson), typeof(LotKey) }.Select(type => type.Assembly.ManifestModule.ModuleVersionId.ToString()));

    /// <summary>What lots have in common that are laid out at once, however they stand.</summary>
    /// <param name="lot">The lot.</param>
    /// <param name="sha256">Of its model.</param>
    /// <param name="options">Of the batch, each with its value; see <see cref="Content"/>.</param>
    public static string OfPlan(Lot lot, string sha256, ImmutableArray<string> options) => Hash(
        [_program, Path.GetFileName(lot.Model), sha256, .. options, $"catalog {Content(lot.Catalog)}", $"rules {Content(lot.Rules)}", $"job {OfJob(lot.Job)}"]);

    public static string Of(string planKey, LotSiting siting) => Hash(
        [planKey, siting.IsMirrored ? "mirrored" : "plain", siting.Rotation.ToString("0.############################", CultureInfo.InvariantCulture)]);

    /// <summary>A value as it is; of a file its name and what it holds, wherever it lies.</summary>
    public static string Content(string? value) =>
        value is not null && File.Exists(value) ? $"{Path.GetFileName(value)} {Convert.ToHexStringLower(SHA256.HashData(File.ReadAllBytes(value)))}"
        : value ?? string.Empty;

    /// <summary>A job file, and the catalog and rule set that it names.</summary>
    public static string OfJob(string? path) => string.Join(' ', JobFiles(path).Prepend(path).Select(Content));

    /// <summary>Catalog and rule set that a job file names: built-in names or paths.</summary>
    public static IEnumerable<string> JobFiles(string? path) =>
        path is not null && JobReader.Load(path) is { IsOk: true } job ? new[] { job.Value.Options.Catalog, job.Value.Options.Rules }.OfType<string>() : [];

    private static string Hash(IEnumerable<string> parts) =>
        Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(string.Join('\n', parts.Select(part => part.ReplaceLineEndings(" "))))));
}
