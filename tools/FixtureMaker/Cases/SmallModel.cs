using System.Collections.Immutable;
using FixtureMaker.Design;

namespace FixtureMaker.Cases;

/// <summary>What the small models share: IFC4, millimetres, one storey without a slab, walls of block 240 mm thick.</summary>
internal static class SmallModel
{
    public const double Thickness = 240;

    /// <summary>The reference line runs in the middle.</summary>
    public static readonly BuildUp Centred = BuildUp.Centred("Block wall 240", new Layer("Aerated concrete block 240", Thickness));

    public static House Of(string key, string title, double elevation, params ImmutableArray<Wall> walls) =>
        new(key, title, "Larkmoor Common", SchemaVersion.Ifc4, HouseUnits.Millimetre)
        {
            Storeys = [new("Ground floor", elevation, 0, [], walls)],
        };

    /// <summary>A wall with its axis over its whole length.</summary>
    public static Wall Straight(string name, BuildUp buildUp, Point start, Heading heading, double length, double height) =>
        new(name, buildUp, start, heading, new Body.Box(0, length, height)) { AxisFrom = 0, AxisTo = length };
}
