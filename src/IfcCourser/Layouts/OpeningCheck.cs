using IfcCourser.Units;

namespace IfcCourser.Layouts;

/// <summary>What a coordinator asks of an opening: how far it is off the module, what cures it, and what it costs to leave it.</summary>
/// <param name="State">How its jambs stand to the module lines.</param>
/// <param name="Deviation">How far each edge, as wanted, is from its line; null where courses do not stop at it.</param>
/// <param name="MoveLeft">How the left jamb moves by the least shift that puts both jambs on lines; negative to the left. The layout's own shift where that does it.</param>
/// <param name="MoveRight">How the right jamb moves.</param>
/// <param name="WhyNot">Why that shift was not made, a clause; null where it was, or where there is none to make.</param>
public sealed record OpeningCheck(ModuleState State, OpeningDeviation? Deviation, Length MoveLeft, Length MoveRight, string? WhyNot)
{
    /// <summary>What it costs to keep it as wanted; null where it was not worked out, or where nothing of it would move.</summary>
    public KeepCost? Cost { get; init; }

    /// <summary>How much wider the cure makes the opening.</summary>
    public Length Widening => MoveRight - MoveLeft;
}
