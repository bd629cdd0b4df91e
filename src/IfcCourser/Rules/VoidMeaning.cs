namespace IfcCourser.Rules;

/// <summary>What an author draws as the void of a door or window, from the outside in.</summary>
public enum VoidMeaning
{
    /// <summary>The hole that the mason leaves.</summary>
    Masonry,

    /// <summary>The hole between the bucks, which the frame is shimmed into.</summary>
    Rough,

    /// <summary>The outside of the frame.</summary>
    Frame,

    /// <summary>The door leaf or the sash.</summary>
    Leaf,
}
