using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Ifc;

namespace IfcCourser.Walls.Reading;

/// <summary>Cuts the voids of a wall's openings with its masonry layer.</summary>
public static class OpeningDrafts
{
    /// <summary>A void that stops less than this, mm, before a face of the masonry goes through.</summary>
    private const double ThroughTolerance = 5;

    /// <summary>Where less than this share of a void goes through, it is an opening in a recess; else splays and rebates count as opening.</summary>
    private const double LeastThrough = 0.6;

    /// <summary>The voids of an opening in the masonry layer: none where it misses the layer; two where it is an opening in a recess.</summary>
    /// <param name="record">Identity and fillings.</param>
    /// <param name="solid">Its body.</param>
    /// <param name="layer">From the right to the left face of the masonry.</param>
    /// <param name="view">The wall, straight or unrolled.</param>
    public static ImmutableArray<OpeningDraft> Of(IfcOpeningRecord record, Solid solid, Slab layer, ElevationView view)
    {
        var shape = view.Between(solid, layer.From, layer.To);
        if (shape.IsEmpty)
        {
            return [];
        }

        var inside = Math.Min(ThroughTolerance, layer.Size / 4);
        var through = view.Section(solid, layer.From + inside)
            .Intersect(view.Between(solid, layer.Middle - inside, layer.Middle + inside))
            .Intersect(view.Section(solid, layer.To - inside));
        var opening = Described(record);
        return through.IsEmpty ? [new OpeningDraft(shape, GoesThrough: false, opening)]
            : through.Area >= LeastThrough * shape.Area ? [new OpeningDraft(shape, GoesThrough: true, opening)]
            :
            [
                new OpeningDraft(through, GoesThrough: true, opening),
                new OpeningDraft(shape, GoesThrough: false, opening with { GlobalId = $"{record.GlobalId}/recess", FillingId = null, FillingStepId = null }),
            ];
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

    /// <summary>Identity, filling and kind of an opening; its rectangle is not yet known.</summary>
    public static WallOpening Described(IfcOpeningRecord record)
    {
        var filling = record.Fillings.OrderByDescending(f => f.IsDoor).ThenByDescending(f => f.IsWindow).ThenBy(f => f.GlobalId, StringComparer.Ordinal).FirstOrDefault();
        var opening = new WallOpening(record.GlobalId, record.StepId, record.Name, OpeningKind.Void, null, null, default, null);
        return filling is null ? opening : Filled(opening, filling);
    }

    /// <summary>An opening with what fills it.</summary>
    public static WallOpening Filled(WallOpening opening, IfcFillingRecord filling) => opening with
    {
        Name = string.IsNullOrWhiteSpace(filling.Name) ? opening.Name : filling.Name,
        Kind = filling.IsDoor ? OpeningKind.Door : filling.IsWindow ? OpeningKind.Window : OpeningKind.Void,
        FillingId = filling.GlobalId,
        FillingStepId = filling.StepId,
    };
}
