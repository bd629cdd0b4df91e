using IfcCourser.Layouts;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Output.Json;

/// <summary>The walls of a layout.json.</summary>
internal sealed class WallsReader
{
    private readonly Dictionary<string, int> _places = new(StringComparer.Ordinal);

    public WallsReader(JsonPlace walls)
    {
        var all = walls.List(wall => (Place: wall, Identity: Identity(wall), IsCoursed: IsCoursed(wall)));
        foreach (var id in all.Select(wall => wall.Identity.GlobalId).Order(StringComparer.Ordinal))
        {
            PlaceOf(id);
        }

        Skipped = [.. all.Where(wall => !wall.IsCoursed).Select(wall => SkippedWall(wall.Place, wall.Identity))];
        Coursed =
        [
            .. all.Where(wall => wall.IsCoursed)
                .OrderBy(wall => wall.Identity.GlobalId, StringComparer.Ordinal)
                .ThenBy(wall => wall.Identity.StepId)
                .Select(wall => Wall(wall.Place, wall.Identity)),
        ];
    }

    public ImmutableArray<WallLayout> Coursed { get; }

    public ImmutableArray<SkippedWall> Skipped { get; }

    /// <summary>GlobalIds, counted as <see cref="WallEnd.With"/> counts them.</summary>
    public ImmutableArray<string> Ids => [.. _places.OrderBy(place => place.Value).Select(place => place.Key)];

    private static bool IsCoursed(JsonPlace wall)
    {
        var status = wall["status"].Text();
        if (status is not ("coursed" or "skipped"))
        {
            wall["status"].Note($"is \"{status}\", which is neither coursed nor skipped");
        }

        return status == "coursed";
    }

    private static WallIdentity Identity(JsonPlace wall) => new(
        wall["globalId"].Text(), wall["stepId"].StepId(), wall["name"].TextOrNull(), wall["storey"].TextOrNull(), wall["type"].TextOrNull());

    private static SkippedWall SkippedWall(JsonPlace wall, WallIdentity identity)
    {
        var reasons = wall["findings"].List(LayoutReader.Finding);
        if (reasons is not [var reason])
        {
            wall["findings"].Note("is not one finding, the reason why the wall is skipped");
            return new SkippedWall(identity, null!, null);
        }

        return new SkippedWall(identity, reason, wall.Optional("body") is { } body ? Body(body) : null);
    }

    private static BodyFacts Body(JsonPlace body) =>
        new(body["netVolume"].Number(), body["grossVolume"].Number(), body["min"].Vector3(), body["max"].Vector3());

    private static WallFrame Frame(JsonPlace frame) =>
        new(frame["origin"].Vector3(), frame["direction"].Direction(), Positive(frame["length"]), Positive(frame["thickness"]))
        {
            Curve = frame.Optional("curve") is { } curve ? new WallCurve(curve["centre"].Vector2(), Positive(curve["radius"])) : null,
        };

    private static Length Positive(JsonPlace place)
    {
        var length = place.Length();
        if (length <= Length.Zero)
        {
            place.Note("is not more than nothing");
        }

        return length;
    }

    private static OpeningLayout Opening(JsonPlace opening) => new(
        new WallOpening(
            opening["globalId"].Text(),
            opening.Optional("stepId")?.StepId(),
            opening["name"].TextOrNull(),
            opening["kind"].Choice<OpeningKind>(JsonNames.Of),
            opening.Optional("filling")?.Text(),
            opening.Optional("fillingStepId")?.StepId(),
            opening["model"].Rect(),
            opening.Optional("outline")?.Outline())
        {
            IsFixed = opening.Optional("fixed")?.Flag() ?? false,
        },
        opening["design"].Rect(),
        opening["placed"].Rect(),
        opening["onModule"].Flag())
    {
        Check = opening.Optional("check") is { } check ? CheckJson.ReadOpening(check) : null,
    };

    private static WallQuantities Quantities(JsonPlace place) => new(
        place["grossArea"].Number(),
        place["openingArea"].Number(),
        place["netArea"].Number(),
        place["netVolume"].Number(),
        place["fullUnits"].Whole(),
        place["partUnits"].Whole(),
        place["troughUnits"].Whole(),
        place["beamGrout"].Number());

    private WallLayout Wall(JsonPlace wall, WallIdentity identity)
    {
        var openings = wall["openings"].List(Opening);
        var frame = Frame(wall["frame"]);
        return new WallLayout
        {
            Wall = new Wall
            {
                Identity = identity,
                Frame = frame,
                Body = Body(wall["body"]),
                Outline = wall["outline"].Outline(),
                Openings = [.. openings.Select(opening => opening.Opening)],
                Start = End(wall["ends"]["start"]),
                End = End(wall["ends"]["end"]),
                Findings = [],
            },
            Group = wall["group"].Text(),
            LevelLine = wall["levelLine"].Length(),
            LengthCheck = wall.Optional("lengthOnModule") is { } check ? CheckJson.ReadLength(check, frame.Length) : null,
            Openings = openings,
            ModuleLines = new ModuleLines(wall["moduleLines"]["start"].Length(), Positive(wall["moduleLines"]["pitch"])),
            Courses = wall["courses"].List(CourseReader.Course),
            Lintels = wall["lintels"].List(ReinforcementReader.Lintel),
            Cores = wall["cores"].List(ReinforcementReader.Core),
            CornerCores = wall.Optional("cornerCores")?.List(ReinforcementReader.CornerCore) ?? [],
            BondBeams = wall["bondBeams"].List(ReinforcementReader.BondBeam),
            MovementJoints = wall["movementJoints"].List(ReinforcementReader.MovementJoint),
            Embeds = wall["embeds"].List(ReinforcementReader.Embed),
            Quantities = Quantities(wall["quantities"]),
            Findings = wall["findings"].List(LayoutReader.Finding),
        };
    }

    private WallEnd End(JsonPlace end) => new(
        end["kind"].Choice<EndKind>(JsonNames.Of), end["with"].List(with => PlaceOf(with.Text())), end.Optional("slant")?.Length() ?? Length.Zero);

    private int PlaceOf(string globalId)
    {
        _places.TryAdd(globalId, _places.Count);
        return _places[globalId];
    }
}
