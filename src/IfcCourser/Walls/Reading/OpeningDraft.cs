using IfcCourser.Geometry;

namespace IfcCourser.Walls.Reading;

/// <summary>An opening's void in the masonry layer, before it is measured against the settled outline.</summary>
/// <param name="Shape">What it takes of the elevation, along the run and up, mm.</param>
/// <param name="GoesThrough">Whether it reaches both faces of the masonry layer.</param>
/// <param name="Opening">Identity, filling and kind; its rectangle is not yet known.</param>
public sealed record OpeningDraft(Region Shape, bool GoesThrough, WallOpening Opening)
{
    /// <summary>Whether it is the gap between two pieces of the wall's body; walls that stand there fill it.</summary>
    public bool IsGap { get; init; }
}
