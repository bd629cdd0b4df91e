namespace IfcCourser.Rules;

/// <summary>Where a wall's module lines start.</summary>
public enum Datum
{
    /// <summary>At the start of the run.</summary>
    Start,

    /// <summary>At the end of the run.</summary>
    End,

    /// <summary>On the building grid: the same lines for all walls of a direction.</summary>
    Grid,

    /// <summary>Where the openings need to move least; the start where equal.</summary>
    Best,
}
