using System.Collections.Immutable;
using IfcCourser.Output.Sheets;

namespace IfcCourser.Cli.Commands;

/// <summary>How the drawing set is written.</summary>
/// <param name="Formats">Those asked for; others than dxf, svg and pdf do not matter here.</param>
/// <param name="Paper">The paper that every sheet takes; null where each takes what it needs.</param>
/// <param name="DxfPerSheet">A DXF file for each sheet instead of one for a set.</param>
internal sealed record DrawingChoice(ImmutableHashSet<string> Formats, PaperSize? Paper, bool DxfPerSheet);
