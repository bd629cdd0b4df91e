using System.Collections.Immutable;

namespace IfcCourser.Layouts;

/// <summary>What is to be ordered for a layout, and how it is sawn.</summary>
public sealed record Order
{
    /// <summary>Over all walls, with waste and packs; where there are several deliveries, these added up.</summary>
    public required ImmutableArray<OrderLine> Lines { get; init; }

    public required JointSums Joints { get; init; }

    /// <summary>
    /// Bags of thin-bed mortar by the rule that one bag sets about half a pallet (common practice, no source): a check on the reckoning from
    /// the joints. Null where joints are thick or what a pallet holds is not known.
    /// </summary>
    public required int? BagsByPallets { get; init; }

    /// <summary>In the order in which they come; none where all comes at once.</summary>
    public ImmutableArray<Delivery> Deliveries { get; init; } = [];

    public ImmutableArray<DeliveryPhase> Phases => [.. Deliveries.Select(delivery => delivery.Phase)];

    /// <summary>From the lowest up.</summary>
    public required ImmutableArray<OrderGroup> Storeys { get; init; }

    /// <summary>In the order in which they go up, storey by storey.</summary>
    public required ImmutableArray<OrderGroup> Walls { get; init; }

    /// <summary>Where packs of units are set down, by number; none where the catalog does not say how, or what they hold.</summary>
    public ImmutableArray<StagedPack> Staging { get; init; } = [];

    public required SawList Saw { get; init; }

    /// <summary>What bars of the schedule are cut from, size by size.</summary>
    public ImmutableArray<BarsOfStock> Bars { get; init; } = [];
}
