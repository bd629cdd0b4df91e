using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.SettingOut;

/// <summary>Names cast-in bars whose distance from the slab's edges is not the usual one.</summary>
internal static class EdgeAdvice
{
    /// <summary>One finding for all bars of equal distance; none where the slab's edges are only assumed.</summary>
    /// <param name="corners">Numbers of bars that stand at corners.</param>
    public static IEnumerable<Finding> Of(StoreySetOut storey, IReadOnlySet<int> corners, EdgeDistanceRule rule, UnitSystem units)
    {
        var edges = storey.Outlines.Where(outline => outline.Kind == ControlLineKind.SlabEdge).SelectMany(outline => outline.Loop.Select((point, i) => (From: point, To: outline.Loop[(i + 1) % outline.Loop.Length]))).ToList();
        return storey.Bars.Where(bar => bar.IsCastIn && edges.Count > 0)
            .Select(bar => (bar.Number, IsCorner: corners.Contains(bar.Number), Distance: Length.FromModelMm(edges.Min(edge => Distance(bar.Point.Plan, edge.From, edge.To)))))
            .Where(bar => bar.Distance <= rule.Within && Length.Abs(bar.Distance - Usual(bar.IsCorner)) > rule.About)
            .GroupBy(bar => (bar.IsCorner, Distance: bar.Distance.RoundTo(Length.FromMm(1))))
            .OrderBy(group => group.Key.IsCorner).ThenBy(group => group.Key.Distance)
            .Select(group => new Finding(
                FindingCodes.BarOffEdge,
                Messages.BarsOffEdge(
                    storey.Storey, [.. group.Select(bar => bar.Number)], group.Key.IsCorner, group.First().Distance, Usual(group.Key.IsCorner), units)));

        Length Usual(bool isCorner) => isCorner ? rule.AtCorners : rule.Elsewhere;
    }

    private static double Distance(Vector2 point, Vector2 from, Vector2 to)
    {
        var (along, length) = ((to - from).Unit(), (to - from).Length);
        var foot = from + (along * Math.Clamp(Vector2.Dot(point - from, along), 0, length));
        return (point - foot).Length;
    }
}
