using System.Collections.Immutable;
using IfcCourser.Units;

namespace IfcCourser.Catalogs;

/// <summary>A lintel of the catalog's list; its values are the user's and to be confirmed by an engineer.</summary>
public sealed record LintelProduct
{
    /// <summary>Product name in the tables.</summary>
    public required string Name { get; init; }

    /// <summary>Solid or trough.</summary>
    public required LintelKind Kind { get; init; }

    /// <summary>Largest clear width it spans under loads of its class.</summary>
    public required Length MaxClearSpan { get; init; }

    /// <summary>Actual height.</summary>
    public required Length Height { get; init; }

    /// <summary>Wall widths it is made for, actual or nominal; empty where it is made for any.</summary>
    public required ImmutableArray<Length> Widths { get; init; }

    /// <summary>The column of the load table: a lintel serves openings of its class and of lower ones.</summary>
    public required int LoadClass { get; init; }

    /// <summary>Least bearing each side; null where the catalog's counts.</summary>
    public required Length? Bearing { get; init; }

    /// <summary>Lengths it is made in, rising; empty where it is made or laid to any length.</summary>
    public required ImmutableArray<Length> Lengths { get; init; }
}
