namespace IfcCourser.Output.Sheets;

/// <summary>A hatched face; inner loops are left free (even-odd rule).</summary>
public sealed record HatchItem(Pen Pen, ImmutableArray<ImmutableArray<Point>> Loops, HatchKind Kind) : SheetItem(Pen)
{
    /// <summary>Angles of its families of lines in degrees: 45, 135 or both.</summary>
    public ImmutableArray<double> Degrees => Kind switch
    {
        HatchKind.Carries => [135],
        HatchKind.Formed => [45, 135],
        _ => [45],
    };

    /// <summary>Distance between lines of a family in paper millimetres.</summary>
    public double Spacing => Kind is HatchKind.Carries or HatchKind.Formed ? 4 : 2;

    public override SheetItem MovedBy(Point by) => this with { Loops = [.. Loops.Select(loop => loop.Select(p => p + by).ToImmutableArray())] };
}
