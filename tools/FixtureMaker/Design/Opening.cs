using FixtureMaker.Ifc;
using FixtureMaker.Step;

namespace FixtureMaker.Design;

/// <summary>An opening in a wall's own axes, in the model's length unit. A sleeve is round, with Width its diameter.</summary>
internal sealed record Opening(string Name, OpeningUse Use, double Left, double Width, double Sill, double Height)
{
    /// <summary>How far the void reaches past both faces of the wall.</summary>
    public double Past { get; init; }

    /// <summary>Writes the profile of a void that is no rectangle, in elevation from the opening's left edge and its sill.</summary>
    public Func<ModelFile, Reference>? Profile { get; init; }

    public static Opening Door(string name, double left, double width, double height) =>
        new(name, OpeningUse.Door, left, width, 0, height);

    public static Opening Window(string name, double left, double width, double sill, double height) =>
        new(name, OpeningUse.Window, left, width, sill, height);

    public static Opening Void(string name, double left, double width, double sill, double height) =>
        new(name, OpeningUse.Void, left, width, sill, height);

    public static Opening Sleeve(string name, double centre, double diameter, double axisHeight) =>
        new(name, OpeningUse.Sleeve, centre - (diameter / 2), diameter, axisHeight - (diameter / 2), diameter);
}
