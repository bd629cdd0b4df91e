namespace FixtureMaker.Design;

/// <summary>The line of a roof's underside in a wall's elevation, from left to right; what stands above it is cut away.</summary>
internal sealed record RoofLine(Point Left, Point Right);
