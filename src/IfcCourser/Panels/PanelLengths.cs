using IfcCourser.Units;

namespace IfcCourser.Panels;

/// <summary>How long the panels of a stretch may be.</summary>
/// <param name="Between">Between two joints.</param>
/// <param name="First">From its start to a joint.</param>
/// <param name="Last">From a joint to its end.</param>
/// <param name="Whole">Without a joint.</param>
internal readonly record struct PanelLengths(Length Between, Length First, Length Last, Length Whole)
{
    /// <param name="longest">Of panels that end at joints or free.</param>
    /// <param name="atCorner">Of panels with a corner at one end.</param>
    public static PanelLengths Of(Length longest, Length atCorner, bool startsAtCorner, bool endsAtCorner) => new(
        longest,
        startsAtCorner ? atCorner : longest,
        endsAtCorner ? atCorner : longest,
        startsAtCorner == endsAtCorner ? longest : atCorner);
}
