namespace IfcCourser.Walls.Reading;

/// <summary>
/// The order in which walls are settled and laid out: where two bonds are equally good it decides. By what a wall is, so that a new export
/// with other numbers, ids and order, a mirrored plan and one that stands elsewhere all come out the same; equals by name, then by place.
/// </summary>
internal static class DraftOrder
{
    /// <summary>No drawn dimension ends in these millimetres, so that rounding never parts equal ones.</summary>
    private const double OffGrid = 0.2371;

    private static readonly Comparer<double[]> _byNumbers = Comparer<double[]>.Create((a, b) => a.AsSpan().SequenceCompareTo(b));

    public static IEnumerable<WallDraft> Of(IEnumerable<WallDraft> drafts) => drafts
        .Select(draft => (Draft: draft, Key: Key(draft)))
        .OrderBy(wall => wall.Key, _byNumbers)
        .ThenBy(wall => wall.Draft.Identity.Name, StringComparer.Ordinal)
        .ThenBy(wall => Whole(wall.Draft.Body.Min.X))
        .ThenBy(wall => Whole(wall.Draft.Body.Min.Y))
        .ThenBy(wall => wall.Draft.Identity.GlobalId, StringComparer.Ordinal)
        .ThenBy(wall => wall.Draft.Identity.StepId)
        .Select(wall => wall.Draft);

    /// <summary>Foot, height, length, thickness; then its openings along the run.</summary>
    private static double[] Key(WallDraft wall)
    {
        var bounds = wall.Outline.Bounds;
        return
        [
            Whole(wall.Height.From), Whole(bounds.Height), Whole(bounds.Width), Whole(wall.Masonry.Size),
            .. wall.Openings.Select(opening => opening.Shape.Bounds)
                .Select(rect => (Left: Whole(rect.Left - bounds.Left), Bottom: Whole(rect.Bottom - bounds.Bottom), Width: Whole(rect.Width), Height: Whole(rect.Height)))
                .Order()
                .SelectMany(rect => new[] { rect.Left, rect.Bottom, rect.Width, rect.Height }),
        ];
    }

    private static double Whole(double mm) => Math.Floor(mm + OffGrid);
}
