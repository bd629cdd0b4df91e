using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using FixtureMaker.Design;

namespace FixtureMaker.Survey;

/// <summary>
/// Invented readings of the slab of house type Yarrow, laid out with the inch catalog: axes of the crew's own, 4 CONTROL rows, one level over two
/// set-ups, rod readings to a hundredth of a foot's tenth. The slab falls to the north-east, has a hump at the front door and a dip in the garage;
/// three of the bars stand out of place: blocks can be laid around one, one is too near a joint in any bond, one is out of its core.
/// </summary>
internal static class YarrowSurvey
{
    private const double Inch = 1d / 12;
    private const double Thick = 8 * Inch;
    private const double FirstInstrument = 104.25;
    private const double SecondInstrument = 104.612;

    /// <summary>Heights of the crew: the slab as designed lies at 100 ft.</summary>
    private const double Slab = 100;

    /// <summary>Outer faces of house and garage, feet of the house.</summary>
    private static readonly ImmutableArray<(Point From, Point To)> _outer =
    [
        (new(0, 0), new(40, 0)), (new(40, 0), new(40, 28)), (new(40, 28), new(0, 28)), (new(0, 28), new(0, 0)),
        (new(40, 4), new(62, 4)), (new(62, 4), new(62, 26)), (new(62, 26), new(40, 26)),
    ];

    /// <summary>Numbers of points.csv and their places.</summary>
    private static readonly ImmutableArray<(int Number, Point At)> _control = [(101, new(0, 0)), (104, new(62, 4)), (105, new(62, 26)), (108, new(0, 28))];

    /// <summary>Numbers of points.csv, the bars' places, and how far each was found off it, inches.</summary>
    private static readonly ImmutableArray<(int Number, Point At, double East, double North)> _bars =
    [
        (1, new(0.3333, 0.3333), 0.25, -0.125), (2, new(2.9271, 0.3333), -2.25, 0), (3, new(5.5260, 0.3333), 0.375, 0.25), (4, new(11.0521, 0.3333), 4.5, 0.125),
        (5, new(13.0521, 0.3333), 0, -0.25), (6, new(20.9271, 0.3333), -0.125, 2.25), (7, new(22.8021, 0.3333), 0.125, 0.125), (13, new(39.6667, 0.3333), 0.25, 0.25),
    ];

    /// <summary>Readings of the slab, with control points and bars.</summary>
    public static byte[] OfSlab()
    {
        var text = Head("the slab of house type Yarrow");
        foreach (var (number, at) in _control)
        {
            var local = Local(at);
            Line(text, $"{number},{local.X + Off(number):0.000},{local.Y - Off(number + 3):0.000},,,CONTROL");
        }

        var shots = _outer.SelectMany(face => Shots(face.From, face.To)).Concat(Inner()).ToArray();
        foreach (var (at, index) in shots.Select((at, index) => (at, index)))
        {
            var (local, isSecond) = (Local(at), index >= shots.Length / 2);
            var instrument = index == 0 ? FirstInstrument : index == shots.Length / 2 ? SecondInstrument : (double?)null;
            var rod = (isSecond ? SecondInstrument : FirstInstrument) - Slab - Height(at);
            Line(text, $"S{index + 1},{local.X:0.00},{local.Y:0.00},{instrument?.ToString("0.000", CultureInfo.InvariantCulture)},{rod:0.000},SLAB");
        }

        foreach (var (number, at, east, north) in _bars)
        {
            var local = Local(new Point(at.X + (east * Inch), at.Y + (north * Inch)));
            Line(text, $"{number},{local.X:0.000},{local.Y:0.000},,,BAR");
        }

        return Encoding.ASCII.GetBytes(text.ToString());
    }

