using System.Collections.Immutable;

namespace IfcCourser.Geometry;

/// <summary>
/// A solid as a set of convex cells that share no inside. Every operation comes down to cutting a convex cell by a
/// plane, which can't leave holes, whatever the shape was drawn like.
/// </summary>
public sealed record Solid(ImmutableArray<ConvexCell> Cells)
{
    public static readonly Solid Empty = new([]);

    public bool IsEmpty => Cells.IsEmpty;

    /// <summary>mm3.</summary>
    public double Volume => Cells.Sum(cell => cell.Volume);

    public Box3 Box => Box3.Around(Cells.SelectMany(cell => new[] { cell.Box.Min, cell.Box.Max }));

    public Solid Transformed(Transform3 map) => new([.. Cells.Select(cell => cell.Transformed(map)).OfType<ConvexCell>()]);

    /// <summary>The part behind a plane.</summary>
    public Solid Behind(Plane3 plane) => new([.. Cells.Select(cell => cell.Split(plane).Behind).OfType<ConvexCell>()]);

    public Solid Subtract(Solid other) => new([.. Cells.SelectMany(cell => Without(cell, other.Cells))]);

    public Solid Intersect(Solid other) => new([.. Cells.SelectMany(cell => other.Cells.Select(tool => Common(cell, tool)).OfType<ConvexCell>())]);

    /// <summary>Both together; where they overlap the space counts once.</summary>
    public Solid Union(Solid other) => new([.. Cells, .. other.Subtract(this).Cells]);

    private static IEnumerable<ConvexCell> Without(ConvexCell cell, ImmutableArray<ConvexCell> tools)
    {
        IReadOnlyList<ConvexCell> rest = [cell];
        foreach (var tool in tools.Where(tool => tool.Box.Overlaps(cell.Box)))
        {
            rest = [.. rest.SelectMany(piece => Without(piece, tool))];
        }

        return rest;
    }

    private static ImmutableArray<ConvexCell> Without(ConvexCell cell, ConvexCell tool)
    {
        if (!tool.Box.Overlaps(cell.Box))
        {
            return [cell];
        }

        var kept = ImmutableArray.CreateBuilder<ConvexCell>();
        var inside = cell;
        foreach (var face in tool.Faces)
        {
            var (behind, before) = inside.Split(face.Plane);
            if (before is not null)
            {
                kept.Add(before);
            }

            if (behind is null)
            {
                return [cell];
            }

            inside = behind;
        }

        return kept.ToImmutable();
    }

    private static ConvexCell? Common(ConvexCell cell, ConvexCell tool)
    {
        var inside = tool.Box.Overlaps(cell.Box) ? cell : null;
        foreach (var face in tool.Faces)
        {
            inside = inside?.Split(face.Plane).Behind;
        }

        return inside;
    }
}
