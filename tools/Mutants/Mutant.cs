using System.Text;
using Mutants.Mutations;
using Mutants.Step;

namespace Mutants;

/// <summary>A model changed in one to four places, and how the command is to lay it out.</summary>
/// <param name="Changes">What was changed, in words.</param>
/// <param name="Arguments">Of layout, model and folder left out.</param>
internal sealed record Mutant(string Model, IReadOnlyList<string> Changes, byte[] Bytes, IReadOnlyList<string> Arguments)
{
    private static readonly string[][] _options =
    [
        ["--formats", "json"],
        ["--formats", "json", "--walls", "all", "--width", "any"],
        ["--formats", "json", "--walls", "all", "--width", "any"],
        ["--formats", "json,ifc,dxf", "--ifc-parts", "--apply-openings"],
        ["--formats", "json,ifc,dxf", "--ifc-parts", "--apply-openings", "--walls", "all", "--width", "any"],
        ["--formats", "json,pdf,svg,csv", "--walls", "all", "--width", "any"],
        ["--formats", "json,xlsx,html,bcf", "--walls", "all", "--width", "any"],
        ["--formats", "json", "--walls", "all", "--width", "any", "--catalog", "block-in", "--rules", "us"],
    ];

    public string Description => $"{Path.GetFileName(Model)}: {string.Join("; ", Changes)}; layout {string.Join(' ', Arguments)}";

    /// <summary>The mutant of a number; the same on any machine.</summary>
    public static Mutant Make(IReadOnlyList<string> models, int seed, int number)
    {
        const int MostChanges = 4;
        var random = new Random(unchecked((seed * 1_000_003) + number));
        var model = models[number % models.Count];
        var draft = new Draft(Tokenizer.Split(Encoding.Latin1.GetString(File.ReadAllBytes(model))));
        var changes = new List<string>();
        var left = random.Next(1, MostChanges + 1);
        for (var tries = 0; left > 0 && tries < 100 && draft.Raw is null; tries++)
        {
            var mutation = random.Of(Mutation.All);
            if (mutation.Apply(draft, random))
            {
                changes.Add(mutation.Name);
                left--;
            }
        }

        return new Mutant(model, changes, draft.Bytes, random.Of(_options));
    }
}
