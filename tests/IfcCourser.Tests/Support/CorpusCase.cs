using System.Collections.Immutable;
using IfcCourser.Rules;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Tests.Support;

/// <summary>A captioned case of a corpus under fixtures/coursing: walls, and their courses worked by hand.</summary>
/// <param name="Finds">Codes of the findings, about what the corpus is about, that it must have.</param>
/// <param name="Joints">Every movement joint, wall by wall: its middle and why it is there.</param>
/// <param name="Cuts">How many pieces of a wall are cut in length.</param>
/// <param name="Expected">What each wall's courses must be.</param>
internal sealed record CorpusCase(
    string Caption,
    LayoutRules Rules,
    WallModel Model,
    ImmutableArray<string> Finds,
    ImmutableArray<(string Wall, Length At, string Why)> Joints,
    ImmutableArray<(string Wall, int Number)> Cuts,
    ImmutableArray<CorpusColumn> Expected);

/// <summary>The drawn courses of one wall.</summary>
/// <param name="Wall">Its name.</param>
/// <param name="Bed">Between its base and its first course.</param>
/// <param name="Gap">Left open above its last course.</param>
/// <param name="Courses">From the bottom up: the number of the line, from 1, the height, and what stands in it from left to right where that is drawn.</param>
internal sealed record CorpusColumn(string Wall, Length Bed, Length Gap, ImmutableArray<(int Line, Length Height, string Run)> Courses);
