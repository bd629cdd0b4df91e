using System.Collections.Immutable;
using IfcCourser.Geometry;

namespace IfcCourser.Ifc.Bodies;

/// <summary>The 3D body of an element.</summary>
/// <param name="Items">Its items that enclose space.</param>
/// <param name="Unread">Solid items that could not be read.</param>
public sealed record Body(ImmutableArray<BodyItem> Items, ImmutableArray<UnreadItem> Unread)
{
    public static readonly Body None = new([], []);

    /// <summary>All items together, in model axes, mm.</summary>
    public Solid Solid => Items.Select(item => item.Solid).Aggregate(Solid.Empty, (a, b) => a.Union(b));

    public Body And(Body other) => new([.. Items, .. other.Items], [.. Unread, .. other.Unread]);
}
