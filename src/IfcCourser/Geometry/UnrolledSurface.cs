using System.Collections.Immutable;

namespace IfcCourser.Geometry;

/// <summary>
/// A surface that a straight line sweeps along a plane curve, as cylinders are, rolled out flat: u runs along the curve, mm,
/// h along the line.
/// </summary>
public sealed class UnrolledSurface
{
    private readonly ImmutableArray<Vector3> _curve;
    private readonly ImmutableArray<double> _places;
    private readonly Vector3 _along;
    private readonly bool _isClosed;

    private UnrolledSurface(ImmutableArray<Vector3> curve, Vector3 along)
    {
        _along = along;
        _curve = curve;
        _isClosed = (curve[^1] - curve[0]).Length <= Plane3.Tolerance;
        _places = [.. Lengths(curve)];
    }

    /// <summary>
    /// The part of the surface inside loops, in plane facets that look outwards; empty where the loops enclose nothing. A
    /// full turn may be bounded by a seam or by two loops around it. Facets meet the loops' corners, so that neighbouring
    /// faces which share them leave no gap.
    /// </summary>
    /// <param name="curve">Points of the curve in order; closed where the last is the first.</param>
    /// <param name="along">Direction of the line.</param>
    /// <param name="loops">Points on the surface, as wound in the model: counter-clockwise seen from outside.</param>
    public static ImmutableArray<PlanarFace> Facets(ImmutableArray<Vector3> curve, Vector3 along, ImmutableArray<ImmutableArray<Vector3>> loops)
    {
        var line = along.Unit();
        var surface = new UnrolledSurface([.. curve.Select(point => Foot(point, curve[0], line))], line);
        return new UnrolledSurface(surface.Through([.. loops.SelectMany(loop => loop)]), line).Facets([.. loops.Where(loop => loop.Length > 1)]);
    }

    private static Vector3 Foot(Vector3 point, Vector3 origin, Vector3 line) => point - (line * Vector3.Dot(point - origin, line));

    private static IEnumerable<double> Lengths(ImmutableArray<Vector3> curve)
    {
        var length = 0.0;
        for (var i = 0; i < curve.Length; i++)
        {
            length += i > 0 ? (curve[i] - curve[i - 1]).Length : 0;
            yield return length;
        }
    }

    // The curve through the feet of corners; its own points stay where the corners leave wide gaps.
    private ImmutableArray<Vector3> Through(ImmutableArray<Vector3> corners)
    {
        const double Same = 0.01;
        var gap = 1.5 * _places.Zip(_places.Skip(1), (a, b) => b - a).Max();
        var (length, end) = (_places[^1], _isClosed ? _curve.Length - 1 : _curve.Length);
        var feet = corners.Select(corner => (U: Place(corner).U, Point: Foot(corner, _curve[0], _along), IsCorner: true)).ToList();
        double Distance(double from, double to) => Math.Abs(to - from) is var apart && _isClosed ? Math.Min(apart, length - apart) : apart;
        var own = Enumerable.Range(0, end)
            .Select(i => (U: _places[i], Point: _curve[i], IsCorner: false))
            .Where(point => !IsBetween(feet.ConvertAll(foot => foot.U), point.U, gap));
        var through = feet.Concat(own).OrderBy(point => point.U)
            .Aggregate(new List<(double U, Vector3 Point, bool IsCorner)>(), (kept, point) => kept.Exists(other => Distance(other.U, point.U) < Same) ? kept : [.. kept, point])
            .ConvertAll(point => point.Point);
        return _isClosed ? [.. through, through[0]] : [.. through];
    }

    // Whether corners stand so near on both sides of a place that the chord between them is an edge of the face.
    private bool IsBetween(List<double> corners, double place, double gap)
    {
        var turns = _isClosed ? new[] { -_places[^1], 0, _places[^1] } : [0];
        var all = turns.SelectMany(turn => corners.Select(corner => corner + turn)).Order().ToList();
        var after = all.FindIndex(corner => corner >= place);
        return after > 0 && all[after] - all[after - 1] <= gap;
    }

