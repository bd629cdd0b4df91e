namespace FixtureMaker.Design;

/// <summary>The way a wall runs in plan.</summary>
internal enum Heading
{
    East,
    North,
    West,
    South,
}
