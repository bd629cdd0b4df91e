using System.Collections.Immutable;

namespace ReferenceOptimum.Sawing;

/// <summary>Pieces to be sawn out of units of one size; all in nanometres.</summary>
/// <param name="Name">For the report.</param>
/// <param name="Catalog">Whose unit and kerf.</param>
/// <param name="Length">Of the unit.</param>
/// <param name="Height">Of the unit.</param>
/// <param name="Kerf">Lost with every cut.</param>
/// <param name="Pieces">None larger than the unit, each smaller in one way at least.</param>
internal sealed record SawProblem(string Name, string Catalog, long Length, long Height, long Kerf, ImmutableArray<(long Length, long Height)> Pieces);
