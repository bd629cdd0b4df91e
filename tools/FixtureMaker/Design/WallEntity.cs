namespace FixtureMaker.Design;

/// <summary>The IFC entity a wall is written as.</summary>
internal enum WallEntity
{
    Wall,
    WallStandardCase,
    WallElementedCase,
}
