using IfcCourser.Units;

namespace IfcCourser.Walls;

/// <summary>Something to be built in that others design, as the job file gives it: at one place, or from a place on at a spacing.</summary>
public sealed record GivenEmbed
{
    /// <summary>Strap, bolt, sleeve: in the user's words.</summary>
    public required string Kind { get; init; }

    /// <summary>In the user's words; may be empty.</summary>
    public required string Size { get; init; }

    /// <summary>In the user's words; may be empty.</summary>
    public required string Note { get; init; }

    /// <summary>Along the wall's run from its start; the first of several.</summary>
    public required Length At { get; init; }

    /// <summary>From one to the next; null for one alone.</summary>
    public required Length? Every { get; init; }

    /// <summary>None beyond; null for the wall's end.</summary>
    public required Length? To { get; init; }

    /// <summary>Above the wall's base; null in the highest bond beam there.</summary>
    public required Length? Height { get; init; }

    /// <summary>Each may be moved along the wall by this to keep clear.</summary>
    public required Length Play { get; init; }

    /// <summary>From its middle to the middle of a bar, and to the ends of a lap.</summary>
    public required Length Clear { get; init; }
}