    private ImmutableArray<PlanarFace> Facets(ImmutableArray<ImmutableArray<Vector3>> loops)
    {
        var flat = Joined([.. loops.Select(Rolled)]);
        if (flat.IsEmpty)
        {
            return [];
        }

        var outer = flat.MaxBy(loop => Math.Abs(Area(loop)));
        var region = flat.Where(loop => loop != outer).Aggregate(Region.Of([outer]), (rest, hole) => rest.Subtract(Region.Of([hole])));
        var isOutwards = Area(outer) > 0;
        return
        [
            .. Strips(flat)
                .SelectMany(strip => region.Intersect(Region.Of(strip)).Parts)
                .Select(part => part.Outline.Select(Point))
                .Select(loop => PlanarFace.Around([.. isOutwards ? loop : loop.Reverse()]))
                .OfType<PlanarFace>(),
        ];
    }

    // Cut wherever the curve or a loop has a corner: between two cuts the surface is plane.
    private IEnumerable<Rect> Strips(ImmutableArray<ImmutableArray<Vector2>> loops)
    {
        const double Least = 0.01;
        var corners = loops.SelectMany(loop => loop).ToList();
        var (left, right, bottom, top) = (corners.Min(p => p.X), corners.Max(p => p.X), corners.Min(p => p.Y), corners.Max(p => p.Y));
        var length = _places[^1];
        var turns = Enumerable.Range((int)Math.Floor(left / length), (int)Math.Ceiling(right / length) - (int)Math.Floor(left / length) + 1);
        var cuts = turns.SelectMany(turn => _places.Select(place => place + (turn * length))).Concat(corners.Select(p => p.X))
            .Where(place => place >= left && place <= right)
            .Order()
            .Aggregate(new List<double>(), (kept, place) => kept.Count > 0 && place - kept[^1] < Least ? kept : [.. kept, place]);
        return cuts.Zip(cuts.Skip(1), (from, to) => new Rect(from, bottom - 1, to, top + 1));
    }

    // A loop around a closed surface goes on where it left off, one length of the curve farther.
    private ImmutableArray<Vector2> Rolled(ImmutableArray<Vector3> loop)
    {
        var length = _places[^1];
        var rolled = ImmutableArray.CreateBuilder<Vector2>();
        foreach (var point in loop.Append(loop[0]))
        {
            var (u, h) = Place(point);
            var last = rolled.Count > 0 ? rolled[^1].X : u;
            rolled.Add(new Vector2(_isClosed ? u + (Math.Round((last - u) / length) * length) : u, h));
        }

        return rolled.ToImmutable();
    }

    // Closed loops as they are; the two loops of a band without a seam as its outline.
    private ImmutableArray<ImmutableArray<Vector2>> Joined(ImmutableArray<ImmutableArray<Vector2>> loops)
    {
        bool GoesAround(ImmutableArray<Vector2> loop) => Math.Abs(loop[^1].X - loop[0].X) > _places[^1] / 2;
        ImmutableArray<ImmutableArray<Vector2>> closed = [.. loops.Where(loop => !GoesAround(loop)).Select(loop => loop[..^1])];
        if (loops.Where(GoesAround).ToList() is not [var one, var other])
        {
            return closed;
        }

        var shift = Math.Round((one[^1].X - other[0].X) / _places[^1]) * _places[^1];
        return [[.. one, .. other.Select(point => new Vector2(point.X + shift, point.Y))], .. closed];
    }

    private (double U, double H) Place(Vector3 point)
    {
        var h = Vector3.Dot(point - _curve[0], _along);
        var foot = point - (_along * h);
        var (nearest, u) = (double.PositiveInfinity, 0.0);
        for (var i = 0; i + 1 < _curve.Length; i++)
        {
            var chord = _curve[i + 1] - _curve[i];
            var share = Math.Clamp(Vector3.Dot(foot - _curve[i], chord) / Vector3.Dot(chord, chord), 0, 1);
            var distance = (foot - _curve[i] - (chord * share)).Length;
            if (distance < nearest)
            {
                (nearest, u) = (distance, _places[i] + (share * chord.Length));
            }
        }

        return (u, h);
    }

    private Vector3 Point(Vector2 flat)
    {
        var u = _isClosed ? flat.X - (Math.Floor(flat.X / _places[^1]) * _places[^1]) : flat.X;
        var i = Math.Clamp(_places.BinarySearch(u) is var found && found < 0 ? ~found - 1 : found, 0, _curve.Length - 2);
        var share = (u - _places[i]) / (_places[i + 1] - _places[i]);
        return _curve[i] + ((_curve[i + 1] - _curve[i]) * share) + (_along * flat.Y);
    }

    private static double Area(ImmutableArray<Vector2> loop) =>
        loop.Select((point, i) => Vector2.Cross(point - loop[0], loop[(i + 1) % loop.Length] - loop[0])).Sum() / 2;
}
