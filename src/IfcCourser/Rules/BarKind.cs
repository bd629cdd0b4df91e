namespace IfcCourser.Rules;

/// <summary>The tables that bars are bought from.</summary>
public enum BarKind
{
    /// <summary>Deformed bars by number, ASTM A615 and A706.</summary>
    Number,

    /// <summary>Ribbed bars by diameter, ISO 6935-2.</summary>
    Metric,

    /// <summary>Rods with a plain shank, ASTM F1554.</summary>
    PlainRod,

    /// <summary>Rods threaded over their whole length, ASTM F1554.</summary>
    ThreadedRod,
}