    /// <summary>Readings of the top of the first course along the middles of the outer walls, at the height that the slab's readings ask for.</summary>
    public static byte[] OfFirstCourse()
    {
        const double Top = 100.7365;
        var text = Head("the top of the first course of house type Yarrow");
        foreach (var (number, at) in _control)
        {
            var local = Local(at);
            Line(text, $"{number},{local.X:0.000},{local.Y:0.000},,,CONTROL");
        }

        var index = 0;
        foreach (var (from, to) in _outer)
        {
            foreach (var at in Steps(Inset(from, to, Thick / 2), 2).Skip(1))
            {
                index++;
                var local = Local(at);
                var off = index % 17 == 5 ? 0.19 * Inch : index % 23 == 11 ? -0.2 * Inch : index % 7 == 3 ? 0.09 * Inch : Off(index) * 0.5;
                Line(text, $"T{index},{local.X:0.00},{local.Y:0.00},{(index == 1 ? "104.250" : string.Empty)},{FirstInstrument - Top - off:0.0000},TOP");
            }
        }

        return Encoding.ASCII.GetBytes(text.ToString());
    }

    private static StringBuilder Head(string what)
    {
        var text = new StringBuilder();
        Line(text, $"# Invented readings of {what}: no survey of any building.");
        Line(text, $"point,x_ft,y_ft,hi_ft,rod_ft,code");
        return text;
    }

    private static void Line(StringBuilder text, FormattableString line) => text.Append(line.ToString(CultureInfo.InvariantCulture)).Append("\r\n");

    /// <summary>Both faces of a wall, its ends and every 8 ft or less.</summary>
    private static IEnumerable<Point> Shots(Point from, Point to) => Steps((from, to), 8).Concat(Steps(Inset(from, to, Thick), 8));

    private static IEnumerable<Point> Inner() =>
    [
        .. Steps((new(21.75, Thick), new(21.75, 28 - Thick)), 8), .. Steps((new(22.25, Thick), new(22.25, 28 - Thick)), 8),
        .. Steps((new(Thick, 15.833), new(21.75, 15.833)), 8), .. Steps((new(Thick, 16.167), new(21.75, 16.167)), 8),
    ];

    private static IEnumerable<Point> Steps((Point From, Point To) line, double step)
    {
        var (x, y) = (line.To.X - line.From.X, line.To.Y - line.From.Y);
        var count = (int)Math.Ceiling(Math.Sqrt((x * x) + (y * y)) / step);
        return Enumerable.Range(0, count + 1).Select(i => new Point(line.From.X + (x * i / count), line.From.Y + (y * i / count)));
    }

    /// <summary>Moved to the left, which is inwards, and as much shorter at both ends.</summary>
    private static (Point From, Point To) Inset(Point from, Point to, double by)
    {
        var (x, y) = (to.X - from.X, to.Y - from.Y);
        var length = Math.Sqrt((x * x) + (y * y));
        (x, y) = (x / length * by, y / length * by);
        return (new Point(from.X + x - y, from.Y + y + x), new Point(to.X - x - y, to.Y - y + x));
    }

    /// <summary>Above the slab's designed level, feet.</summary>
    private static double Height(Point at)
    {
        var fall = -0.28 * Inch * (at.X + at.Y) / 90;
        var (toDoor, toGarage) = (Distance(at, new Point(8, 0)), Distance(at, new Point(55, 26)));
        return fall + (0.34 * Inch * Math.Max(0, 1 - (toDoor / 10))) - (0.3 * Inch * Math.Max(0, 1 - (toGarage / 14)));
    }

    private static double Distance(Point a, Point b) => Math.Sqrt(((a.X - b.X) * (a.X - b.X)) + ((a.Y - b.Y) * (a.Y - b.Y)));

    /// <summary>What an instrument is off, feet: the same in every run.</summary>
    private static double Off(int index) => (((index * 37) % 11) - 5) * 0.002;

    /// <summary>Axes of the crew: turned by 3 in 5, from a peg.</summary>
    private static Point Local(Point at) => new(500 + (0.8 * at.X) - (0.6 * at.Y), 1000 + (0.6 * at.X) + (0.8 * at.Y));
}
