using IfcCourser.Units;

namespace IfcCourser.Modules;

/// <summary>The nearest move that would have put an opening on the module, and why it was not made.</summary>
/// <param name="Shift">How the jambs would have moved from where they are wanted.</param>
/// <param name="Why">Why they were not.</param>
/// <param name="Pier">The pier it would have left, where it is too short.</param>
internal sealed record RefusedMove(JambShift Shift, Refusal Why, Length Pier = default)
{
    public Length Widening => Shift.Right - Shift.Left;
}
