namespace IfcCourser.Slabs;

/// <summary>What is done with a block of the first course that stands.</summary>
public enum LevelWork
{
    /// <summary>Nothing.</summary>
    Right,

    /// <summary>It is high: sanded down.</summary>
    Sand,

    /// <summary>It is low: lifted and laid again.</summary>
    Relay,

    /// <summary>No reading lies on it.</summary>
    NotRead,
}
