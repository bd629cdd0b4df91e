using IfcCourser.Units;

namespace IfcCourser.Rules;

/// <summary>Bond beams over and under openings.</summary>
/// <param name="From">Openings smaller than this in width or height need none.</param>
/// <param name="Extension">How far their bars run on past each jamb.</param>
/// <param name="Over">Whether one lies over each opening.</param>
/// <param name="Under">Whether one lies under each sill.</param>
public sealed record OpeningBeamRule(Length From, Length Extension, bool Over, bool Under);
