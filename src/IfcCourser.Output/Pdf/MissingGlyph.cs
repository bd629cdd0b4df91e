using System.Text;

namespace IfcCourser.Output.Pdf;

/// <summary>A character that the font can't set, and the first sheet on which it is drawn as a box or unshaped.</summary>
public sealed record MissingGlyph(Rune Character, string Sheet);
