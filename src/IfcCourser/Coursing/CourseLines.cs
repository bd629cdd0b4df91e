using System.Collections.Immutable;
using IfcCourser.Layouts;
using IfcCourser.Modules;
using IfcCourser.Rules;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Coursing;

/// <summary>
/// The courses of one wall on its group's lines: full courses from the levelling bed up, the rest a rip course at the
/// top; a rest under the least rip is shared by two rips. A rest no larger than the head gap is left to mortar.
/// </summary>
internal static class CourseLines
{
    /// <param name="wall">The wall.</param>
    /// <param name="group">Its group, whose lines it takes.</param>
    /// <param name="sharesRips">Whether two rips may share a rest under the least rip.</param>
    /// <param name="rules">Unit height, joints, bed, least rip.</param>
    public static ImmutableArray<CourseBand> Of(Wall wall, LevelGroup group, bool sharesRips, LayoutRules rules)
    {
        var catalog = rules.Catalog;
        var aboveBase = group.FirstLine - Length.FromModelMm(wall.Frame.Origin.Z);
        var firstLine = FirstLineOf(aboveBase, rules);
        var bed = aboveBase + (catalog.CoursePitch * firstLine);
        var crest = Crest(wall);
        var bands = ImmutableArray.CreateBuilder<CourseBand>();
        for (var i = 0; bed + (catalog.CoursePitch * i) < crest; i++)
        {
            var bottom = bed + (catalog.CoursePitch * i);
            bands.Add(Band(i, firstLine + i, bottom, Length.Min(bottom + catalog.UnitHeight, crest), rules));
        }

        if (bands.Count > 0 && bands[^1].Height < catalog.UnitHeight && HasFlatCrest(wall))
        {
            SettleTop(bands, crest, sharesRips, rules);
        }

        return bands.ToImmutable();
    }

    /// <summary>The top of the wall above its base.</summary>
    public static Length Crest(Wall wall) => wall.Outline.Max(point => point.Z);

    /// <summary>The top of the wall in model heights.</summary>
    public static Length CrestInModel(Wall wall) => Length.FromModelMm(wall.Frame.Origin.Z) + Crest(wall);

    /// <summary>The bed under which the wall's top is also the top of a full course; may lie outside the bed's limits.</summary>
    public static Length BedWithoutRip(Wall wall, LayoutRules rules) =>
        (Crest(wall) + rules.Catalog.BedJoint.Nominal).Modulo(rules.Catalog.CoursePitch);

    /// <summary>How much is wrong with the wall's top over a bed: 0 nothing, 1 a rip course, 2 two rips or a rest left open.</summary>
    public static int CostOfTop(Wall wall, LayoutRules rules, Length bed)
    {
        var rest = (Crest(wall) - bed).Modulo(rules.Catalog.CoursePitch);
        return rest == Length.Zero || rest >= rules.Catalog.UnitHeight ? 0
            : rules.Catalog.LeastRip is { } least && rest >= least ? 1
            : 2;
    }

    /// <summary>How far the heads of a wall's openings lie, in sum, below the next course lines over a bed.</summary>
    public static Length HeadsBelowLines(Wall wall, LayoutRules rules, Length bed) => new(Heads(wall, rules)
        .Sum(head => (bed - head).Modulo(rules.Catalog.CoursePitch).Nanometres));

    /// <summary>The beds over which each opening's head lies on a course line; may lie outside the bed's limits.</summary>
    public static IEnumerable<Length> BedsUnderHeads(Wall wall, LayoutRules rules) =>
        Heads(wall, rules).Select(head => head.Modulo(rules.Catalog.CoursePitch));

    private static IEnumerable<Length> Heads(Wall wall, LayoutRules rules) => wall.Openings
        .Where(OpeningPlacement.IsCoursedAround)
        .Select(opening => OpeningPlacement.Design(opening, rules.Set.Allowances).Top)
        .Where(head => head < Crest(wall));

    private static int FirstLineOf(Length aboveBase, LayoutRules rules)
    {
        var pitch = rules.Catalog.CoursePitch;
        var lines = (rules.Catalog.LevellingBed.Nominal - aboveBase).RoundTo(pitch) / pitch;
        return checked((int)lines);
    }

    private static CourseBand Band(int index, int line, Length bottom, Length top, LayoutRules rules)
    {
        var kind = index == 0 ? CourseKind.Levelling
            : top - bottom < rules.Catalog.UnitHeight ? CourseKind.Rip
            : CourseKind.Unit;
        return new CourseBand(index + 1, line, kind, bottom, top);
    }

    private static bool HasFlatCrest(Wall wall)
    {
        var crest = Crest(wall);
        return wall.Outline.Where((point, i) => point.Z == crest && wall.Outline[(i + 1) % wall.Outline.Length].Z == crest).Any();
    }

    private static void SettleTop(ImmutableArray<CourseBand>.Builder bands, Length crest, bool sharesRips, LayoutRules rules)
    {
        var catalog = rules.Catalog;
        var last = bands[^1];
        if (last.Height <= rules.Set.PartitionHeadGap || catalog.LeastRip is null)
        {
            bands.RemoveAt(bands.Count - 1);
            return;
        }

        if (sharesRips && last.Height < catalog.LeastRip && bands.Count > 1)
        {
            var below = bands[^2];
            var split = (below.Bottom + ((crest - below.Bottom - catalog.BedJoint.Nominal) / 2).FloorTo(catalog.CutGrid));
            bands[^2] = Band(bands.Count - 2, below.Line, below.Bottom, split, rules);
            bands[^1] = Band(bands.Count - 1, last.Line, split + catalog.BedJoint.Nominal, crest, rules);
        }
    }
}
