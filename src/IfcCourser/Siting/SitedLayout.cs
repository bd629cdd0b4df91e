using IfcCourser.Findings;
using IfcCourser.Layouts;
using IfcCourser.SettingOut;
using IfcCourser.Walls;

namespace IfcCourser.Siting;

/// <summary>
/// A finished layout on a lot where the plan is mirrored or turned, derived and not solved anew. A wall keeps its elevation, for
/// every rule of the bond is told along the run and up it; a mirrored wall's run starts where it did, and its two faces change
/// sides. Only where walls stand changes, and how bars are set out.
/// </summary>
public static class SitedLayout
{
    /// <summary>The layout on the lot, with a note that it is not as drawn; the same layout where the lot leaves the plan as drawn.</summary>
    /// <param name="layout">As drawn, from a model.</param>
    /// <param name="siting">How the plan stands on the lot.</param>
    public static Layout Of(Layout layout, LotSiting siting)
    {
        if (siting.Label is not { } label)
        {
            return layout;
        }

        var ofSetOut = layout.SetOut.Storeys.SelectMany(storey => storey.Findings).ToHashSet<Finding>(ReferenceEqualityComparer.Instance);
        var sited = layout with
        {
            Model = layout.Model with { Siting = siting },
            Walls = [.. layout.Walls.Select(wall => SitedWall.Of(wall, siting))],
            Skipped = [.. layout.Skipped.Select(wall => wall with { Body = wall.Body is { } body ? SitedWall.Of(body, siting) : null })],
            Findings = [.. layout.Findings.Where(finding => !ofSetOut.Contains(finding)), new Finding(FindingCodes.PlanSited, Messages.PlanSited(label))],
        };
        return RoundedLayout.Of(SetOuts.With(sited, Of(layout.Site, siting)));
    }

    /// <summary>The plan turns on the ground: map, north and grid coordinates are the ground's and stay.</summary>
    private static Site Of(Site site, LotSiting siting) => site with
    {
        Slabs = [.. site.Slabs.Select(slab => slab with { Plan = slab.Plan.Under(siting.Of) })],
        Grid = [.. site.Grid.Select(line => line with { From = siting.Of(line.From), To = siting.Of(line.To) })],
    };
}
