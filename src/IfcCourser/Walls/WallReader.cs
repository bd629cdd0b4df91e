using System.Collections.Immutable;
using IfcCourser.Catalogs;
using IfcCourser.Findings;
using IfcCourser.Ifc;
using IfcCourser.Rules;
using IfcCourser.Units;
using IfcCourser.Walls.Meeting;
using IfcCourser.Walls.Reading;

namespace IfcCourser.Walls;

/// <summary>Reads every wall of a model: those to be laid out with their elevations and junctions, the others with a reason.</summary>
public static class WallReader
{
    /// <summary>The walls of a model.</summary>
    /// <param name="model">As read.</param>
    /// <param name="selection">Which walls are asked for.</param>
    /// <param name="catalog">Its words and widths decide which layers are masonry.</param>
    /// <param name="rules">Say which voids are drilled.</param>
    public static WallModel Read(IfcModel model, WallSelection selection, Catalog catalog, RuleSet rules)
    {
        var reader = new DraftReader(model, selection, catalog);
        var drafts = new List<WallDraft>();
        var skipped = new List<SkippedWall>();
        foreach (var (draft, skip) in model.Walls.Select(reader.Read))
        {
            if (draft is not null)
            {
                drafts.Add(draft);
            }
            else if (skip is not null)
            {
                skipped.Add(skip);
            }
        }

        var (kept, coincident) = Overlaps.WithoutCoincident(LooseFillings.Placed(DraftOrder.Of(drafts), model), catalog.Units);
        skipped.AddRange(coincident);
        (kept, var overlaps) = Overlaps.Apart(kept, catalog.Units);
        var (settled, encounters, notes) = Settle(kept, reader, skipped, catalog.Units);
        var junctions = Junctions(settled, encounters);
        var places = model.Walls.Select((record, place) => (record.StepId, place)).ToDictionary(wall => wall.StepId, wall => wall.place);
        ImmutableArray<Wall> finished =
        [
            .. settled.Select((draft, i) => WallFinisher.Finish(draft, rules, catalog.Units, End(junctions, i, JunctionSide.Start), End(junctions, i, JunctionSide.End))
                with { IsSelected = selection.Includes(draft.Identity) }),
        ];
        return new WallModel
        {
            Walls = finished,
            Skipped = [.. skipped.OrderBy(wall => places[wall.Identity.StepId])],
            Junctions = junctions,
            Findings = [.. notes, .. overlaps, .. SiteReader.Findings(model)],
            Site = SiteReader.Read(model, [.. finished.Select(wall => wall.Frame.Origin.Z).Distinct()]),
        };
    }

    // A wall that its neighbours leave too little of is skipped, and the rest is settled again without it.
    private static (ImmutableArray<WallDraft> Walls, ImmutableArray<Encounter> Joined, ImmutableArray<Finding> Notes) Settle(
        ImmutableArray<WallDraft> walls, DraftReader reader, List<SkippedWall> skipped, UnitSystem units)
    {
        while (true)
        {
            var all = EncounterFinder.All(walls);
            var (whole, joined) = FilledGaps.Of(walls, EndSharing.Resolve(walls, [.. all.Where(encounter => encounter.Gap <= EncounterFinder.WidestJoined)]));
            var (cleared, overlaps) = Clearance.Of(RunSettler.Settle(whole, joined), joined, units);
            var (settled, _) = Overlaps.Apart(cleared, units);
            var lost = settled.Select((wall, i) => (Wall: wall, Index: i, Reason: WhyLost(wall, reader))).Where(wall => wall.Reason is not null).ToList();
            if (lost.Count == 0)
            {
                return (settled, joined, [.. MeetingFindings.Of(whole, all, joined, units), .. overlaps]);
            }

            skipped.AddRange(lost.Select(wall => new SkippedWall(wall.Wall.Identity, wall.Reason!, wall.Wall.Body, wall.Wall.Choice)));
            walls = [.. walls.Where((_, i) => lost.TrueForAll(wall => wall.Index != i))];
        }
    }

    private static Finding? WhyLost(WallDraft wall, DraftReader reader) =>
        reader.TooSmall(wall) ?? (WallFinisher.LeavesMasonry(wall) ? null : WallFindings.Of(FindingCodes.OpeningTakesWall));

    private static ImmutableArray<Junction> Junctions(ImmutableArray<WallDraft> walls, ImmutableArray<Encounter> encounters) =>
    [
        .. encounters
            .Select(encounter => new Junction(
                encounter.Kind,
                encounter.First.Wall,
                encounter.Second.Wall,
                Place(walls, encounter, encounter.First),
                Place(walls, encounter, encounter.Second),
                Share(walls, encounter, encounter.Second),
                Share(walls, encounter, encounter.First),
                encounter.IsSquare))
            .OrderBy(junction => junction.First)
            .ThenBy(junction => junction.Second),
    ];

    // The other wall's thickness, measured along this one's run.
    private static Length Share(ImmutableArray<WallDraft> walls, Encounter encounter, Arm other) =>
        encounter.Kind == JunctionKind.Continued ? Length.Zero : Length.FromModelMm(walls[other.Wall].Masonry.Size / encounter.Sine);

    private static JunctionPlace Place(ImmutableArray<WallDraft> walls, Encounter encounter, Arm arm)
    {
        var run = walls[arm.Wall].Outline.Bounds;
        var length = Length.FromModelMm(run.Width);
        var (from, to) = (Length.FromModelMm(arm.Stretch.From - run.Left), Length.FromModelMm(arm.Stretch.To - run.Left));
        var isCorner = encounter.Kind is JunctionKind.Corner or JunctionKind.Continued;
        var share = Share(walls, encounter, encounter.OtherThan(arm.Wall));
        var slant = Length.FromModelMm(arm.Slant);
        return (isCorner, arm.Side) switch
        {
            (true, JunctionSide.Start) => new JunctionPlace(arm.Side, from, from + share, slant),
            (true, JunctionSide.End) => new JunctionPlace(arm.Side, to - share, to, slant),
            (false, JunctionSide.Start) when arm == encounter.Second => new JunctionPlace(arm.Side, from + Length.Abs(slant) - to, Length.Zero, slant),
            (false, JunctionSide.End) when arm == encounter.Second => new JunctionPlace(arm.Side, length, length + to - from - Length.Abs(slant), slant),
            _ => new JunctionPlace(arm.Side, from, to),
        };
    }

    private static WallEnd End(ImmutableArray<Junction> junctions, int wall, JunctionSide side)
    {
        var met = junctions
            .Select(junction => (junction.Kind, With: With(junction, wall, side), (junction.First == wall ? junction.FirstPlace : junction.SecondPlace).Slant))
            .Where(end => end.With is not null)
            .OrderBy(end => end.Kind)
            .ToList();
        return met.Count == 0 ? WallEnd.Free : new WallEnd(Kind(met[0].Kind), [.. met.Select(end => end.With!.Value).Distinct().Order()], met[0].Slant);
    }

    // A host whose end is met by a wall that butts on its side still ends free.
    private static int? With(Junction junction, int wall, JunctionSide side)
    {
        if (junction.First == wall && junction.FirstPlace.Side == side && junction.Kind != JunctionKind.Tee)
        {
            return junction.Second;
        }

        return junction.Second == wall && junction.SecondPlace.Side == side ? junction.First : null;
    }

    private static EndKind Kind(JunctionKind kind) => kind switch
    {
        JunctionKind.Corner => EndKind.Corner,
        JunctionKind.Tee => EndKind.Tee,
        JunctionKind.Cross => EndKind.Cross,
        _ => EndKind.Continued,
    };
}
