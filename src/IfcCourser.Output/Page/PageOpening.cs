using IfcCourser.Layouts;
using IfcCourser.Units;

namespace IfcCourser.Output.Page;

/// <summary>An opening with the tag of its wall's sheet.</summary>
internal sealed record PageOpening(PageWall Wall, OpeningLayout Opening, string Tag)
{
    /// <summary>Id of its row.</summary>
    public string Id => FormattableString.Invariant($"o{Wall.Number}-{Tag}");

    public Length Left => Opening.Placed.Left - Opening.Design.Left;

    public Length Right => Opening.Placed.Right - Opening.Design.Right;

    public Length Sill => Opening.Placed.Bottom - Opening.Design.Bottom;

    public Length Head => Opening.Placed.Top - Opening.Design.Top;

    /// <summary>The largest way that an edge was moved.</summary>
    public Length Shift => new[] { Left, Right, Sill, Head }.Select(Length.Abs).Max();

    public OpeningState State => Opening.Check switch
    {
        null or { State: ModuleState.NotCoursed } => OpeningState.NotCoursed,
        { State: ModuleState.Curable or ModuleState.WidthOff or ModuleState.Stuck } => OpeningState.Off,
        { State: ModuleState.Fixed } when !Opening.OnModule => OpeningState.Off,
        _ => Shift > Length.Zero ? OpeningState.Moved : OpeningState.OnModule,
    };

    /// <summary>How far the wanted edges are from their lines; null where courses do not stop at it.</summary>
    public OpeningDeviation? Deviation => Opening.Check?.Deviation;
}
