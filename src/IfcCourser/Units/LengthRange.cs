namespace IfcCourser.Units;

/// <summary>A length with its limits, both inclusive: a joint, a levelling bed.</summary>
public readonly record struct LengthRange(Length Min, Length Nominal, Length Max)
{
    public bool Contains(Length value) => value >= Min && value <= Max;
}
