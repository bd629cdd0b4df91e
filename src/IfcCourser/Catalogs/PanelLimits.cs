using IfcCourser.Units;

namespace IfcCourser.Catalogs;

/// <summary>How long a wall of this masonry may be without a movement joint.</summary>
/// <param name="Longest">At most.</param>
/// <param name="OfHeightPerMille">At most this share of its height; zero for any.</param>
public readonly record struct PanelLimits(Length Longest, int OfHeightPerMille);
