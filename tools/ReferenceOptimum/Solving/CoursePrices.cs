namespace ReferenceOptimum.Solving;

/// <summary>What the pieces and joints of a course cost in one of the pairs that it is in.</summary>
/// <param name="Cut">A cut piece.</param>
/// <param name="Breach">A rule that the course breaks whatever lies beside it.</param>
/// <param name="Joints">A joint, by its doubled centre in cells; may be negative.</param>
internal readonly record struct CoursePrices(double Cut, double Breach, double[] Joints);
