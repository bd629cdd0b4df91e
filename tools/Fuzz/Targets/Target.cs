namespace Fuzz.Targets;

/// <summary>A part of the program that reads what others wrote.</summary>
/// <param name="Name">As the command line names it; also its folder in the corpus.</param>
/// <param name="Read">Reads an input; whatever it throws is a defect.</param>
internal sealed record Target(string Name, Action<byte[]> Read)
{
    public static IReadOnlyList<Target> All { get; } =
    [
        new("step", StepTarget.Read),
        new("model", ModelTarget.Read),
        new("toml", TomlTarget.Read),
        new("readings", ReadingsTarget.Read),
        new("manifest", ManifestTarget.Read),
        new("bcf", BcfTarget.Archive),
        new("markup", BcfTarget.Markup),
        new("layout", LayoutTarget.Read),
    ];
}
