using System.Collections.Immutable;
using IfcCourser.Units;

namespace IfcCourser.Layouts;

/// <summary>How bars of a stock length are cut.</summary>
/// <param name="Count">Bars cut alike.</param>
/// <param name="Marks">Of the schedule, the longest bars first, each as often as it is cut from one.</param>
/// <param name="Offcut">Left of each.</param>
public sealed record BarCut(int Count, ImmutableArray<string> Marks, Length Offcut);
