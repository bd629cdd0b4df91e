namespace IfcCourser.Output.Sheets;

/// <summary>A named value that each reference of a block carries.</summary>
/// <param name="Tag">Upper case, no blanks.</param>
/// <param name="Prompt">What it is, in words.</param>
/// <param name="At">Place of its text in the block.</param>
/// <param name="Height">Of capitals, paper millimetres.</param>
public sealed record BlockAttribute(
    string Tag, string Prompt, Pen Pen, Point At, double Height, TextAnchor Anchor, AttributeDisplay Display);
