using System.Collections.Immutable;
using IfcCourser.Coursing;
using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.SettingOut;
using IfcCourser.Slabs;
using IfcCourser.Units;

namespace IfcCourser.Runs;

/// <summary>Readings of a slab and its bars: walls whose bars came too near joints are coursed again around them, before anyone is asked to move one.</summary>
public static class BondAsBuilt
{
    /// <param name="layout">Of the model.</param>
    /// <param name="file">Readings of one storey's slab, perhaps with bars.</param>
    /// <param name="storey">Its name; null for the lowest with blocks.</param>
    /// <param name="thickest">The bed at most; null where the catalog's limit counts.</param>
    /// <param name="apply">Whether the survey is of the layout as it is changed for the bars, or of that given.</param>
    public static Outcome<SlabSurvey> Of(Layout layout, ReadingsFile file, string? storey, Length? thickest, bool apply)
    {
        var survey = SlabSurveys.Of(layout, file, storey, thickest);
        if (!survey.IsOk || survey.Value.Bars.IsEmpty)
        {
            return survey;
        }

        var (changed, bars, changes) = Of(layout, survey.Value.Bars);
        if (!apply)
        {
            return SlabSurveys.Of(layout, file, storey, thickest, (bars, changes));
        }

        return SlabSurveys.Of(changed, file, storey, thickest, ([.. bars.Select(bar => bar with { Wall = changed.Walls.First(wall => wall.Identity == bar.Wall.Identity) })], changes));
    }

    /// <summary>The layout around its bars as built, what is done about each bar, and the walls that are coursed again.</summary>
    public static (Layout Layout, ImmutableArray<BarAsBuilt> Bars, ImmutableArray<BondChange> Changes) Of(Layout layout, ImmutableArray<BarAsBuilt> bars)
    {
        var changes = ImmutableArray.CreateBuilder<BondChange>();
        var walls = layout.Walls.ToBuilder();
        var cleared = new HashSet<BarAsBuilt>(ReferenceEqualityComparer.Instance);
        for (var i = 0; i < walls.Count; i++)
        {
            var wall = walls[i];
            ImmutableArray<BarAsBuilt> own = [.. bars.Where(bar => ReferenceEquals(bar.Wall, wall)).GroupBy(bar => bar.Core.Id, StringComparer.Ordinal).Select(same => same.Last())];
            if (own.All(bar => bar.Answer != BarAnswer.CoreMoves && bar.Where != BarPlace.OffAlong))
            {
                continue;
            }

            var (laid, taken) = new WallAsBuilt(wall, own, Shared(wall, layout), layout.Rules).Solve();
            walls[i] = laid;
            cleared.UnionWith(taken);
            if (!taken.IsEmpty)
            {
                changes.Add(new BondChange(wall, laid, [.. taken.Select(bar => bar.Core.Id)]));
            }
        }

        var changed = layout with { Walls = Joined(layout, walls.ToImmutable()) };
        return (RoundedLayout.Of(SetOuts.Again(changed)), [.. bars.Select(bar => cleared.Contains(bar) ? bar with { Answer = BarAnswer.BondMoves } : bar)], changes.ToImmutable());
    }

    /// <summary>The walls with what those laid anew and those beside them are told of shared bars.</summary>
    private static ImmutableArray<WallLayout> Joined(Layout layout, ImmutableArray<WallLayout> walls)
    {
        var anew = walls.Where((wall, i) => !ReferenceEquals(wall, layout.Walls[i])).ToList();
        var touched = anew.Select(wall => wall.Identity.GlobalId)
            .Concat(anew.SelectMany(wall => wall.Cores).SelectMany(core => core.SharedWith)).ToHashSet(StringComparer.Ordinal);
        var filled = CornerCores.Fill(walls, layout.Rules);
        return [.. walls.Select((wall, i) => touched.Contains(wall.Identity.GlobalId) ? BarGaps.Again(BarFindings.Again(filled[i], filled, layout.Rules.Catalog.Units), layout.Walls[i], layout.Rules) : wall)];
    }

    /// <summary>Bars of a wall's corners that the other wall lists, along this one's run.</summary>
    private static ImmutableArray<Bar> Shared(WallLayout wall, Layout layout) =>
    [
        .. layout.Walls.SelectMany(other => other.Cores.Where(core => core.SharedWith.Contains(wall.Identity.GlobalId, StringComparer.Ordinal)).Select(core =>
        {
            var up = Length.FromModelMm(other.Frame.Origin.Z - wall.Frame.Origin.Z);
            return new Bar(Length.FromModelMm(Vector2.Dot(core.Point - wall.Frame.Origin.Plan, wall.Frame.Direction)), core.Bottom + up, core.Top + up);
        })),
    ];
}
