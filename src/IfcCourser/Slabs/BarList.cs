using System.Collections.Immutable;

namespace IfcCourser.Slabs;

/// <summary>Measured bars beside their plan.</summary>
internal sealed record BarList(ImmutableArray<BarAsBuilt> Bars);
