using IfcCourser.Units;

namespace IfcCourser.Geometry;

/// <summary>A closed interval on a wall's run or height.</summary>
public readonly record struct Interval(Length From, Length To)
{
    public Length Size => To - From;

    public bool IsEmpty => To <= From;

    public bool Contains(Length value) => value >= From && value <= To;

    public bool Overlaps(Interval other) => From < other.To && other.From < To;
}
