using System.Collections.Immutable;
using IfcCourser.Findings;
using IfcCourser.Walls;

namespace IfcCourser.Layouts;

/// <summary>How the bars of one storey are set out.</summary>
public sealed record StoreySetOut
{
    /// <summary>Name of the storey; null for walls that no storey holds.</summary>
    public required string? Storey { get; init; }

    public required SetOutAxes Axes { get; init; }

    /// <summary>Edges of the slabs that the bars are cast in; of the walls where the model has no such slab.</summary>
    public required ImmutableArray<SetOutOutline> Outlines { get; init; }

    /// <summary>Grid lines parallel to the axes.</summary>
    public required ImmutableArray<GridLine> Grid { get; init; }

    /// <summary>Where edges, faces and grid lines cross the axes: checks beside the bars.</summary>
    public required ImmutableArray<CheckLine> CheckLines { get; init; }

    /// <summary>By number.</summary>
    public required ImmutableArray<ControlPoint> ControlPoints { get; init; }

    /// <summary>Distances between control points that lie across the plan.</summary>
    public required ImmutableArray<Diagonal> Diagonals { get; init; }

    /// <summary>In walking order: those cast into the slab, then those that begin in a bar below, then those over lintels and beams.</summary>
    public required ImmutableArray<BarSetOut> Bars { get; init; }

    /// <summary>What the rod setter must know; also among the findings of the model.</summary>
    public required ImmutableArray<Finding> Findings { get; init; }
}
