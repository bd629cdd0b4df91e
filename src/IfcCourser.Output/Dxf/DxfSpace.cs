using IfcCourser.Output.Sheets;

namespace IfcCourser.Output.Dxf;

/// <summary>Where entities go: model space, a paper space or a block, and how millimetres get there.</summary>
/// <param name="Owner">Handle of the space's block record.</param>
/// <param name="IsPaper">Whether it is a paper space.</param>
/// <param name="Offset">Added to every point, millimetres.</param>
/// <param name="PerMm">Drawing units in a millimetre.</param>
/// <param name="Scale">Millimetres of the space in a millimetre of paper.</param>
internal sealed record DxfSpace(string Owner, bool IsPaper, Point Offset, double PerMm, double Scale)
{
    /// <summary>Drawing units in a millimetre of paper.</summary>
    public double PerPaperMm => PerMm * Scale;

    public Point Point(Point p) => (p + Offset) * PerMm;
}
