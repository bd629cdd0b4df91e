namespace FixtureMaker.Design;

/// <summary>The way a wall runs in plan: a unit vector in model axes.</summary>
internal readonly record struct Heading(double X, double Y)
{
    public static readonly Heading East = new(1, 0);

    public static readonly Heading North = new(0, 1);

    public static readonly Heading West = new(-1, 0);

    public static readonly Heading South = new(0, -1);
}
