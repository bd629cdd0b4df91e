namespace FixtureMaker.Design;

/// <summary>Whether a clipping half space is endless or bounded by a polygon around its own stretch of the wall.</summary>
internal enum ClipBounds
{
    Endless,
    Polygon,
}
