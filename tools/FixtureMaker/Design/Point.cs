namespace FixtureMaker.Design;

/// <summary>A point in a plane, in the model's length unit: plan (x, y) or elevation (along the wall, up).</summary>
internal readonly record struct Point(double X, double Y);
