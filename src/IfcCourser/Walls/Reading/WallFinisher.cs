using System.Collections.Immutable;
using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Walls.Reading;

/// <summary>Turns a settled draft into the wall that is handed on: run from 0, base at 0, lengths rounded once.</summary>
public static class WallFinisher
{
    /// <summary>An opening whose area differs from its rectangle's by no more than this, mm, all along its sides is a rectangle.</summary>
    private const double Rectangular = 1;

    /// <summary>The finished wall; its ends and the junctions are filled in by the caller.</summary>
    public static Wall Finish(WallDraft draft, RuleSet rules, UnitSystem units, WallEnd start, WallEnd end)
    {
        var box = draft.Outline.Bounds;
        var (outline, cutting) = CutByRims(draft);
        var within = draft.Openings.Where(opening => !cutting.Contains(opening)).ToList();
        var openings = within.Select(opening => Opening(opening, outline, rules)).ToList();
        return new Wall
        {
            Identity = draft.Identity,
            Frame = Frame(draft, box),
            Body = draft.Body,
            Outline = Points(outline, box),
            Openings = [.. openings.OfType<WallOpening>().OrderBy(o => o.Model.Left).ThenBy(o => o.Model.Bottom).ThenBy(o => o.GlobalId, StringComparer.Ordinal)],
            Start = start,
            End = end,
            LoadBearing = draft.LoadBearing,
            Choice = draft.Choice,
            Findings =
            [
                .. draft.Findings,
                .. within.Where(opening => opening.Opening.IsFixed).Select(gap => WallFindings.InPieces(gap.Shape, units)),
                .. cutting.Select(o => WallFindings.Opening(FindingCodes.OpeningCutsRim, o.Opening)),
                .. Slanted(start, Length.Zero, units),
                .. Slanted(end, Length.FromModelMm(box.Width), units),
                .. draft.Loose.Select(filling => WallFindings.Loose(filling, box, units)),
                .. within.Where((_, i) => openings[i] is null).Select(o => WallFindings.Opening(FindingCodes.OpeningMissesWall, o.Opening)),
            ],
        };
    }

    private static IEnumerable<Finding> Slanted(WallEnd end, Length place, UnitSystem units) =>
        end.Slant == Length.Zero ? [] : [WallFindings.EndOnSlant(end.Slant, place, units)];

    /// <summary>Whether anything of the wall stands beside and over its openings.</summary>
    public static bool LeavesMasonry(WallDraft draft)
    {
        const double LeastWidth = 50;
        var rest = draft.Openings.Where(opening => opening.GoesThrough).Aggregate(draft.Outline, (left, opening) => left.Subtract(opening.Shape));
        return !rest.WithoutNarrow(LeastWidth).IsEmpty;
    }

    private static WallFrame Frame(WallDraft draft, Rect box)
    {
        var (length, thickness) = (Length.FromModelMm(box.Width), Length.FromModelMm(draft.Masonry.Size));
        if (draft.Curve is not { } curve)
        {
            return new WallFrame(draft.Space.ToModel(box.Left, draft.Masonry.To, box.Bottom), draft.Space.Direction, length, thickness);
        }

        var (start, origin) = (curve.Plan(box.Left, draft.Masonry.To), draft.Space.Origin);
        return new WallFrame(origin + new Vector3(start.X, start.Y, box.Bottom), curve.Direction(box.Left), length, thickness)
        {
            Curve = new WallCurve(origin.Plan + curve.Centre, Length.FromModelMm(curve.Line)),
        };
    }

    // A void that slopes off the wall's top or end shapes the wall, it is no opening to course around.
    private static (Region Outline, List<OpeningDraft> Cutting) CutByRims(WallDraft draft)
    {
        var (outline, all) = (draft.Outline, draft.Outline.Bounds);
        var cutting = new List<OpeningDraft>();
        foreach (var opening in draft.Openings.Where(opening => opening.GoesThrough && opening.Opening.FillingId is null))
        {
            var shape = opening.Shape.Intersect(draft.Outline);
            var box = shape.Bounds;
            var atRim = !shape.IsEmpty && (box.Top >= all.Top - Rectangular || box.Left <= all.Left + Rectangular || box.Right >= all.Right - Rectangular);
            if (!atRim || IsRectangle(shape, box))
            {
                continue;
            }

            var rest = outline.Subtract(shape);
            if (!rest.IsEmpty && Math.Abs(rest.Bounds.Left - all.Left) <= Rectangular && Math.Abs(rest.Bounds.Right - all.Right) <= Rectangular)
            {
                outline = rest.Parts[0];
                cutting.Add(opening);
            }
        }

        return (outline, cutting);
    }

    private static bool IsRectangle(Region shape, Rect box) =>
        (box.Width * box.Height) - shape.Area <= Rectangular * (box.Width + box.Height);

    // What lies outside the outline, as below the floor, is no opening to the mason.
    private static WallOpening? Opening(OpeningDraft draft, Region outline, RuleSet rules)
    {
        const double LeastWidth = 1;
        var shape = draft.Shape.Intersect(outline).WithoutNarrow(LeastWidth);
        if (shape.IsEmpty)
        {
            return null;
        }

        var (all, box) = (outline.Bounds, shape.Bounds);
        var model = new ElevationRect(
            Length.FromModelMm(box.Left - all.Left),
            Length.FromModelMm(box.Right - all.Left),
            Length.FromModelMm(box.Bottom - all.Bottom),
            Length.FromModelMm(box.Top - all.Bottom));
        var isRectangle = IsRectangle(shape, box);
        var kind = !draft.GoesThrough ? OpeningKind.Recess
            : model.Width < rules.DrilledUnder && model.Height < rules.DrilledUnder ? OpeningKind.Drilled
            : draft.Opening.Kind;
        return draft.Opening with { Kind = kind, Model = model, Outline = isRectangle ? null : Points(shape, all) };
    }

    private static ImmutableArray<ElevationPoint> Points(Region shape, Rect all) =>
        [.. shape.Outline.Select(p => new ElevationPoint(Length.FromModelMm(p.X - all.Left), Length.FromModelMm(p.Y - all.Bottom)))];
}
