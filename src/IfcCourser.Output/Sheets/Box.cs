namespace IfcCourser.Output.Sheets;

/// <summary>An upright rectangle, millimetres of the paper or of a view.</summary>
public readonly record struct Box(double Left, double Bottom, double Right, double Top)
{
    public double Width => Right - Left;

    public double Height => Top - Bottom;

    public Point Middle => new((Left + Right) / 2, (Bottom + Top) / 2);

    public static Box Around(IEnumerable<Point> points) => points.Aggregate(
        new Box(double.MaxValue, double.MaxValue, double.MinValue, double.MinValue),
        (box, p) => new Box(Math.Min(box.Left, p.X), Math.Min(box.Bottom, p.Y), Math.Max(box.Right, p.X), Math.Max(box.Top, p.Y)));

    public static Box At(Point middle, double width, double height) =>
        new(middle.X - (width / 2), middle.Y - (height / 2), middle.X + (width / 2), middle.Y + (height / 2));

    /// <summary>Larger by <paramref name="by"/> on every side; smaller where negative.</summary>
    public Box Grown(double by) => new(Left - by, Bottom - by, Right + by, Top + by);

    public Box Moved(Point by) => new(Left + by.X, Bottom + by.Y, Right + by.X, Top + by.Y);

    public Box Scaled(double factor) => new(Left * factor, Bottom * factor, Right * factor, Top * factor);

    public Box With(Box other) => new(
        Math.Min(Left, other.Left), Math.Min(Bottom, other.Bottom), Math.Max(Right, other.Right), Math.Max(Top, other.Top));

    /// <summary>Whether both share area: touching edges do not count.</summary>
    public bool Overlaps(Box other) =>
        Left < other.Right && other.Left < Right && Bottom < other.Top && other.Bottom < Top;

    public bool Contains(Box other) =>
        other.Left >= Left && other.Right <= Right && other.Bottom >= Bottom && other.Top <= Top;

    /// <summary>The point of the box that is nearest to another.</summary>
    public Point Nearest(Point to) => new(Math.Clamp(to.X, Left, Right), Math.Clamp(to.Y, Bottom, Top));

    /// <summary>The part of a straight line that lies inside, as shares of its length from 0 to 1; null where none does.</summary>
    public (double From, double To)? On(Point from, Point to)
    {
        var (first, last) = (0.0, 1.0);
        return Narrow(from.X, to.X, Left, Right, ref first, ref last) && Narrow(from.Y, to.Y, Bottom, Top, ref first, ref last) && first < last ? (first, last) : null;

        static bool Narrow(double start, double end, double low, double high, ref double first, ref double last)
        {
            if (start == end)
            {
                return start >= low && start <= high;
            }

            var (a, b) = ((low - start) / (end - start), (high - start) / (end - start));
            (first, last) = (Math.Max(first, Math.Min(a, b)), Math.Min(last, Math.Max(a, b)));
            return true;
        }
    }

    /// <summary>Counter-clockwise from the lower left.</summary>
    public ImmutableArray<Point> Corners() => [new(Left, Bottom), new(Right, Bottom), new(Right, Top), new(Left, Top)];
}
