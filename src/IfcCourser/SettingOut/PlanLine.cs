using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Walls;

namespace IfcCourser.SettingOut;

/// <summary>A straight line in plan that something is measured from or checked by.</summary>
/// <param name="Line">What it is.</param>
/// <param name="From">One end, model axes, mm.</param>
/// <param name="To">The other end.</param>
internal sealed record PlanLine(ControlLine Line, Vector2 From, Vector2 To)
{
    /// <summary>Edges shorter than this, mm, are no lines to measure from; ends of walls that hold bars are longer. Common practice, no source.</summary>
    private const double Shortest = 150;

    /// <summary>Sine of the largest angle between lines that pass for parallel: 1 mm over 10 m.</summary>
    private const double Parallel = 1e-4;

    public Vector2 Direction => (To - From).Unit();

    /// <summary>Grid lines, and the edges of outlines that are long enough.</summary>
    public static IEnumerable<PlanLine> Of(IEnumerable<GridLine> grid) =>
        grid.Select(line => new PlanLine(new ControlLine(ControlLineKind.GridLine, line.Tag), line.From, line.To));

    /// <inheritdoc cref="Of(IEnumerable{GridLine})"/>
    public static IEnumerable<PlanLine> Of(IEnumerable<SetOutOutline> outlines) => outlines.SelectMany(outline =>
        outline.Loop.Select((point, i) => new PlanLine(new ControlLine(outline.Kind, string.Empty), point, outline.Loop[(i + 1) % outline.Loop.Length])))
        .Where(line => (line.To - line.From).Length >= Shortest);

    public static bool IsParallel(Vector2 first, Vector2 second) => Math.Abs(Vector2.Cross(first, second)) < Parallel;
}
