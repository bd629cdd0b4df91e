using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;
using IfcCourser.Ifc;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Runs;
using IfcCourser.Walls;

namespace IfcCourser.Tests.Models;

/// <summary>Model files in memory: read and laid out, every wall of any width, or with their instances in another order.</summary>
internal static partial class ModelFiles
{
    private static readonly WallSelection _all = new() { Walls = WallChoice.All, Width = WidthMatch.Any };

    public static WallModel Walls(IfcModel model, LayoutRules rules)
    {
        var walls = WallReader.Read(model, _all, rules.Catalog, rules.Set);
        return UniqueIds.Of(walls with { Findings = [.. model.Findings, .. walls.Findings] });
    }

    public static IfcModel Read(ReadOnlyMemory<byte> file)
    {
        var read = IfcModel.Read("model.ifc", file);
        Assert.True(read.IsOk, read.Fault?.ToString());
        return read.Value;
    }

    public static Layout LayOut(ReadOnlyMemory<byte> file, LayoutRules rules)
    {
        using var model = Read(file);
        return LayoutBuilder.Build(Walls(model, rules), rules, new ModelFacts(model.FileName, model.Sha256, model.SchemaName, model.Units.LengthMm, null, null, model.TimeStamp));
    }

    /// <summary>The same model with its instances in another order, numbered anew in that order.</summary>
    /// <param name="text">Instances one a line.</param>
    /// <param name="order">Changes their order.</param>
    public static string Reordered(string text, Action<string[]> order)
    {
        var lines = text.Split('\n').ToList();
        var (from, to) = (lines.IndexOf("DATA;") + 1, lines.LastIndexOf("ENDSEC;"));
        var instances = lines[from..to].ToArray();
        order(instances);
        var numbers = instances.Select((line, i) => (Old: line.Split('=')[0], New: i + 1)).ToDictionary(pair => pair.Old, pair => pair.New, StringComparer.Ordinal);
        var renumbered = instances.Select(line => Reference().Replace(line, match => string.Create(CultureInfo.InvariantCulture, $"#{numbers[match.Value]}")));
        return string.Join('\n', [.. lines[..from], .. renumbered, .. lines[to..]]);
    }

    /// <summary>The same model with a GlobalId of its own for everything that has one, in an order that has nothing to do with that of the old ones.</summary>
    public static string WithOtherIds(string text, int seed) => GlobalId().Replace(text, match =>
        string.Create(CultureInfo.InvariantCulture, $"'0{Convert.ToHexString(SHA256.HashData(Encoding.UTF8.GetBytes(match.Value + seed.ToString(CultureInfo.InvariantCulture))))[..21]}'"));

    [GeneratedRegex(@"(?<==IFC[A-Z0-9]+\()'[0-9A-Za-z_$]{22}'", RegexOptions.None, 1000)]
    private static partial Regex GlobalId();

    [GeneratedRegex(@"#\d+", RegexOptions.None, 1000)]
    private static partial Regex Reference();
}
