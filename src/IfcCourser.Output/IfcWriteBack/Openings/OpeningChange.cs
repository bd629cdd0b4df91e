using IfcCourser.Ifc;
using IfcCourser.Layouts;
using IfcCourser.Units;

namespace IfcCourser.Output.IfcWriteBack.Openings;

/// <summary>
/// An opening that the layout places elsewhere than drawn. Doors and windows are never resized, so a wider or higher masonry opening
/// is listed for the designer and only the opening's place is changed: to the middle between its jambs, and with its sill.
/// </summary>
/// <param name="Along">Shift along the wall's run.</param>
/// <param name="Up">Shift upwards.</param>
/// <param name="WiderBy">How much wider the masonry opening is than wanted.</param>
/// <param name="HigherBy">How much higher the masonry opening is than wanted.</param>
/// <param name="Hindrance">Why the model's opening is not moved; null where it is.</param>
public sealed record OpeningChange(
    WallLayout Wall, OpeningLayout Opening, Length Along, Length Up, Length WiderBy, Length HigherBy, MoveHindrance? Hindrance)
{
    public bool IsMoved => Hindrance is null && (Along != Length.Zero || Up != Length.Zero);

    /// <summary>All changes of a layout, wall by wall; an opening in several walls comes once.</summary>
    public static ImmutableArray<OpeningChange> Of(IfcModel model, Layout layout)
    {
        var seen = new HashSet<long>();
        return
        [
            .. layout.Walls.SelectMany(wall => wall.Openings.Select(opening => Of(model, wall, opening)))
                .Where(change => change.Opening.Placed != change.Opening.Design)
                .Where(change => change.Opening.Opening.StepId is not { } id || seen.Add(id)),
        ];
    }

    private static OpeningChange Of(IfcModel model, WallLayout wall, OpeningLayout opening)
    {
        var (placed, design) = (opening.Placed, opening.Design);
        return new OpeningChange(
            wall,
            opening,
            (placed.Left - design.Left + (placed.Right - design.Right)) / 2,
            placed.Bottom - design.Bottom,
            placed.Width - design.Width,
            placed.Height - design.Height,
            HindranceOf(model, wall, opening));
    }

    private static MoveHindrance? HindranceOf(IfcModel model, WallLayout wall, OpeningLayout opening) => opening.Opening switch
    {
        { IsFixed: true } or { StepId: null } => MoveHindrance.NoElement,
        _ when wall.Frame.Curve is not null => MoveHindrance.CurvedWall,
        { StepId: { } id } when !PlacementMover.CanMove(model, id) => MoveHindrance.Placement,
        _ => null,
    };
}
