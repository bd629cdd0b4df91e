namespace IfcCourser.Output.Sheets;

/// <summary>What a hatched face tells.</summary>
public enum HatchKind
{
    /// <summary>To be sawn: lines rising to the right.</summary>
    Cut,

    /// <summary>Carries: lines falling to the right, twice as far apart.</summary>
    Carries,

    /// <summary>Carries, but is still to be designed and formed: lines crossing both ways.</summary>
    Formed,

    /// <summary>Filled.</summary>
    Solid,
}
