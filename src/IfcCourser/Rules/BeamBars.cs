using IfcCourser.Units;

namespace IfcCourser.Rules;

/// <summary>Bars in a bond beam.</summary>
/// <param name="Count">Side by side.</param>
/// <param name="Size">Designation in the tables.</param>
/// <param name="Lap">Where two bars go on in each other; also the legs of the bars around corners.</param>
/// <param name="Stock">Longest bar that is delivered.</param>
/// <param name="EndCover">From a beam's end to the bars' ends.</param>
public sealed record BeamBars(int Count, string Size, Length Lap, Length Stock, Length EndCover);
