using System.Collections.Immutable;
using IfcCourser.Catalogs;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Takeoff;

/// <summary>Measures the mortar joints of a wall from what lies beside and under its pieces and lintels.</summary>
internal sealed class Joints
{
    private readonly WallLayout _wall;
    private readonly Catalog _catalog;
    private readonly ImmutableArray<ElevationRect> _pieces;
    private readonly ImmutableArray<ElevationRect> _lintels;
    private readonly ILookup<Length, ElevationRect> _byTop;
    private readonly ImmutableArray<Length> _tops;
    private readonly ILookup<Length, ElevationRect> _byLeft;
    private readonly ImmutableArray<Length> _lefts;
    private double _bedArea;
    private double _headArea;
    private double _bedVolume;
    private double _headVolume;
    /// <summary>Mean beds by the readings of the slab, by the corner of the piece over them.</summary>
    private readonly Dictionary<(Length Left, Length Bottom), Length> _beds;
    private double _levellingArea;
    private double _levellingVolume;

    private Joints(WallLayout wall, LayoutRules rules)
    {
        _wall = wall;
        _catalog = wall.Frame.Curve is { } curve ? rules.Around(curve.Radius, wall.Frame.Thickness).Catalog : rules.Catalog;
        _pieces = [.. wall.Courses.SelectMany(course => course.Pieces).Select(piece => new ElevationRect(piece.From, piece.To, piece.Bottom, piece.Top))];
        _beds = wall.Courses.Take(1).SelectMany(course => course.Pieces).Where(piece => piece.Bed is not null).ToDictionary(piece => (piece.From, piece.Bottom), piece => piece.Bed!.Mean);
        _lintels = [.. wall.Lintels.Where(lintel => lintel.Kind != LintelKind.Formed).Select(lintel => new ElevationRect(lintel.From, lintel.To, lintel.Bottom, lintel.Top))];
        (_byTop, _byLeft) = (_pieces.Concat(_lintels).ToLookup(box => box.Top), _pieces.Concat(_lintels).ToLookup(box => box.Left));
        (_tops, _lefts) = ([.. _byTop.Select(group => group.Key).Order()], [.. _byLeft.Select(group => group.Key).Order()]);
    }

    public static JointSums Of(WallLayout wall, LayoutRules rules)
    {
        var joints = new Joints(wall, rules);
        foreach (var box in joints._pieces)
        {
            joints.UnderPiece(box with { Right = box.Right + joints.HeadJoint(box) });
        }

        foreach (var lintel in joints._lintels)
        {
            joints.HeadJoint(lintel);
            joints.UnderLintel(lintel);
        }

        joints.AgainstWalls();
        return new JointSums(joints._bedArea, joints._headArea, joints._bedVolume, joints._headVolume, joints._levellingArea, joints._levellingVolume);
    }

    /// <summary>The head joint at the right; its width, zero where none is laid.</summary>
    private Length HeadJoint(ElevationRect box)
    {
        var widest = Length.Zero;
        foreach (var other in Between(_byLeft, _lefts, box.Right, box.Right + _catalog.HeadJoint.Max).Where(other => other.StandsBeside(box)
            && !_wall.MovementJoints.Any(joint => joint.At >= box.Right && joint.At <= other.Left)))
        {
            var width = other.Left - box.Right;
            AddHead(Length.Min(other.Top, box.Top) - Length.Max(other.Bottom, box.Bottom), width);
            widest = Length.Max(widest, width);
        }

        return widest;
    }

    /// <summary>Joints between the ends of spans and the faces of other walls.</summary>
    private void AgainstWalls()
    {
        var joint = _catalog.HeadJoint.Nominal;
        foreach (var (course, span) in _wall.Courses.SelectMany(course => course.Spans.Select(span => (course, span))))
        {
            var ends = (span.StartEdge == EdgeKind.Wall ? course.Pieces.Where(piece => piece.From == span.Run.From) : [])
                .Concat(span.EndEdge == EdgeKind.Wall ? course.Pieces.Where(piece => piece.To == span.Run.To) : []);
            foreach (var piece in ends)
            {
                AddHead(piece.Height, joint);
            }
        }
    }

    private void AddHead(Length height, Length joint)
    {
        if (joint > Length.Zero)
        {
            var area = height.Mm * Bedded.Mm / 1e6;
            _headArea += area;
            _headVolume += area * Spread(joint).Mm;
        }
    }

