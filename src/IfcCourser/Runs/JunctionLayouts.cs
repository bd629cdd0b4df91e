using System.Collections.Immutable;
using IfcCourser.Coursing;
using IfcCourser.Layouts;
using IfcCourser.Modules;
using IfcCourser.Rules;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Runs;

/// <summary>How each junction is built: corners bonded in turn, tees tied by beds or bonded, everything else butted.</summary>
internal static class JunctionLayouts
{
    public static ImmutableArray<JunctionLayout> Of(
        WallModel model, ImmutableArray<WallLines> lines, JunctionPlan plan, ImmutableArray<CornerTurn> turns, LayoutRules rules)
    {
        var built = ImmutableArray.CreateBuilder<JunctionLayout>();
        for (var j = 0; j < model.Junctions.Length; j++)
        {
            var junction = model.Junctions[j];
            if (lines[junction.First].Bands.IsEmpty || lines[junction.Second].Bands.IsEmpty
                || !(model.Walls[junction.First].IsSelected || model.Walls[junction.Second].IsSelected))
            {
                continue;
            }

            var (first, second) = (Id(model, junction.First), Id(model, junction.Second));
            var isTee = junction.Kind == JunctionKind.Tee;
            var isBonded = isTee ? plan.Tees.IsBonded(j) : plan.IsBondedCorner(junction);
            var secondInOdd = !isTee && isBonded && turns[j] == CornerTurn.SecondInOdd;
            built.Add(new JunctionLayout(
                FormattableString.Invariant($"J{built.Count + 1}"),
                junction.Kind,
                [first, second],
                isBonded ? JunctionHow.Bonded : isTee ? JunctionHow.Tied : JunctionHow.Butted,
                secondInOdd ? second : first,
                isBonded && !secondInOdd ? second : first,
                isTee && !isBonded ? Ties(lines, junction, rules) : []));
        }

        return built.ToImmutable();
    }

    private static string Id(WallModel model, int wall) => model.Walls[wall].Identity.GlobalId;

    /// <summary>
    /// Tied beds: every n-th, or closer where the largest spacing asks for it; none on the last course, and none where
    /// the host has an opening.
    /// </summary>
    private static ImmutableArray<Length> Ties(ImmutableArray<WallLines> lines, Junction junction, LayoutRules rules)
    {
        var (host, abutting) = (lines[junction.First], lines[junction.Second]);
        bool MeetsHost(Length bed)
        {
            var height = abutting.Base + bed - host.Base;
            return height <= host.Outline.Box.Top && !host.Wall.Openings.Any(opening => OpeningPlacement.IsCoursedAround(opening)
                && opening.Model.Left < junction.FirstPlace.To && opening.Model.Right > junction.FirstPlace.From
                && opening.Model.Bottom <= height && opening.Model.Top >= height);
        }

        var every = Math.Max(1, Math.Min(rules.Set.Ties.EveryNthBed, (int)(rules.Set.Ties.LargestSpacing / rules.Catalog.CoursePitch)));
        return [.. abutting.Bands.SkipLast(1).Where((_, i) => i % every == 0).Select(band => band.Top).Where(MeetsHost)];
    }
}
