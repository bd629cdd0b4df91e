using IfcCourser.Units;

namespace IfcCourser.Layouts;

/// <summary>A course of trough units with bars and grout.</summary>
public sealed record BondBeam(string Id, Length Bottom, Length Top, Length From, Length To, string Bars);
