using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Ifc;

namespace IfcCourser.Walls.Reading;

/// <summary>Cuts the voids of a wall's openings with its masonry layer.</summary>
public static class OpeningDrafts
{
    /// <summary>A void that stops less than this, mm, before a face of the masonry goes through.</summary>
    private const double ThroughTolerance = 5;

    /// <summary>The void of an opening in the masonry layer; null where it misses the layer.</summary>
    /// <param name="record">Identity and fillings.</param>
    /// <param name="solid">Its body, in wall coordinates.</param>
    /// <param name="layer">From the right to the left face of the masonry.</param>
    public static OpeningDraft? Of(IfcOpeningRecord record, Solid solid, Slab layer)
    {
        var shape = Projection.Elevation(solid, layer.From, layer.To);
        if (shape.IsEmpty)
        {
            return null;
        }

        var inside = Math.Min(ThroughTolerance, layer.Size / 4);
        var through = !Projection.Section(solid, layer.From + inside).IsEmpty && !Projection.Section(solid, layer.To - inside).IsEmpty;
        return new OpeningDraft(shape, through, Described(record));
    }

    /// <summary>
    /// An elevation with those voids filled again that its body was exported without (reference views cut them out); bodies
    /// that still have what their voids take are left as they are.
    /// </summary>
    public static Region PutBack(Region elevation, IEnumerable<OpeningDraft> openings)
    {
        const double Cut = 0.02;
        const double Touching = 2;
        var within = Region.Of(elevation.Bounds);
        return openings
            .Select(opening => opening.Shape.Intersect(within))
            .Where(shape => !shape.IsEmpty && shape.IsNear(elevation, Touching) && shape.Intersect(elevation).Area <= Cut * shape.Area)
            .Aggregate(elevation, (whole, shape) => whole.Union(shape));
    }

    /// <summary>Equal voids, as of an opening exported once per layer, become one; the one with a door or window stays.</summary>
    public static ImmutableArray<OpeningDraft> Merged(IEnumerable<OpeningDraft> openings)
    {
        const double SameEdge = 1;
        var kept = new List<OpeningDraft>();
        foreach (var opening in openings)
        {
            var same = kept.FindIndex(other => Differ(other.Shape.Bounds, opening.Shape.Bounds) <= SameEdge);
            if (same < 0)
            {
                kept.Add(opening);
            }
            else if (kept[same].Opening.FillingId is null && opening.Opening.FillingId is not null)
            {
                kept[same] = opening;
            }
        }

        return [.. kept];
    }

    private static double Differ(Rect a, Rect b) =>
        new[] { a.Left - b.Left, a.Right - b.Right, a.Bottom - b.Bottom, a.Top - b.Top }.Max(Math.Abs);

    /// <summary>Identity, filling and kind of an opening; its rectangle is not yet known.</summary>
    public static WallOpening Described(IfcOpeningRecord record)
    {
        var filling = record.Fillings.OrderByDescending(f => f.IsDoor).ThenByDescending(f => f.IsWindow).FirstOrDefault();
        return new WallOpening(record.GlobalId, record.StepId, filling?.Name ?? record.Name, Kind(filling), filling?.GlobalId, filling?.StepId, default, null);
    }

    private static OpeningKind Kind(IfcFillingRecord? filling) => filling switch
    {
        { IsDoor: true } => OpeningKind.Door,
        { IsWindow: true } => OpeningKind.Window,
        _ => OpeningKind.Void,
    };
}
