namespace IfcCourser.Rules;

/// <summary>How sure a value is.</summary>
public enum Certainty
{
    /// <summary>Read in the source named or in a text that quotes it.</summary>
    Read,

    /// <summary>Remembered: check before use.</summary>
    FromMemory,

    /// <summary>Computed from other values.</summary>
    Derived,

    /// <summary>Common practice, no source.</summary>
    Practice,
}