    /// <summary>A piece lies on mortar all along: on this wall's pieces, at a corner on the other wall's, or on the levelling bed.</summary>
    private void UnderPiece(ElevationRect box)
    {
        var tops = Supports(box).Select(support => support.Top).ToList();
        if (tops.Count == 0 && Ground(box) is { } ground)
        {
            AddGround(box.Width, _beds.TryGetValue((box.Left, box.Bottom), out var read) ? read : box.Bottom - ground);
            return;
        }

        AddBed(box.Width, tops.Count > 0 ? box.Bottom - tops.Max() : _catalog.BedJoint.Nominal);
    }

    /// <summary>A lintel lies on mortar where something stands under it.</summary>
    private void UnderLintel(ElevationRect box)
    {
        foreach (var support in Supports(box))
        {
            AddBed(Length.Min(box.Right, support.Right) - Length.Max(box.Left, support.Left), box.Bottom - support.Top);
        }
    }

    /// <summary>What lies under a piece or lintel within a bed joint's thickness: pieces, lintels, beams cast on site.</summary>
    private IEnumerable<ElevationRect> Supports(ElevationRect box)
    {
        var reach = _catalog.BedJoint.Max;
        var below = Between(_byTop, _tops, box.Bottom - reach, box.Bottom).Where(other => other.Left < box.Right && other.Right > box.Left);
        var beams = _wall.BondBeams.Where(beam => beam.Kind == BondBeamKind.Formed && beam.Top <= box.Bottom && box.Bottom - beam.Top <= reach && beam.From < box.Right && beam.To > box.Left)
            .Select(beam => new ElevationRect(beam.From, beam.To, beam.Bottom, beam.Top));
        var formed = _wall.Lintels.Where(lintel => lintel.Kind == LintelKind.Formed && lintel.Top <= box.Bottom && box.Bottom - lintel.Top <= reach && lintel.From < box.Right && lintel.To > box.Left)
            .Select(lintel => new ElevationRect(lintel.From, lintel.To, lintel.Bottom, lintel.Top));
        return below.Concat(beams).Concat(formed);
    }

    /// <summary>Those whose key lies between two places, both included.</summary>
    private static IEnumerable<ElevationRect> Between(ILookup<Length, ElevationRect> boxes, ImmutableArray<Length> keys, Length from, Length to)
    {
        var found = keys.BinarySearch(from);
        for (var i = found < 0 ? ~found : found; i < keys.Length && keys[i] <= to; i++)
        {
            foreach (var box in boxes[keys[i]])
            {
                yield return box;
            }
        }
    }

    private void AddBed(Length length, Length joint)
    {
        var area = length.Mm * Bedded.Mm / 1e6;
        _bedArea += area;
        _bedVolume += area * Spread(joint).Mm;
    }

    private void AddGround(Length length, Length bed)
    {
        if (bed < _catalog.LevellingBed.Min && bed <= _catalog.BedJoint.Max)
        {
            AddBed(length, bed);
            return;
        }

        var area = length.Mm * _wall.Frame.Thickness.Mm / 1e6;
        _levellingArea += area;
        _levellingVolume += area * bed.Mm;
    }

    /// <summary>Lower edge of the outline under a piece's middle, where the bed can be no thicker than a course; else null.</summary>
    private Length? Ground(ElevationRect box)
    {
        var middle = (box.Left + box.Right) / 2;
        var outline = _wall.Outline;
        var heights = outline.Zip(outline.Skip(1).Append(outline[0]), (a, b) => (a, b))
            .Where(edge => Length.Min(edge.a.S, edge.b.S) <= middle && Length.Max(edge.a.S, edge.b.S) > middle)
            .Select(edge => edge.a.Z + Length.FromMm((edge.b.Z - edge.a.Z).Mm * ((middle - edge.a.S).Mm / (edge.b.S - edge.a.S).Mm)));
        var ground = heights.Where(height => height <= box.Bottom).Select(height => (Length?)height).Max();
        return ground is { } z && box.Bottom - z < _catalog.UnitHeight ? z : null;
    }

    private Length Bedded => Length.Min(_catalog.Ordering.JointMortar.Bedded ?? _wall.Frame.Thickness, _wall.Frame.Thickness);

    private Length Spread(Length joint) => Length.Max(joint, _catalog.Ordering.JointMortar.Spread ?? Length.Zero);
}
