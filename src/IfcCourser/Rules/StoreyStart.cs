namespace IfcCourser.Rules;

/// <summary>Where the courses of a wall start that stands over another wall.</summary>
public enum StoreyStart
{
    /// <summary>On the wall's own slab, with a new levelling bed.</summary>
    Slab,

    /// <summary>On the course lines of the wall under it, counted on.</summary>
    Continuous,
}
