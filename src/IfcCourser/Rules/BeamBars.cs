using IfcCourser.Units;

namespace IfcCourser.Rules;

/// <summary>Bars in a bond beam.</summary>
/// <param name="Count">Side by side.</param>
/// <param name="Size">Of the tables.</param>
/// <param name="Steel">Standard and grade, for schedules.</param>
/// <param name="Lap">Where two bars go on in each other; also the legs of the bars around corners.</param>
/// <param name="Stock">Longest bar that is delivered.</param>
/// <param name="Cover">What keeps them from faces.</param>
public sealed record BeamBars(int Count, BarSize Size, string Steel, Length Lap, Length Stock, BeamCover Cover);
