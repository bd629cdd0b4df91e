using System.Collections.Immutable;

namespace FixtureMaker.Design;

/// <summary>An invented house type of the invented subdivision Larkmoor Rise; every length is in <see cref="Units"/>.</summary>
internal sealed record House(string Key, string Title, string Address, SchemaVersion Schema, HouseUnits Units)
{
    public ImmutableArray<Storey> Storeys { get; init; } = [];

    public ImmutableArray<PathJoint> PathJoints { get; init; } = [];

    /// <summary>Whether the roots carry an owner history (IFC2X3 always wants one).</summary>
    public bool HasOwnerHistory { get; init; }
}
