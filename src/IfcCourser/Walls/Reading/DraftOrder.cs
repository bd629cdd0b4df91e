using System.Collections.Immutable;

namespace IfcCourser.Walls.Reading;

/// <summary>
/// The order in which walls are settled: by what they are, not by where they stand in the file nor by their GlobalIds, which an export may give anew.
/// Where layouts are equally good it decides, and bars get their marks in it.
/// </summary>
/// <remarks>By name, height in the model and size. Walls alike in all of that are told apart by place: a plan moved or turned may exchange their bonds.</remarks>
internal static class DraftOrder
{
    public static ImmutableArray<WallDraft> Of(IEnumerable<WallDraft> drafts) =>
    [
        .. drafts
            .OrderBy(draft => draft.Identity.Name, StringComparer.Ordinal)
            .ThenBy(draft => Rounded(draft.Space.Origin.Z))
            .ThenBy(draft => Rounded(draft.Run.Size))
            .ThenBy(draft => Rounded(draft.Height.Size))
            .ThenBy(draft => Rounded(draft.Masonry.Size))
            .ThenBy(draft => draft.Openings.Length)
            .ThenBy(draft => Rounded(draft.Space.Origin.X))
            .ThenBy(draft => Rounded(draft.Space.Origin.Y))
            .ThenBy(draft => draft.Identity.GlobalId, StringComparer.Ordinal)
            .ThenBy(draft => draft.Identity.StepId),
    ];

    /// <summary>Of a length in mm, coarse enough that two exports of one model agree but for chance.</summary>
    private static double Rounded(double mm) => Math.Round(mm);
}
