using System.Collections.Immutable;
using IfcCourser.Catalogs;
using IfcCourser.Units;

namespace IfcCourser.Layouts;

/// <summary>A lintel over one opening, or over several that share it.</summary>
/// <param name="Opening">GlobalId of the (first) opening.</param>
/// <param name="RestsOn">Ids of the pieces under its bearings.</param>
public sealed record Lintel(
    string Id,
    string Opening,
    LintelKind Kind,
    string Product,
    Length From,
    Length To,
    Length Bottom,
    Length Top,
    Length BearingLeft,
    Length BearingRight,
    ImmutableArray<string> RestsOn);
