using System.Collections.Immutable;
using IfcCourser.Catalogs;
using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Ifc;
using IfcCourser.Ifc.Bodies;
using IfcCourser.Units;

namespace IfcCourser.Walls.Reading;

/// <summary>Reads one wall of a model: its body, the faces that make it a wall, its masonry layer and openings.</summary>
public sealed class DraftReader
{
    /// <summary>More than this share of the elevation lost to bevels and steps: no layer of one thickness.</summary>
    private const double MostBevelled = 0.5;

    /// <summary>Standing out by more than this share of the volume is worth a note.</summary>
    private const double MostBeyond = 0.01;

    /// <summary>A layer differs from a catalog width by no more than this, mm.</summary>
    private const double WidthTolerance = 2;

    private readonly BodyReader _bodies;
    private readonly FillingExtents _fillings;
    private readonly WallSelection _selection;
    private readonly Catalog _catalog;

    public DraftReader(IfcModel model, WallSelection selection, Catalog catalog)
    {
        _bodies = new BodyReader(model.File, model.Units);
        _fillings = new FillingExtents(model);
        _selection = selection;
        _catalog = catalog;
    }

    /// <summary>The drafted wall, or the wall as skipped: exactly one of the two.</summary>
    public (WallDraft? Draft, SkippedWall? Skipped) Read(IfcWallRecord wall)
    {
        var identity = new WallIdentity(wall.GlobalId, wall.StepId, wall.Name, wall.Storey, wall.TypeName);
        var names = WallNames.Of(wall, _catalog);
        var unchosen = new MasonryChoice([.. names.All], names.Layers.Length, null, null);
        SkippedWall Skip(Finding reason, BodyFacts? facts, MasonryChoice choice) =>
            new(identity, _selection.Includes(identity) ? reason : WallFindings.Of(FindingCodes.NotSelected), facts, choice);

        var (body, openings) = BodyOf(wall);
        if (body.Items.IsEmpty)
        {
            var reason = body.Unread.Length > 0 ? WallFindings.NotRead(body.Unread)
                : WallFindings.Of(wall.Parts.Any(part => part.IsWall) ? FindingCodes.MadeOfWalls : FindingCodes.NoBody);
            return (null, Skip(reason, null, unchosen));
        }

        var shape = WallShape.Of(body, openings, Hint(wall));
        var unread = body.Unread.IsEmpty ? null : WallFindings.NotRead(body.Unread);
        if ((PlausibleSize.Fault(shape.Facts, shape.Space is null ? null : shape.Across.Size) ?? unread) is { } fault)
        {
            return (null, Skip(fault, shape.Facts, unchosen));
        }

        if (shape.Space is not { } space)
        {
            return (null, Skip(shape.Curve is { } bend ? WallFindings.Curved(bend.Radius, bend.Thickness, _catalog) : WallFindings.Of(shape.Fault!), shape.Facts, unchosen));
        }

        var (layer, missing) = MasonryLayer.Of(wall, names, shape.Across, Axis(wall, space, shape.Curve), shape.Items);
        layer ??= _selection.Walls == WallChoice.All ? MasonryLayer.Whole(shape.Across) : null;
        if (layer is null)
        {
            return (null, Skip(WallFindings.Of(missing!), shape.Facts, unchosen));
        }

        var choice = unchosen with { Layer = layer.Number, Thickness = Length.FromModelMm(layer.Across.Size) };
        var (draft, why) = Draft(wall, identity, shape, layer, choice);
        return draft is null ? (null, Skip(why!, shape.Facts, choice)) : (draft, null);
    }

