namespace ReferenceOptimum.Solving;

/// <summary>How a course is laid where its pair costs least.</summary>
/// <param name="Joints">Doubled centres in cells.</param>
internal sealed record PricedCourse(List<int> Joints, int Cuts, int Breaches);
