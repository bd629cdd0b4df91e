using IfcCourser.Findings;
using IfcCourser.Layouts;
using IfcCourser.Walls;

namespace IfcCourser.Output.Bcf;

/// <summary>What one topic is about: findings of one code on one opening, wall or set of walls.</summary>
/// <param name="Guid">Of the topic.</param>
/// <param name="Code">Of all its findings.</param>
/// <param name="Findings">At least one, the gravest first.</param>
/// <param name="Wall">The wall; of several, the first; null for the model as a whole.</param>
/// <param name="Laid">The wall's layout, where it has one.</param>
/// <param name="Opening">The opening, where it is about one.</param>
/// <param name="Body">Box of a wall that is not laid out.</param>
internal sealed record Issue(
    string Guid, FindingCode Code, ImmutableArray<Finding> Findings, WallIdentity? Wall, WallLayout? Laid, OpeningLayout? Opening, BodyFacts? Body);
