using System.Collections.Immutable;
using IfcCourser.Geometry;

namespace IfcCourser.Ifc;

/// <summary>A wall as the model states it, nothing derived from its geometry.</summary>
public sealed record IfcWallRecord
{
    public required long StepId { get; init; }

    /// <summary>IFCWALL, IFCWALLSTANDARDCASE or IFCWALLELEMENTEDCASE.</summary>
    public required string EntityType { get; init; }

    /// <summary>As written; may be malformed, empty or not unique.</summary>
    public required string GlobalId { get; init; }

    public required string? Name { get; init; }

    /// <summary>Name of the wall type, else the wall's ObjectType.</summary>
    public required string? TypeName { get; init; }

    /// <summary>Name of the storey that holds the wall, itself or what it is a part of.</summary>
    public required string? Storey { get; init; }

    /// <summary>From the wall's own axes to the model's, mm.</summary>
    public required Transform3 Placement { get; init; }

    /// <summary>Instance number of the IfcProductDefinitionShape.</summary>
    public required long? Representation { get; init; }

    /// <summary>What the wall, else its type, is made of; null where the model does not say.</summary>
    public required IfcMaterialUse? Material { get; init; }

    /// <summary>LoadBearing of Pset_WallCommon; null where the model does not say.</summary>
    public required bool? IsLoadBearing { get; init; }

    /// <summary>In the order of the model's relations.</summary>
    public required ImmutableArray<IfcOpeningRecord> Openings { get; init; }

    /// <summary>Elements that the wall is aggregated from.</summary>
    public required ImmutableArray<IfcPartRecord> Parts { get; init; }

    /// <summary>Parts that are no walls themselves.</summary>
    public ImmutableArray<IfcPartRecord> OwnParts => [.. Parts.Where(part => !part.IsWall)];

    /// <summary>Path connections, a hint only: real models hold wrong ones.</summary>
    public required ImmutableArray<IfcPathConnection> Connections { get; init; }
}
