namespace IfcCourser.Rules;

/// <summary>In what lengths bars are set.</summary>
public enum BarLengths
{
    /// <summary>One bar from foot to top.</summary>
    Storey,

    /// <summary>One bar for each grout lift, spliced above each.</summary>
    Lift,
}
