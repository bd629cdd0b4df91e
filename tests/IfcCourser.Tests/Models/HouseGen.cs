using System.Collections.Immutable;
using CsCheck;
using FixtureMaker.Design;

namespace IfcCourser.Tests.Models;

/// <summary>
/// Generated house designs of one storey: four outer walls counter-clockwise, their reference lines on the outer faces, ends
/// as some program or other models them; a partition that butts on two of them; openings. Lengths are whole multiples of a
/// grid, mm: 1, or 1/16 in.
/// </summary>
internal static class HouseGen
{
    public enum Ends
    {
        Butted,
        Mitred,
        Overlapping,
        Open,
    }

    public static readonly Gen<House> Metric = Of(1, [175, 240, 300], [115, 175]);

    public static readonly Gen<House> Inches = Of(25.4 / 16, [7.875 * 25.4], [3.875 * 25.4, 5.875 * 25.4]);

    private static Gen<House> Of(double grid, ImmutableArray<double> thicknesses, ImmutableArray<double> partitions)
    {
        var mm = (int least, int largest) => Gen.Int[(int)(least / grid), (int)(largest / grid)].Select(n => n * grid);
        var size = Gen.Select(mm(3000, 8000), mm(3000, 6000), mm(1000, 2900), OneOf(thicknesses));
        var opening = Gen.Select(mm(300, 1500), mm(300, 1800), mm(0, 1000), mm(300, 2200));
        var partition = Gen.Select(mm(600, 2000), OneOf(partitions), Gen.Bool, opening.Array[0, 1]);
        return Gen.Select(size, Gen.Enum<Ends>(), Gen.Bool, opening.Array[4], partition.Array[0, 1]).Select((box, ends, isGabled, openings, inner) =>
        {
            var (length, width, height, thickness) = box;
            var outer = new BuildUp("Outer wall", 0, LayerSense.Positive, [new("Block", thickness)]);
            Wall Side(string name, Point start, Heading heading, double run, bool butts, int index) => Opened(
                new Wall(name, outer, start, heading, Body(ends, butts, isGabled && butts, run, thickness, height, grid)) { AxisFrom = 0, AxisTo = run },
                openings[index],
                run - thickness,
                height);
            ImmutableArray<Wall> walls =
            [
                Side("South", new(0, 0), Heading.East, length, butts: false, 0),
                Side("East", new(length, 0), Heading.North, width, butts: true, 1),
                Side("North", new(length, width), Heading.West, length, butts: false, 2),
                Side("West", new(0, width), Heading.South, width, butts: true, 3),
                .. inner.Select(p => Partition(p.Item1 + thickness, p.Item2, toAxis: p.Item3, p.Item4, (width, thickness), height)),
            ];
            return new House("generated", "A generated house", "Larkmoor Common", SchemaVersion.Ifc4, HouseUnits.Millimetre)
            {
                Storeys = [new("Ground floor", 0, 0, [], walls)],
            };
        });
    }

    private static Gen<double> OneOf(ImmutableArray<double> values) => Gen.Int[0, values.Length - 1].Select(i => values[i]);

    private static Wall Partition(
        double at, double thickness, bool toAxis, (double Pier, double Width, double Sill, double Height)[] openings, (double Width, double Thickness) house, double height)
    {
        var into = toAxis ? house.Thickness / 2 : 0;
        var run = house.Width - (2 * house.Thickness) + (2 * into);
        var wall = new Wall("Partition", BuildUp.Centred("Partition", new Layer("Block", thickness)), new(at, house.Thickness - into), Heading.North, new Body.Box(0, run, height))
        {
            AxisFrom = 0,
            AxisTo = run,
        };
        return openings.Aggregate(wall, (host, opening) => Opened(host, opening, run - house.Thickness, height));
    }

    // A window where its sill is high, a door on the floor where it is low; nothing where it does not fit.
    private static Wall Opened(Wall wall, (double Pier, double Width, double Sill, double Height) opening, double end, double wallHeight)
    {
        const double DoorUnder = 300;
        var left = opening.Pier + wall.BuildUp.Thickness;
        var sill = opening.Sill < DoorUnder ? 0 : opening.Sill;
        var height = Math.Min(opening.Height, wallHeight - sill);
        return left + opening.Width > end || height <= 0 ? wall : wall with
        {
            Openings =
            [
                sill == 0
                    ? Opening.Door($"{wall.Name} door", left, opening.Width, height)
                    : Opening.Window($"{wall.Name} window", left, opening.Width, sill, height),
            ],
        };
    }

    private static Body Body(Ends ends, bool butts, bool isGable, double run, double thickness, double height, double grid)
    {
        if (ends == Ends.Mitred)
        {
            return new Body.Plan([new(0, 0), new(run, 0), new(run - thickness, thickness), new(thickness, thickness)], height);
        }

        var from = ends == Ends.Open || (ends == Ends.Butted && butts) ? thickness : 0;
        var ridge = new Point(Math.Round(run / 2 / grid) * grid, height + (800 * grid));
        return isGable
            ? new Body.Upright([new(from, 0), new(run - from, 0), new(run - from, height), ridge, new(from, height)])
            : new Body.Box(from, run - from, height);
    }
}
