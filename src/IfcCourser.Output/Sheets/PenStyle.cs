namespace IfcCourser.Output.Sheets;

/// <summary>How a pen looks.</summary>
/// <param name="Layer">Layer name of the preset.</param>
/// <param name="Width">Line width in hundredths of a paper millimetre, of the series 13 18 25 35 50 70 (ISO 128-2).</param>
/// <param name="Colour">Colour index of the DXF format; 7 prints black on white.</param>
/// <param name="Grey">Lightness in print, 0 black to 100 white; the same on every sheet.</param>
public sealed record PenStyle(Pen Pen, string Layer, int Width, LineType Line, int Colour, int Grey)
{
    public bool IsPrinted => Pen != Pen.NotPrinted;
}
