using System.Collections.Immutable;

namespace IfcCourser.Takeoff;

/// <summary>How sizes fill bins.</summary>
/// <param name="Bins">Sizes in each, the largest first.</param>
/// <param name="Least">Fewer bins can't do, as far as was proven.</param>
internal sealed record PackingPlan(ImmutableArray<ImmutableArray<long>> Bins, int Least);
