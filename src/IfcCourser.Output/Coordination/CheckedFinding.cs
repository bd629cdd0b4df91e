using IfcCourser.Findings;
using IfcCourser.Output.Tables;
using IfcCourser.Walls;

namespace IfcCourser.Output.Coordination;

/// <summary>A finding of check.</summary>
/// <param name="Listed">The finding with its wall.</param>
/// <param name="IsAccepted">Whether the baseline holds it.</param>
public sealed record CheckedFinding(WallFinding Listed, bool IsAccepted)
{
    public WallIdentity? Wall => Listed.Wall;

    public Finding Finding => Listed.Finding;

    /// <summary>Whether it makes a pipeline fail.</summary>
    /// <param name="failOn">The least severity that does; null for none.</param>
    public bool Fails(Severity? failOn) => !IsAccepted && failOn is { } least && Finding.Severity >= least;
}
