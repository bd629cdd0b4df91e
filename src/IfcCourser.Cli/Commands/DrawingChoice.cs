using System.Collections.Immutable;
using IfcCourser.Comparing;

namespace IfcCourser.Cli.Commands;

/// <summary>How the drawing set is written.</summary>
/// <param name="Formats">Those asked for; others than dxf, svg and pdf do not matter here.</param>
/// <param name="DxfPerSheet">A DXF file for each sheet instead of one for a set.</param>
/// <param name="Issue">What changed since the last issue; null for a first one.</param>
internal sealed record DrawingChoice(ImmutableHashSet<string> Formats, PaperChoice Paper, bool DxfPerSheet, Reissue? Issue = null);
