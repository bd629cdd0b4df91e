using System.Collections.Immutable;
using IfcCourser.Rules;

namespace IfcCourser.Coursing;

/// <summary>What is wrong with the courses of a wall or of a group, an amount for each aim; lengths in nanometres.</summary>
internal readonly record struct HeightCost
{
    /// <summary>Height left open above the last courses, beyond what mortar may fill; counts before all aims.</summary>
    public long Open { get; init; }

    /// <summary>Walls that lack the bond beam asked for at their top, or whose beam does not meet a higher neighbour's courses; counts before all aims.</summary>
    public long Beams { get; init; }

    public long CutCourses { get; init; }

    public long Corners { get; init; }

    public long Heads { get; init; }

    public long Lift { get; init; }

    public long Mortar { get; init; }

    public long Sills { get; init; }

    public long FirstCourse { get; init; }

    public long OtherHeights { get; init; }

    public long Bed { get; init; }

    public static HeightCost operator +(HeightCost a, HeightCost b) => new()
    {
        Open = a.Open + b.Open,
        Beams = a.Beams + b.Beams,
        CutCourses = a.CutCourses + b.CutCourses,
        Corners = a.Corners + b.Corners,
        Heads = a.Heads + b.Heads,
        Lift = a.Lift + b.Lift,
        Mortar = a.Mortar + b.Mortar,
        Sills = a.Sills + b.Sills,
        FirstCourse = a.FirstCourse + b.FirstCourse,
        OtherHeights = a.OtherHeights + b.OtherHeights,
        Bed = a.Bed + b.Bed,
    };

    public static HeightCost operator *(HeightCost cost, int count) => new()
    {
        Open = cost.Open * count,
        Beams = cost.Beams * count,
        CutCourses = cost.CutCourses * count,
        Corners = cost.Corners * count,
        Heads = cost.Heads * count,
        Lift = cost.Lift * count,
        Mortar = cost.Mortar * count,
        Sills = cost.Sills * count,
        FirstCourse = cost.FirstCourse * count,
        OtherHeights = cost.OtherHeights * count,
        Bed = cost.Bed * count,
    };

    /// <summary>Whether it is better than another: less open, else fewer beams missing, else less of the first aim in which they differ.</summary>
    public bool IsLessThan(HeightCost other, ImmutableArray<HeightAim> aims)
    {
        if (Open != other.Open)
        {
            return Open < other.Open;
        }

        if (Beams != other.Beams)
        {
            return Beams < other.Beams;
        }

        foreach (var aim in aims)
        {
            if (Of(aim) != other.Of(aim))
            {
                return Of(aim) < other.Of(aim);
            }
        }

        return false;
    }

    private long Of(HeightAim aim) => aim switch
    {
        HeightAim.CutCourses => CutCourses,
        HeightAim.Corners => Corners,
        HeightAim.Heads => Heads,
        HeightAim.Lift => Lift,
        HeightAim.Mortar => Mortar,
        HeightAim.Sills => Sills,
        HeightAim.FirstCourse => FirstCourse,
        HeightAim.OtherHeights => OtherHeights,
        _ => Bed,
    };
}
