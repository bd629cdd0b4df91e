using IfcCourser.Layouts;

namespace IfcCourser.Cli.Batch;

/// <summary>A lot of a subdivision: a row of the manifest, or a model of the folder.</summary>
/// <param name="Name">Unique, also where case does not count; the name of its folder of results.</param>
/// <param name="Plan">The model as the manifest writes it: lots of one plan have it in common.</param>
/// <param name="Model">Path of the model.</param>
/// <param name="Catalog">A built-in name or the path of a file; null where the batch's counts.</param>
/// <param name="Rules">A built-in name or the path of a file; null where the batch's counts.</param>
/// <param name="Job">Path of its job file; null where the batch's counts.</param>
/// <param name="Phase">Delivery phase; empty where the manifest names none.</param>
internal sealed record Lot(string Name, string Plan, string Model, LotSiting Siting, string? Catalog, string? Rules, string? Job, string Phase);
