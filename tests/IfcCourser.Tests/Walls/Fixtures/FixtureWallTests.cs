using System.Globalization;
using System.Text;
using IfcCourser.Catalogs;
using IfcCourser.Rules;
using IfcCourser.Tests.Models;
using IfcCourser.Tests.Support;

namespace IfcCourser.Tests.Walls.Fixtures;

/// <summary>Every small model of fixtures/ifc is read as expected.txt beside it says.</summary>
public sealed class FixtureWallTests
{
    /// <summary>Chords of five degrees lose up to 0.13 % of a circle: 1 - sin(5 degrees) / (5 degrees).</summary>
    private const double ChordLoss = 0.0013;

    private static readonly LayoutRules _rules = LayoutRules.For(BuiltInRuleSets.Get("eu"), BuiltInCatalogs.Get("aac-mm"), OpeningPolicy.Move);

    public static TheoryData<string> Models =>
    [
        .. ExpectedModels.Folders.SelectMany(folder => Directory
            .GetFiles(ExpectedModels.PathOf(folder), "*.ifc")
            .Select(file => $"{folder}/{Path.GetFileName(file)}")
            .Order(StringComparer.Ordinal)),
    ];

    /// <summary>Those whose text stands one instance a line.</summary>
    public static TheoryData<string> SoundModels => [.. Models.Select(row => row.Data).Where(model => !model.StartsWith("oddities/", StringComparison.Ordinal))];

    /// <summary>Those of which a wall is expected to be laid out.</summary>
    public static TheoryData<string> LaidOutModels =>
    [
        .. ExpectedModels.Folders.SelectMany(folder => ExpectedModels.Of(folder)
            .Where(model => model.Value.Any(line => line.StartsWith("wall ", StringComparison.Ordinal)))
            .Select(model => $"{folder}/{model.Key}")),
    ];

    [Theory]
    [MemberData(nameof(Models))]
    public void A_model_holds_what_was_worked_out_by_hand(string model)
    {
        var (folder, name) = (model.Split('/')[0], model.Split('/')[1]);
        var expected = ExpectedModels.Of(folder)[name];
        Assert.Equal(string.Join('\n', expected), string.Join('\n', Agreed([.. expected], [.. Lines(File.ReadAllBytes(ExpectedModels.PathOf(model)))])));
    }

    [Theory]
    [MemberData(nameof(SoundModels))]
    public void The_order_and_numbers_of_its_instances_mean_nothing(string model)
    {
        var text = File.ReadAllText(ExpectedModels.PathOf(model));
        Assert.Equal(Lines(text), Lines(ModelFiles.Reordered(text, Array.Reverse)), StringComparer.Ordinal);
    }

    [Theory]
    [MemberData(nameof(LaidOutModels))]
    public void A_model_is_laid_out_within_the_laws(string model) =>
        Assert.Empty(LayoutLaws.Breaches(ModelFiles.LayOut(File.ReadAllBytes(ExpectedModels.PathOf(model)), _rules)));

    [Fact]
    public void Nothing_is_expected_of_models_that_are_not_there() => Assert.Equal(
        Models.Select(row => row.Data),
        ExpectedModels.Folders.SelectMany(folder => ExpectedModels.Of(folder).Keys.Order(StringComparer.Ordinal).Select(name => $"{folder}/{name}")),
        StringComparer.Ordinal);

    private static IEnumerable<string> Lines(string text) => Lines(Encoding.ASCII.GetBytes(text));

    private static IEnumerable<string> Lines(byte[] file)
    {
        using var model = ModelFiles.Read(file);
        return WallLines.Of(ModelFiles.Walls(model, _rules));
    }

    // The lines as read; those that agree within what the expected line allows become that line, volumes not asked for go.
    private static IEnumerable<string> Agreed(List<string> expected, List<string> read)
    {
        var next = 0;
        foreach (var line in read)
        {
            var wanted = next < expected.Count ? expected[next] : string.Empty;
            if (line.StartsWith("volume ", StringComparison.Ordinal) && !wanted.StartsWith("volume ", StringComparison.Ordinal))
            {
                continue;
            }

            next++;
            yield return Agrees(wanted, line) ? wanted : line;
        }
    }

    private static bool Agrees(string wanted, string line)
    {
        var (key, value) = (wanted.Split(' ')[0], line[(line.IndexOf(' ', StringComparison.Ordinal) + 1)..]);
        if (!line.StartsWith($"{key} ", StringComparison.Ordinal))
        {
            return false;
        }

        return key switch
        {
            "volume" when wanted.Split(' ') is [_, var volume, "within", var percent, "%"] =>
                Math.Abs((Number(value) / Number(volume)) - 1) <= Number(percent) / 100,
            "outline" or "shape" when wanted.Contains("arc ", StringComparison.Ordinal) =>
                new ArcFigure(wanted[(key.Length + 1)..]).IsFollowedBy(value, ChordLoss),
            _ => false,
        };
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