    private (WallDraft? Draft, Finding? Reason) Draft(IfcWallRecord wall, WallIdentity identity, WallShape shape, MasonryLayer layer, MasonryChoice choice)
    {
        var width = Width(layer.Across.Size);
        if (width?.Code == FindingCodes.WidthNotInCatalog)
        {
            return (null, width);
        }

        var curve = shape.Curve?.MeasuredAt(layer.Across.Middle);
        if (curve is not null && CurvedJoints.On(_catalog, Length.FromModelMm(curve.Line), Length.FromModelMm(layer.Across.Size)) is null)
        {
            return (null, WallFindings.Curved(curve.Line, layer.Across.Size, _catalog));
        }

        var view = new ElevationView(curve);
        var elevation = MasonryElevation.Of(layer.Place.Body ?? shape.Gross, layer.Across, view);
        if (elevation.Shape.IsEmpty || elevation.Bevelled > MostBevelled * (elevation.Bevelled + elevation.Shape.Area))
        {
            return (null, WallFindings.Of(FindingCodes.FacesNotUpright));
        }

        var cut = shape.Openings.Select(opening => (opening.Record, opening.Solid, Drafts: OpeningDrafts.Of(opening.Record, opening.Solid, layer.Across, view))).ToList();
        var pieces = JoinedPieces.Of(OpeningDrafts.PutBack(elevation.Shape, cut.SelectMany(opening => opening.Drafts)));
        var voids = Voids(wall, cut, pieces, elevation.Pockets, shape.Across);
        var (outline, openings, rims) = RimVoids.Of(pieces.Outline.Filled(), voids.Openings);
        var draft = new WallDraft
        {
            Identity = identity,
            Space = shape.Space!,
            Curve = curve,
            Choice = choice,
            Across = shape.Across,
            Masonry = layer.Across,
            Run = curve is null ? shape.Run : new Slab(0, curve.Length),
            Height = shape.Height,
            Outline = pieces.Outline.Filled(),
            Openings = openings,
            Body = shape.Facts,
            LoadBearing = wall.IsLoadBearing,
            Findings =
            [
                .. Notes(shape, layer, elevation, pieces, width),
                .. voids.Findings,
                .. rims.Select(rim => WallFindings.Opening(FindingCodes.OpeningCutsRim, rim.Opening)),
            ],
        };
        draft = draft.Cut(outline);
        return TooSmall(draft) is { } reason ? (null, reason) : (draft, null);
    }

    private IEnumerable<Finding> Notes(WallShape shape, MasonryLayer layer, MasonryElevation elevation, JoinedPieces pieces, Finding? width)
    {
        const double LeastWidth = 10;
        if (width is not null)
        {
            yield return width;
        }

        if (shape.Curve is not null)
        {
            yield return WallFindings.Of(FindingCodes.CurveUnrolled);
        }

        if (!layer.Others.IsEmpty)
        {
            yield return WallFindings.SecondLeaf(layer.Across.Size, layer.Others, _catalog.Units);
        }

        if (layer.Doubt is { } doubt)
        {
            yield return WallFindings.Of(doubt);
        }

        if (pieces.LeftOut > LeastWidth * layer.Across.Size)
        {
            yield return WallFindings.PieceLeftOut(pieces.LeftOut);
        }

        if (elevation.Pockets.Area > LeastWidth * layer.Across.Size)
        {
            yield return WallFindings.PocketFilled(elevation.Pockets);
        }

        if (elevation.Bevelled > LeastWidth * layer.Across.Size)
        {
            yield return WallFindings.Bevelled(elevation.Bevelled);
        }

        if (shape.Beyond > MostBeyond)
        {
            yield return WallFindings.BeyondFaces(shape.Beyond);
        }
    }

    private static (ImmutableArray<OpeningDraft> Openings, ImmutableArray<Finding> Findings) Voids(
        IfcWallRecord wall, List<(IfcOpeningRecord Record, Solid Solid, ImmutableArray<OpeningDraft> Drafts)> cut, JoinedPieces pieces, Region pockets, Slab across)
    {
        var openings = new List<OpeningDraft>();
        var findings = ImmutableArray.CreateBuilder<Finding>();
        var missing = new List<(IfcOpeningRecord Record, Solid Solid)>();
        foreach (var (record, solid, drafts) in cut)
        {
            var hitting = drafts.Where(draft => !draft.Shape.Intersect(pieces.Outline).IsEmpty).ToList();
            openings.AddRange(hitting);
            if (hitting.Count == 0)
            {
                missing.Add((record, solid));
            }
            else if (record.IsSizedByFilling)
            {
                findings.Add(WallFindings.Opening(FindingCodes.OpeningByFilling, hitting[0].Opening));
            }
        }

        findings.AddRange(MissedOpenings.Of(missing, openings, across));
        var nameless = BodyVoids.Of(wall, pieces, pockets, openings).ToList();
        openings.AddRange(nameless);
        findings.AddRange(nameless.Where(hole => !hole.Opening.IsFixed).Select(_ => WallFindings.Of(FindingCodes.HoleInBody)));
        var merged = SharedVoids.Merged(openings);
        return (merged.Openings, [.. findings, .. merged.Findings]);
    }

