using System.Collections.Immutable;

namespace IfcCourser.Layouts;

/// <summary>A pack of units and where it is set down.</summary>
/// <param name="Number">Over the job, in the order in which the packs are opened.</param>
/// <param name="Delivery">Name of the delivery; empty where all comes at once.</param>
/// <param name="Product">Key of its line among the pallets of the order.</param>
/// <param name="Units">In it.</param>
/// <param name="Storey">Where it is opened.</param>
/// <param name="Uses">Walls in the order in which they go up, at least one; a pack for breakage alone has one that takes none of it.</param>
/// <param name="Place">Null where there is no room for it.</param>
public sealed record StagedPack(int Number, string Delivery, OrderKey Product, int Units, string? Storey, ImmutableArray<StagedUse> Uses, StagedPlace? Place)
{
    /// <summary>Units that no wall takes.</summary>
    public int Spare => Units - Uses.Sum(use => use.Units);
}
