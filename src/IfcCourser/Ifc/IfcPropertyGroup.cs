using System.Collections.Immutable;

namespace IfcCourser.Ifc;

/// <summary>A property set or quantity set of an element.</summary>
/// <param name="StepId">Instance number of the IfcPropertySet or IfcElementQuantity.</param>
/// <param name="IsQuantities">Whether it is an IfcElementQuantity.</param>
/// <param name="Values">In the order of the set; names may come twice.</param>
public sealed record IfcPropertyGroup(
    long StepId, string Name, bool IsQuantities, ImmutableArray<IfcProperty> Values);
