using System.Collections.Immutable;
using System.Security.Cryptography;
using IfcCourser.Catalogs;
using IfcCourser.Cli.Commands;
using IfcCourser.Findings;
using IfcCourser.Rules;

namespace IfcCourser.Cli.Batch;

/// <summary>What a batch has to do: its lots, and which of them are laid out at once.</summary>
/// <param name="Lots">In the order of the manifest.</param>
internal sealed record BatchPlan(ImmutableArray<PlannedLot> Lots, ImmutableArray<LotWork> Works)
{
    private sealed record ModelFile(string? Sha256, long Size);

    /// <summary>The fault of a catalog, rule set or job file that a row of the manifest names wrongly; a model that can't be read is its lot's.</summary>
    public static Outcome<BatchPlan> Of(List<Lot> lots, BatchSettings settings)
    {
        var catalogs = Named(lots, lot => lot.Catalog, SettingsReader.Catalog);
        var rules = Named(lots, lot => lot.Rules, SettingsReader.RuleSet);
        var jobs = Named(lots, lot => lot.Job, settings.OfJob);
        foreach (var lot in lots)
        {
            if ((Found(catalogs, lot.Catalog)?.Fault ?? Found(rules, lot.Rules)?.Fault ?? Found(jobs, lot.Job)?.Fault) is { } fault)
            {
                return fault with { What = $"{fault.What} (lot {lot.Name})" };
            }
        }

        var models = lots.Select(lot => lot.Model).Distinct(StringComparer.Ordinal).AsParallel()
            .Select(path => (path, File: Hashed(path))).ToDictionary(model => model.path, model => model.File, StringComparer.Ordinal);
        var planned = new List<(PlannedLot Lot, string PlanKey)>();
        var keys = new HashSet<string>(StringComparer.Ordinal);
        foreach (var lot in lots)
        {
            // A model that can't be read has no content: its path stands for it.
            var planKey = LotKey.OfPlan(lot, models[lot.Model].Sha256 ?? lot.Model, settings.Options);
            var key = LotKey.Of(planKey, lot.Siting);
            var given = Found<RunSettings>(jobs, lot.Job)?.Value ?? settings.Run;
            var run = given with
            {
                Model = lot.Model,
                Catalog = Found<Catalog>(catalogs, lot.Catalog)?.Value ?? given.Catalog,
                Rules = Found<RuleSet>(rules, lot.Rules)?.Value ?? given.Rules,
            };
            planned.Add((new PlannedLot(planned.Count, lot, key, run, IsRepeat: !keys.Add(key)), planKey));
        }

        var works = planned.GroupBy(lot => lot.PlanKey, StringComparer.Ordinal).Select(plan =>
        {
            var model = models[plan.First().Lot.Lot.Model];
            return new LotWork(plan.Key, [.. plan.Select(lot => lot.Lot)], model.Size * plan.Count(lot => !lot.Lot.IsRepeat));
        });
        return new BatchPlan([.. planned.Select(lot => lot.Lot)], [.. works]);
    }

    private static Dictionary<string, Outcome<T>> Named<T>(List<Lot> lots, Func<Lot, string?> name, Func<string, Outcome<T>> load)
        where T : class => lots.Select(name).OfType<string>().Distinct(StringComparer.Ordinal).ToDictionary(one => one, load, StringComparer.Ordinal);

    private static Outcome<T>? Found<T>(Dictionary<string, Outcome<T>> read, string? name)
        where T : class => name is null ? null : read[name];

    private static ModelFile Hashed(string path)
    {
        try
        {
            if (InputFile.Empty(path) is not null)
            {
                return new ModelFile(null, 0);
            }

            using var stream = File.OpenRead(path);
            return new ModelFile(Convert.ToHexStringLower(SHA256.HashData(stream)), stream.Length);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return new ModelFile(null, 0);
        }
    }
}
