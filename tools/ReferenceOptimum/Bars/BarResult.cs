namespace ReferenceOptimum.Bars;

/// <summary>A wall's bars beside the reference's.</summary>
/// <param name="Name">Which wall, with catalog and rules.</param>
/// <param name="Ours">The layout's bars.</param>
/// <param name="Best">The reference's; null where it is not decided.</param>
/// <param name="Named">Courses that findings name.</param>
/// <param name="Unsaid">Needs unmet that no finding names.</param>
/// <param name="Details">Where they differ.</param>
internal sealed record BarResult(string Name, BarCount Ours, BarCount? Best, int Named, int Unsaid, IReadOnlyList<string> Details)
{
    /// <summary>A rule is broken that need not be, a bar stands that need not, or what is broken is not named.</summary>
    public bool IsWorse => (Best is { } best && Ours.CompareTo(best) > 0) || Named != Ours.OnJoint || Unsaid > 0;

    /// <summary>The reference is beaten: it is wrong.</summary>
    public bool IsReferenceWrong => Best is { } best && Ours.CompareTo(best) < 0;

    private string Mark => IsReferenceWrong ? "X" : IsWorse ? "!" : Best is null ? "?" : "=";

    public override string ToString() => $"{Mark} {Name}: ours {Ours}; best {Best?.ToString() ?? "undecided"}; named {Named}{(Unsaid > 0 ? $", {Unsaid} unmet not named" : "")}";
}
