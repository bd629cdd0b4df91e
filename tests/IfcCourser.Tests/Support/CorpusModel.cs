using System.Text.RegularExpressions;
using IfcCourser.Geometry;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Tests.Support;

/// <summary>Builds the walls that a case of a corpus states, line by line; a wall that meets no other stands apart.</summary>
internal sealed partial class CorpusModel(UnitSystem units)
{
    private const double Apart = 100_000;

    private readonly List<Wall> _walls = [];
    private readonly List<Junction> _junctions = [];

    public WallModel Model => new() { Walls = [.. _walls], Skipped = [], Junctions = [.. _junctions], Findings = [] };

    /// <summary>Reads a statement about walls; others are passed over.</summary>
    public void Read(string line)
    {
        var words = line.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        switch (words[0])
        {
            case "wall":
                AddWall(WallPattern().Match(line).Groups);
                break;
            case "opening":
                AddOpening(OpeningPattern().Match(line).Groups);
                break;
            case "corner":
                AddCorner(Index(words[1]), Index(words[2]));
                break;
            case "tee":
                AddTee(Index(words[1]), Index(words[2]), Number(string.Join(' ', words.Skip(3))));
                break;
            case "joint":
                _walls[Index(words[1])] = _walls[Index(words[1])] with { MovementJoints = [.. _walls[Index(words[1])].MovementJoints, Number(string.Join(' ', words.Skip(2)))] };
                break;
            case "step":
                AddStep(Index(words[1]), Number(words[2]), Number(words[3]));
                break;
            case "over":
                Place(Index(words[2]), _walls[Index(words[1])].Frame.Origin.Plan, _walls[Index(words[1])].Frame.Direction);
                break;
        }
    }

    private void AddWall(GroupCollection groups)
    {
        var number = _walls.Count;
        var wall = WallSketch.Straight(Number(groups["length"].Value), Number(groups["height"].Value), Number(groups["thickness"].Value));
        var wallBase = groups["base"].Success ? Number(groups["base"].Value).Mm : 0;
        _walls.Add(wall with
        {
            Identity = new WallIdentity(groups["name"].Value, 10 + number, groups["name"].Value, "Ground floor", null),
            Frame = wall.Frame with { Origin = new Vector3(0, Apart * number, wallBase) },
            LoadBearing = groups["loose"].Success ? false : null,
        });
    }

    private void AddOpening(GroupCollection groups)
    {
        var wall = Index(groups["name"].Value);
        var opening = WallSketch.Opening(
            _walls[wall].Openings.Length,
            Number(groups["from"].Value).Mm, Number(groups["to"].Value).Mm, Number(groups["sill"].Value).Mm, Number(groups["head"].Value).Mm);
        _walls[wall] = _walls[wall] with { Openings = _walls[wall].Openings.Add(opening) };
    }

    private void AddCorner(int first, int second)
    {
        var (a, b) = (_walls[first].Frame, _walls[second].Frame);
        Place(second, a.PointAt(a.Length - b.Thickness, a.Thickness, Length.Zero).Plan, a.Normal);
        _walls[first] = _walls[first] with { End = new WallEnd(EndKind.Corner, [second]) };
        _walls[second] = _walls[second] with { Start = new WallEnd(EndKind.Corner, [first]) };
        _junctions.Add(new Junction(
            JunctionKind.Corner, first, second,
            new JunctionPlace(JunctionSide.End, a.Length - b.Thickness, a.Length), new JunctionPlace(JunctionSide.Start, Length.Zero, a.Thickness),
            b.Thickness, a.Thickness, IsSquare: true));
    }

    private void AddTee(int host, int abutting, Length at)
    {
        var (a, b) = (_walls[host].Frame, _walls[abutting].Frame);
        Place(abutting, a.PointAt(at, a.Thickness + b.Length, Length.Zero).Plan, a.Normal);
        _walls[abutting] = _walls[abutting] with { End = new WallEnd(EndKind.Tee, [host]) };
        _junctions.Add(new Junction(
            JunctionKind.Tee, host, abutting,
            new JunctionPlace(JunctionSide.Along, at, at + b.Thickness), new JunctionPlace(JunctionSide.End, b.Length, b.Length),
            b.Thickness, Length.Zero, IsSquare: true));
    }

    private void AddStep(int wall, Length at, Length height)
    {
        var (length, top) = (_walls[wall].Frame.Length, _walls[wall].Outline.Max(point => point.Z));
        _walls[wall] = _walls[wall] with
        {
            Outline = [new(Length.Zero, Length.Zero), new(length, Length.Zero), new(length, height), new(at, height), new(at, top), new(Length.Zero, top)],
        };
    }

    private void Place(int wall, Vector2 origin, Vector2 direction)
    {
        var frame = _walls[wall].Frame;
        _walls[wall] = _walls[wall] with { Frame = frame with { Origin = new Vector3(origin.X, origin.Y, frame.Origin.Z), Direction = direction } };
    }

    private int Index(string name) => _walls.FindIndex(wall => string.Equals(wall.Identity.Name, name, StringComparison.Ordinal));

    private Length Number(string text) => WallCorpus.Number(text, units);

    [GeneratedRegex(
        @"^wall (?<name>\S+) (?<length>.+) x (?<height>.+) x (?<thickness>[\d ./]+?)( base (?<base>[\d ./-]+?))?(?<loose> not-bearing)?$",
        RegexOptions.ExplicitCapture | RegexOptions.NonBacktracking)]
    private static partial Regex WallPattern();

    [GeneratedRegex(@"^opening (?<name>\S+) (?<from>.+)\.\.(?<to>.+) x (?<sill>.+)\.\.(?<head>.+)$", RegexOptions.ExplicitCapture | RegexOptions.NonBacktracking)]
    private static partial Regex OpeningPattern();
}
