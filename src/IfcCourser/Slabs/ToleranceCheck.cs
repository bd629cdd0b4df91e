namespace IfcCourser.Slabs;

/// <summary>A figure beside a standard's tolerance: told, not decided on.</summary>
/// <param name="What">What was measured and where.</param>
/// <param name="Value">mm.</param>
/// <param name="Limit">mm.</param>
/// <param name="Source">Standard, edition and clause, and whether it is from memory.</param>
public sealed record ToleranceCheck(string What, double Value, double Limit, string Source)
{
    private const double Dust = 1e-6;

    public bool IsKept => Value <= Limit + Dust;
}
