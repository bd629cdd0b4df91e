using IfcCourser.Output.Sheets;

namespace IfcCourser.Output.Png;

/// <summary>
/// Paints polygons on white paper, edges smoothed: of each pixel the share that lies inside is counted on a few lines across it. Corners are first
/// rounded to a grid in whole numbers, so that the last digit of a sine does not change a pixel from machine to machine.
/// </summary>
internal sealed class Raster
{
    /// <summary>Steps of the grid in a pixel.</summary>
    private const int Grid = 64;

    /// <summary>Lines on which a pixel is looked at.</summary>
    private const int Lines = 4;

    private const int Channels = 3;
    private const int Full = Grid * Lines;

    private readonly double _scale;
    private readonly int[] _cover;

    /// <summary>Edges of what is filled, by their higher ends; those that the line meets; and where it does.</summary>
    private readonly List<Edge> _edges = [];
    private readonly List<Edge> _met = [];
    private readonly List<long> _crossings = [];

    /// <param name="width">Paper millimetres.</param>
    /// <param name="height">Paper millimetres.</param>
    /// <param name="scale">Pixels in a millimetre.</param>
    public Raster(double width, double height, double scale)
    {
        _scale = scale;
        (Width, Height) = ((int)Math.Round(width * scale), (int)Math.Round(height * scale));
        _cover = new int[Width];
        Pixels = new byte[Width * Height * Channels];
        Array.Fill(Pixels, byte.MaxValue);
    }

    public int Width { get; }

    public int Height { get; }

    /// <summary>Row by row from the top, red, green, blue.</summary>
    public byte[] Pixels { get; }

    /// <summary>Fills what lies inside loops by the even-odd rule.</summary>
    /// <param name="loops">Corners in paper millimetres from the lower left.</param>
    /// <param name="ink">Red, green, blue.</param>
    public void Fill(IEnumerable<IReadOnlyList<Point>> loops, (byte R, byte G, byte B) ink)
    {
        _edges.Clear();
        foreach (var loop in loops)
        {
            AddEdges(loop);
        }

        if (_edges.Count == 0)
        {
            return;
        }

        _met.Clear();
        _edges.Sort((a, b) => a.Y0.CompareTo(b.Y0));
        var (next, bottom) = (0, _edges.Max(edge => edge.Y1) / Grid);
        var columns = new Columns(Cell(_edges.Min(edge => Math.Min(edge.X0, edge.X1))), Cell(_edges.Max(edge => Math.Max(edge.X0, edge.X1))));
        for (var y = (int)Math.Max(0, _edges[0].Y0 / Grid); y <= Math.Min(Height - 1, bottom); y++)
        {
            Array.Clear(_cover, columns.First, columns.Last - columns.First + 1);
            for (var line = 0; line < Lines; line++)
            {
                var at = ((long)y * Grid) + (((2 * line) + 1) * Grid / (2 * Lines));
                for (; next < _edges.Count && _edges[next].Y0 <= at; next++)
                {
                    _met.Add(_edges[next]);
                }

                _met.RemoveAll(edge => edge.Y1 <= at);
                Cover(at);
            }

            Blend(y, columns, ink);
        }

        int Cell(long x) => (int)Math.Clamp(x / Grid, 0, Width - 1);
    }

    /// <summary>The edges of a loop in steps of the grid from the upper left corner, from the higher end to the lower.</summary>
    private void AddEdges(IReadOnlyList<Point> loop)
    {
        for (var i = 0; i < loop.Count; i++)
        {
            var ((x0, y0), (x1, y1)) = (Snapped(loop[i]), Snapped(loop[(i + 1) % loop.Count]));
            if (y0 != y1)
            {
                _edges.Add(y0 < y1 ? new Edge(x0, y0, x1, y1) : new Edge(x1, y1, x0, y0));
            }
        }
    }

    private (long X, long Y) Snapped(Point p) => ((long)Math.Round(p.X * _scale * Grid), ((long)Height * Grid) - (long)Math.Round(p.Y * _scale * Grid));

    private void Cover(long y)
    {
        // Half a step off the grid, so that no line runs through a corner.
        _crossings.Clear();
        foreach (var edge in _met)
        {
            _crossings.Add(edge.X0 + ((((2 * (y - edge.Y0)) + 1) * (edge.X1 - edge.X0)) / (2 * (edge.Y1 - edge.Y0))));
        }

        _crossings.Sort();
        for (var i = 0; i + 1 < _crossings.Count; i += 2)
        {
            var (from, to) = (Math.Max(0, _crossings[i]), Math.Min((long)Width * Grid, _crossings[i + 1]));
            for (var x = from / Grid; x * Grid < to; x++)
            {
                _cover[x] += (int)(Math.Min(to, (x + 1) * Grid) - Math.Max(from, x * Grid));
            }
        }
    }

    private void Blend(int y, Columns columns, (byte R, byte G, byte B) ink)
    {
        for (var x = columns.First; x <= columns.Last; x++)
        {
            if (_cover[x] > 0)
            {
                var pixel = Pixels.AsSpan(((y * Width) + x) * Channels, Channels);
                var share = Math.Min(_cover[x], Full);
                pixel[0] = Mixed(pixel[0], ink.R, share);
                pixel[1] = Mixed(pixel[1], ink.G, share);
                pixel[2] = Mixed(pixel[2], ink.B, share);
            }
        }
    }

    private static byte Mixed(byte under, byte ink, int share) => (byte)(((under * (Full - share)) + (ink * share) + (Full / 2)) / Full);

    private readonly record struct Edge(long X0, long Y0, long X1, long Y1);

    private readonly record struct Columns(int First, int Last);
}
