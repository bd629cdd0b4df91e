using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Units;

namespace IfcCourser.Comparing;

/// <summary>What is not the same in a wall of two layouts.</summary>
internal sealed class WallDifferences(ComparedWall older, ComparedWall newer, UnitSystem units)
{
    public IEnumerable<Change> All()
    {
        var named = Named();
        return (older.Layout, newer.Layout) switch
        {
            ({ } was, { } now) => [.. named, .. Placed(was, now), .. new OpeningDifferences(was, now, units).All(), .. Built(was, now)],
            ({ }, null) => [.. named, new Change("skipped", Messages.NoLongerLaidOut(newer.Reason!))],
            (null, { }) => [.. named, new Change("laid-out", Messages.NowLaidOut(older.Reason!))],
            _ => [.. named, .. older.Body is null || newer.Body is null || older.StandsWhere(newer) ? Enumerable.Empty<Change>() : [new Change("moved", Messages.BodyMoved)]],
        };
    }

    private IEnumerable<Change> Named()
    {
        var (was, now) = (older.Identity, newer.Identity);
        if (was.Name != now.Name)
        {
            yield return new Change("renamed", Messages.FromTo(was.Name, now.Name));
        }

        if (was.Storey != now.Storey)
        {
            yield return new Change("storey", Messages.FromTo(was.Storey, now.Storey));
        }
    }

    private IEnumerable<Change> Placed(WallLayout was, WallLayout now)
    {
        if (!Nearness.Is(was.Frame.Origin, now.Frame.Origin) || !Nearness.IsDirection(was.Frame.Direction, now.Frame.Direction, was.Frame.Length))
        {
            yield return new Change("moved", Messages.StartMoved(Length.FromModelMm((now.Frame.Origin - was.Frame.Origin).Length), units));
        }

        if (!Nearness.Is(was.Frame.Thickness, now.Frame.Thickness))
        {
            yield return new Change("thickness", Messages.FromTo(was.Frame.Thickness, now.Frame.Thickness, units));
        }

        if (was.Outline.Length != now.Outline.Length || was.Outline.Zip(now.Outline).Any(pair => !Nearness.Is(pair.First.S, pair.Second.S) || !Nearness.Is(pair.First.Z, pair.Second.Z)))
        {
            yield return new Change("outline", Messages.OutlineChanged(was.Frame.Length, Top(was), now.Frame.Length, Top(now), units));
        }
    }

    private static Length Top(WallLayout wall) => wall.Outline.Max(point => point.Z);

    private static IEnumerable<Change> Built(WallLayout was, WallLayout now)
    {
        var courses = was.Courses.Select(course => course.Number).Union(now.Courses.Select(course => course.Number)).Order()
            .Where(number => !Pieces(was, number).SequenceEqual(Pieces(now, number), StringComparer.Ordinal)).ToList();
        if (courses.Count > 0)
        {
            yield return new Change("pieces", Messages.PiecesChanged(NumberRanges.Of(courses), PieceCounts.Of(was), PieceCounts.Of(now)));
        }

        (string What, IEnumerable<string> Was, IEnumerable<string> Now)[] parts =
        [
            ("lintels", was.Lintels.Select(Text), now.Lintels.Select(Text)),
            ("bars", was.Cores.Select(Text), now.Cores.Select(Text)),
            ("bond-beams", was.BondBeams.Select(Text), now.BondBeams.Select(Text)),
            ("movement-joints", was.MovementJoints.Select(Text), now.MovementJoints.Select(Text)),
        ];
        foreach (var (what, before, after) in parts.Select(part => (part.What, part.Was.Order(StringComparer.Ordinal).ToList(), part.Now.Order(StringComparer.Ordinal).ToList())))
        {
            if (!before.SequenceEqual(after, StringComparer.Ordinal))
            {
                yield return new Change(what, Messages.CountedChange(before.Count, after.Count, after.Except(before, StringComparer.Ordinal).Count()));
            }
        }
    }

    private static IEnumerable<string> Pieces(WallLayout wall, int course) => wall.Courses.Where(one => one.Number == course).SelectMany(one => one.Pieces).Select(Text);

    public static string Text(Piece piece) =>
        $"{piece.Product} {piece.From} {piece.To} {piece.Bottom} {piece.Top} {piece.Cut} {piece.IsTrough} {string.Join(' ', (piece.Outline ?? []).Select(Text))}";

    public static string Text(Lintel lintel) => $"{lintel.Kind} {lintel.Product} {lintel.From} {lintel.To} {lintel.Bottom} {lintel.Top}";

    public static string Text(Core core) => $"{core.Bar} {core.Bars?.Count} {core.At} {core.Across} {core.Bottom} {core.Top}";

    public static string Text(BondBeam beam) => $"{beam.Kind} {beam.Bars} {beam.From} {beam.To} {beam.Bottom} {beam.Top}";

    public static string Text(MovementJoint joint) => $"{joint.At} {joint.Width}";

    private static string Text(ElevationPoint point) => $"{point.S} {point.Z}";
}
