using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using IfcCourser.Catalogs;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Tests.Support;

/// <summary>Reads a corpus of walls that are drawn in text; fixtures/coursing/heights.txt tells the form.</summary>
internal static partial class WallCorpus
{
    /// <summary>The cases of a file under fixtures/coursing.</summary>
    public static List<CorpusCase> Read(string file)
    {
        var cases = new List<List<string>>();
        foreach (var line in File.ReadLines(Path.Combine(Folder(), file)).Select(line => line.Trim()).Where(line => line.Length > 0 && line[0] is not ('#' or ':')))
        {
            if (line[0] == '=')
            {
                cases.Add([]);
            }

            cases[^1].Add(line);
        }

        return cases.ConvertAll(Case);
    }

    private static CorpusCase Case(List<string> lines)
    {
        string? Of(string key) => lines.Find(line => line.StartsWith(key + " ", StringComparison.Ordinal))?[(key.Length + 1)..];

        var catalog = BuiltInCatalogs.Get(Of("catalog")!);
        if (Of("other-heights") is { } heights)
        {
            catalog = catalog with { OtherHeights = [.. heights.Split(',').Select(height => Number(height, catalog.Units))] };
        }

        var set = BuiltInRuleSets.Get(Of("rules") ?? "none");
        set = set with
        {
            StoreyStart = Of("storey-start") is { } start ? Enum.Parse<StoreyStart>(start, ignoreCase: true) : set.StoreyStart,
            Tees = Of("tees") is { } tees ? Enum.Parse<TeeBuild>(tees, ignoreCase: true) : set.Tees,
            BondBeams = Of("bond-beams") is { } tops
                ? BuiltInRuleSets.Get("us").BondBeams! with { Tops = Enum.Parse<BeamedTops>(tops, ignoreCase: true), Openings = null, LargestSpacing = null }
                : set.BondBeams,
            MovementJoints = Of("wide-opening")?.Split(' ') is [var from, var within]
                ? set.MovementJoints! with { WideOpenings = new WideOpeningRule(Number(from, catalog.Units), Number(within, catalog.Units)) }
                : set.MovementJoints,
        };
        var rules = LayoutRules.For(set, catalog, Enum.Parse<OpeningPolicy>(Of("openings") ?? "keep", ignoreCase: true));
        var drawing = lines.FindIndex(line => line.StartsWith("courses", StringComparison.Ordinal));
        drawing = drawing < 0 ? lines.Count : drawing;
        var model = new CorpusModel(catalog.Units);
        foreach (var line in lines.Take(drawing))
        {
            model.Read(line);
        }

        return new CorpusCase(
            lines[0].TrimStart('=', ' '), rules, model.Model, [.. Of("finds")?.Split(' ') ?? []],
            [.. lines.Where(line => line.StartsWith("joints ", StringComparison.Ordinal)).SelectMany(line => Joints(line, catalog.Units))],
            [.. Of("cuts")?.Split(',').Select(cuts => cuts.Trim().Split(' ')).Select(cuts => (cuts[0], int.Parse(cuts[1], CultureInfo.InvariantCulture))) ?? []],
            drawing < lines.Count ? Columns(lines.Skip(drawing), catalog.Units) : []);
    }

    private static IEnumerable<(string Wall, Length At, string Why)> Joints(string line, UnitSystem units)
    {
        var wall = line.Split(' ')[1];
        return line[(line.IndexOf(wall, 7, StringComparison.Ordinal) + wall.Length)..].Split(',').Select(joint => joint.Trim())
            .Select(joint => (wall, Number(joint[..joint.LastIndexOf(' ')], units), joint[(joint.LastIndexOf(' ') + 1)..]));
    }

    private static ImmutableArray<CorpusColumn> Columns(IEnumerable<string> drawing, UnitSystem units)
    {
        var rows = drawing.Select(line => line.Split('|').Select(cell => cell.Trim()).ToArray()).ToList();
        return
        [
            .. Enumerable.Range(1, rows[0].Length - 2).Select(column => new CorpusColumn(
                rows[0][column],
                NumberOf(rows, "bed", column, units),
                NumberOf(rows, "gap", column, units),
                [
                    .. rows.Where(row => char.IsAsciiDigit(row[0][0]) && row[column].Length > 0)
                        .SelectMany(row => Lines(row[0]).Select(line => (line, row[column])))
                        .Select(row => Course(row.line, row.Item2, units))
                        .OrderBy(course => course.Line),
                ])),
        ];
    }

    private static Length NumberOf(List<string[]> rows, string label, int column, UnitSystem units) =>
        rows.Find(row => string.Equals(row[0], label, StringComparison.Ordinal))?[column] is { Length: > 0 } text ? Number(text, units) : Length.Zero;

    private static IEnumerable<int> Lines(string label)
    {
        var ends = label.Split("..").Select(end => int.Parse(end, CultureInfo.InvariantCulture)).ToArray();
        return Enumerable.Range(ends[0], ends[^1] - ends[0] + 1);
    }

    private static (int Line, Length Height, string Run) Course(int line, string cell, UnitSystem units)
    {
        var run = RunStart().Match(cell);
        var height = run.Success ? cell[..run.Index] : cell;
        return (line, Number(height, units), cell[height.Length..].Replace(" ", string.Empty, StringComparison.Ordinal));
    }

    /// <summary>A number of the corpus in the catalog's unit: mm or inches.</summary>
    public static Length Number(string text, UnitSystem units) => LengthText.TryParse($"{text.Trim()} {(units == UnitSystem.Inch ? "in" : "mm")}", out var length, out var problem)
        ? length
        : throw new FormatException(problem);

    private static string Folder()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "IfcCourser.sln")))
        {
            folder = folder.Parent ?? throw new InvalidOperationException("The tests do not run from inside the repository.");
        }

        return Path.Combine(folder.FullName, "fixtures", "coursing");
    }

    [GeneratedRegex(@"[\[<{]", RegexOptions.NonBacktracking)]
    private static partial Regex RunStart();
}
