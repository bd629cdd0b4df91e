using IfcCourser.Catalogs;
using IfcCourser.Geometry;
using IfcCourser.Ifc;
using IfcCourser.Layouts;
using IfcCourser.Output.Json;
using IfcCourser.Step21;
using IfcCourser.Units;

namespace IfcCourser.Output.IfcWriteBack.Parts;

/// <summary>Blocks and trough units as IfcBuildingElementPart, lintels and cast beams as IfcBeam.</summary>
internal sealed class BlockParts(Addition addition, GeometryWriter geometry, SharedShapes shapes, Catalog catalog)
{
    private readonly PartSolids _solids = new(geometry);
    private readonly SortedDictionary<string, (Piece Piece, Length Thickness, List<long> Parts)> _kinds = new(StringComparer.Ordinal);

    /// <summary>The parts of a wall from the bottom up.</summary>
    public List<StepValue> Add(WallLayout wall, WallPlace place) =>
    [
        .. wall.Courses.SelectMany(course => course.Pieces).Select(piece => Block(wall, place, piece)),
        .. wall.Lintels.Select(lintel => Lintel(wall, place, lintel)),
        .. wall.BondBeams.Where(beam => beam.Kind != BondBeamKind.Trough && !IsLintel(wall, beam)).Select(beam => Beam(wall, place, beam)),
    ];

    /// <summary>One property set for each kind of piece.</summary>
    public void AddSets()
    {
        foreach (var (kind, (piece, thickness, parts)) in _kinds)
        {
            addition.Sets.PropertySet(
                $"{addition.Model.ProjectId}\n{kind}",
                SetNames.Piece,
                parts,
                addition.Sets.Property("Product", SetWriter.Label(piece.Product)),
                addition.Sets.Property("Cut", SetWriter.Label(JsonNames.Of(piece.Cut))),
                addition.Sets.Property("Length", piece.Length),
                addition.Sets.Property("Height", piece.Height),
                addition.Sets.Property("Thickness", thickness));
        }
    }

    /// <summary>Whether a beam is what a lintel is listed as.</summary>
    private static bool IsLintel(WallLayout wall, BondBeam beam) => wall.Lintels.Any(lintel =>
        lintel.From < beam.To && lintel.To > beam.From && lintel.Bottom < beam.Top && lintel.Top > beam.Bottom);

    private StepValue Block(WallLayout wall, WallPlace place, Piece piece)
    {
        var layer = piece.IsTrough ? PartLayer.TroughUnits : piece.Cut is Cuts.None ? PartLayer.Blocks : PartLayer.CutBlocks;
        var thickness = wall.Frame.Thickness;
        var size = FormattableString.Invariant($"{piece.Length.Nanometres} {piece.Height.Nanometres} {thickness.Nanometres} {layer}");
        var trough = piece.IsTrough ? catalog.TroughFor(thickness) : null;
        var shape = piece.Outline is { } outline
            ? Outlined(layer, outline, piece.From, piece.Bottom, thickness)
            : shapes.Add(layer, size, () => trough is not null && piece.Height > trough.Bottom && thickness > trough.Shell * 2
                ? _solids.Trough(piece.Length, piece.Height, thickness, trough)
                : _solids.Box(piece.Length, piece.Height, thickness));
        var part = Element(wall, "IFCBUILDINGELEMENTPART", "piece", piece.Id, piece.Product, place.Block(piece.From, piece.To, piece.Bottom), shape, "USERDEFINED");
        Collect($"{size} {piece.Product} {JsonNames.Of(piece.Cut)}", piece, thickness, part);
        return part;
    }

    private StepValue Lintel(WallLayout wall, WallPlace place, Lintel lintel)
    {
        var (length, height, thickness) = (lintel.To - lintel.From, lintel.Top - lintel.Bottom, wall.Frame.Thickness);
        var shape = shapes.Add(
            PartLayer.Lintels,
            FormattableString.Invariant($"lintel {length.Nanometres} {height.Nanometres} {thickness.Nanometres}"),
            () => _solids.Box(length, height, thickness));
        return Element(wall, "IFCBEAM", "lintel", lintel.Id, lintel.Product, place.Block(lintel.From, lintel.To, lintel.Bottom), shape, "LINTEL");
    }

    private StepValue Beam(WallLayout wall, WallPlace place, BondBeam beam)
    {
        var thickness = wall.Frame.Thickness;
        var shape = beam.Outline is { } outline
            ? Outlined(PartLayer.BondBeams, outline, beam.From, beam.Bottom, thickness)
            : shapes.Add(
                PartLayer.BondBeams,
                FormattableString.Invariant($"beam {(beam.To - beam.From).Nanometres} {(beam.Top - beam.Bottom).Nanometres} {thickness.Nanometres}"),
                () => _solids.Box(beam.To - beam.From, beam.Top - beam.Bottom, thickness));
        return Element(wall, "IFCBEAM", "bond beam", beam.Id, "bond beam", place.Block(beam.From, beam.To, beam.Bottom), shape, "USERDEFINED");
    }

    private StepValue Outlined(PartLayer layer, ImmutableArray<ElevationPoint> outline, Length from, Length bottom, Length thickness)
    {
        List<Vector2> face = [.. outline.Select(point => new Vector2((point.S - from).Mm, (point.Z - bottom).Mm))];
        var key = string.Join(' ', outline.Select(point => FormattableString.Invariant($"{(point.S - from).Nanometres},{(point.Z - bottom).Nanometres}")));
        return shapes.Add(layer, FormattableString.Invariant($"{layer} {thickness.Nanometres} {key}"), () => _solids.Face(face, thickness));
    }

    /// <summary>Openings, parts and beams have no PredefinedType in IFC2X3.</summary>
    private StepValue Element(
        WallLayout wall, string type, string role, string id, string objectType, StepValue placement, StepValue shape, string predefined)
    {
        StepValue[] attributes =
        [
            StepValue.String(addition.Guids.For(wall.Identity.GlobalId, $"{role} {id}")),
            addition.Owner,
            StepValue.String(id),
            StepValue.Omitted,
            StepValue.String(objectType),
            placement,
            shape,
            StepValue.String(id),
        ];
        return geometry.Add(type, addition.Model.Schema == IfcSchema.Ifc2X3 ? attributes : [.. attributes, StepValue.Enumeration(predefined)]);
    }

    private void Collect(string kind, Piece piece, Length thickness, StepValue part)
    {
        if (!_kinds.TryGetValue(kind, out var known))
        {
            _kinds.Add(kind, known = (piece, thickness, []));
        }

        known.Parts.Add(part.AsReference!.Value);
    }
}