    /// <summary>Why a wall is too small to be laid out; null where it is not.</summary>
    public Finding? TooSmall(WallDraft draft)
    {
        var box = draft.Outline.Bounds;
        var leastCourse = (_catalog.LeastRip ?? _catalog.UnitHeight) + _catalog.LevellingBed.Min;
        if (Length.FromModelMm(box.Height) < leastCourse)
        {
            return WallFindings.LowerThan(box.Height, leastCourse, _catalog.Units);
        }

        if (Length.FromModelMm(box.Width) < _catalog.MinPiece)
        {
            return WallFindings.ShorterThan(box.Width, _catalog.MinPiece, _catalog.Units);
        }

        return box.Width <= draft.Masonry.Size ? WallFindings.NotLonger(box.Width, draft.Masonry.Size, _catalog.Units) : null;
    }

    private Finding? Width(double thickness)
    {
        double Off(UnitWidth width) => Math.Min(Math.Abs(width.Nominal.Mm - thickness), Math.Abs(width.Actual.Mm - thickness));
        var nearest = _catalog.Widths.OrderBy(Off).FirstOrDefault();
        return _catalog.Widths.Any(width => Off(width) <= WidthTolerance) ? null : WallFindings.Width(_selection.Width, thickness, nearest.Actual, _catalog.Units);
    }

    // Elements that are parts give the body where the wall has none of its own.
    private (Body Body, ImmutableArray<(IfcOpeningRecord, Solid)> Openings) BodyOf(IfcWallRecord wall)
    {
        var own = _bodies.Read(wall.Representation, wall.Placement);
        var parts = wall.OwnParts;
        var ofParts = own.Items.IsEmpty && own.Unread.IsEmpty && parts.Length > 0;
        var body = ofParts ? parts.Select(Part).Aggregate(own, (a, b) => a.And(b)) : own;
        var records = ofParts ? wall.Openings.Concat(parts.SelectMany(part => part.Openings)) : wall.Openings;
        return (body, [.. records.Select(Void)]);
    }

    // What fills an opening stands in for a body that it lacks.
    private (IfcOpeningRecord Record, Solid Solid) Void(IfcOpeningRecord record)
    {
        var solid = _bodies.Read(record.Representation, record.Placement).Solid;
        return solid.IsEmpty && record.Fillings.Select(_fillings.Void).FirstOrDefault(filling => !filling.IsEmpty) is { } filling
            ? (record with { IsSizedByFilling = true }, filling)
            : (record, solid);
    }

    private Body Part(IfcPartRecord part)
    {
        var body = _bodies.Read(part.Representation, part.Placement);
        return body with { Items = [.. body.Items.Select(item => item with { Aspect = MasonryLayer.PartAspect(part) })] };
    }

    private Vector2 Hint(IfcWallRecord wall)
    {
        var along = _bodies.Axis(wall.Representation) is { } axis
            ? wall.Placement.Direction(new Vector3(axis.To.X - axis.From.X, axis.To.Y - axis.From.Y, 0)).Plan
            : wall.Placement.X.Plan;
        return along.Unit();
    }

    private (double Offset, bool YIsLeft) Axis(IfcWallRecord wall, WallSpace space, PlanCurve? curve)
    {
        var start = _bodies.Axis(wall.Representation)?.From ?? default;
        var point = wall.Placement.Point(new Vector3(start.X, start.Y, 0)).Plan;
        var offset = curve?.Left(point - space.Origin.Plan) ?? space.Plan(point).Y;
        return (offset, Vector2.Dot(wall.Placement.Y.Plan, space.Direction.Left) >= 0);
    }
}
