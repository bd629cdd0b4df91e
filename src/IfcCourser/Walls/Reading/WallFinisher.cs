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
    public static Wall Finish(WallDraft draft, RuleSet rules, WallEnd start, WallEnd end)
    {
        var box = draft.Outline.Bounds;
        var openings = draft.Openings.Select(opening => Opening(opening, draft.Outline, rules)).ToList();
        return new Wall
        {
            Identity = draft.Identity,
            Frame = new WallFrame(
                draft.Space.ToModel(box.Left, draft.Masonry.To, box.Bottom),
                draft.Space.Direction,
                Length.FromModelMm(box.Width),
                Length.FromModelMm(draft.Masonry.Size)),
            Body = draft.Body,
            Outline = Points(draft.Outline, box),
            Openings = [.. openings.OfType<WallOpening>().OrderBy(o => o.Model.Left).ThenBy(o => o.Model.Bottom).ThenBy(o => o.StepId)],
            Start = start,
            End = end,
            LoadBearing = draft.LoadBearing,
            Findings =
            [
                .. draft.Findings,
                .. draft.Openings.Where((_, i) => openings[i] is null).Select(o => WallFindings.Opening(FindingCodes.OpeningMissesWall, o.Opening.GlobalId)),
            ],
        };
    }

    /// <summary>Whether anything of the wall stands beside and over its openings.</summary>
    public static bool LeavesMasonry(WallDraft draft)
    {
        const double LeastWidth = 50;
        var rest = draft.Openings.Where(opening => opening.GoesThrough).Aggregate(draft.Outline, (left, opening) => left.Subtract(opening.Shape));
        return !rest.WithoutNarrow(LeastWidth).IsEmpty;
    }

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
        var isRectangle = (box.Width * box.Height) - shape.Area <= Rectangular * (box.Width + box.Height);
        var kind = !draft.GoesThrough ? OpeningKind.Recess
            : model.Width < rules.DrilledUnder && model.Height < rules.DrilledUnder ? OpeningKind.Drilled
            : draft.Opening.Kind;
        return draft.Opening with { Kind = kind, Model = model, Outline = isRectangle ? null : Points(shape, all) };
    }

    private static ImmutableArray<ElevationPoint> Points(Region shape, Rect all) =>
        [.. shape.Outline.Select(p => new ElevationPoint(Length.FromModelMm(p.X - all.Left), Length.FromModelMm(p.Y - all.Bottom)))];
}
