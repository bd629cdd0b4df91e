using System.Collections.Immutable;
using IfcCourser.Catalogs;
using IfcCourser.Geometry;

namespace IfcCourser.Layouts;

/// <summary>Where a pack stands.</summary>
/// <param name="Wall">GlobalId of the wall it stands beside.</param>
/// <param name="Middle">Model axes, mm.</param>
/// <param name="Along">Direction of its longer side, a unit vector.</param>
public sealed record StagedPlace(string Wall, Vector2 Middle, Vector2 Along)
{
    /// <summary>Its outline, counter-clockwise, model axes, mm.</summary>
    public ImmutableArray<Vector2> Loop(StagingData pack)
    {
        var (a, b) = (Along * (pack.PackLength.Mm / 2), Along.Left * (pack.PackWidth.Mm / 2));
        return [Middle - a - b, Middle + a - b, Middle + a + b, Middle - a + b];
    }
}
