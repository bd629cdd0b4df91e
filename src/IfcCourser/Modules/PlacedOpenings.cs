using System.Collections.Immutable;
using IfcCourser.Layouts;

namespace IfcCourser.Modules;

/// <summary>A wall's openings where they are laid out, and the wall's module lines.</summary>
public sealed record PlacedOpenings(ImmutableArray<OpeningLayout> Openings, ModuleLines Lines);
