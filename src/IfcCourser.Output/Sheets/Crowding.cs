namespace IfcCourser.Output.Sheets;

/// <summary>What becomes of a view whose texts lie over each other at a scale.</summary>
internal enum Crowding
{
    /// <summary>That scale is not taken.</summary>
    Refused,

    /// <summary>It is taken where the paper holds it: no other is left.</summary>
    Borne,
}
