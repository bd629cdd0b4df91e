using System.Collections.Immutable;
using FixtureMaker.Design;

namespace FixtureMaker.Cases.Bodies;

/// <summary>One wall each, by every kind of body that walls are exported with.</summary>
internal static class BodyCases
{
    public static ImmutableArray<House> All =>
        [.. SweptBodies.All, .. CutBodies.All, .. FacedBodies.All, .. AdvancedBodies.All, .. AssembledBodies.All];
}
