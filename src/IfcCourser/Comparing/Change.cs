namespace IfcCourser.Comparing;

/// <summary>One thing that changed in a wall.</summary>
/// <param name="What">
/// laid-out, skipped, moved, outline, thickness, renamed, storey, opening-added, opening-removed, opening-moved (in the design),
/// opening-placed (only in the layout), pieces, lintels, bars, bond-beams or movement-joints.
/// </param>
/// <param name="Detail">From what to what, a clause.</param>
public sealed record Change(string What, string Detail);
