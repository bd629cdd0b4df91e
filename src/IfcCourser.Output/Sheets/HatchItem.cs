namespace IfcCourser.Output.Sheets;

/// <summary>A hatched face; inner loops are left free (even-odd rule).</summary>
public sealed record HatchItem(Pen Pen, ImmutableArray<ImmutableArray<Point>> Loops, HatchKind Kind) : SheetItem(Pen)
{
    /// <summary>Angle of the lines in degrees; 45 or 135.</summary>
    public double Degrees => Kind == HatchKind.Carries ? 135 : 45;

    /// <summary>Distance between lines in paper millimetres.</summary>
    public double Spacing => Kind == HatchKind.Carries ? 4 : 2;

    public override SheetItem MovedBy(Point by) => this with { Loops = [.. Loops.Select(loop => loop.Select(p => p + by).ToImmutableArray())] };
}
