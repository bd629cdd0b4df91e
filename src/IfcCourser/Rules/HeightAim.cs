namespace IfcCourser.Rules;

/// <summary>What the course lines of walls that touch are chosen for; the rule set puts the aims in order.</summary>
public enum HeightAim
{
    /// <summary>Few courses whose units are cut in height.</summary>
    CutCourses,

    /// <summary>Few walls whose two rips at the top part from a neighbour's courses at a bonded corner.</summary>
    Corners,

    /// <summary>Few heads of openings that stay off the course lines, because no whole course stands within reach above them.</summary>
    Heads,

    /// <summary>Few heads that must be lifted to reach a line.</summary>
    Lift,

    /// <summary>Few walls whose top is evened out with mortar.</summary>
    Mortar,

    /// <summary>Few sills that lie on no course's top.</summary>
    Sills,

    /// <summary>Few walls whose first course is lower than a unit.</summary>
    FirstCourse,

    /// <summary>Few courses of units of another height.</summary>
    OtherHeights,

    /// <summary>Levelling beds near the nominal one.</summary>
    Bed,
}
