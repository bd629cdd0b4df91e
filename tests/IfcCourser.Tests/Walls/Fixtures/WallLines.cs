using System.Globalization;
using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace IfcCourser.Tests.Walls.Fixtures;

/// <summary>A model's walls in the words of expected.txt, in the order of their names, lengths to a micrometre.</summary>
internal static class WallLines
{
    public static IEnumerable<string> Of(WallModel model) =>
    [
        .. model.Walls.OrderBy(wall => Name(wall.Identity), StringComparer.Ordinal).SelectMany(Wall),
        .. model.Skipped.Select(wall => $"skipped {Name(wall.Identity)} {wall.Reason.Code.Id}").Order(StringComparer.Ordinal),
        .. model.Junctions.Select(junction => Junction(model, junction)).Order(StringComparer.Ordinal),
        .. Findings(model.Findings),
    ];

    private static IEnumerable<string> Wall(Wall wall)
    {
        var (frame, origin) = (wall.Frame, wall.Frame.Origin);
        yield return $"wall {Name(wall.Identity)}";
        yield return $"frame {Number(origin.X)} {Number(origin.Y)} {Number(origin.Z)} {Number(frame.Direction.X)} {Number(frame.Direction.Y)} {Mm(frame.Length)} {Mm(frame.Thickness)}";
        yield return $"outline {Points(wall.Outline)}";
        yield return $"volume {wall.Body.NetVolume.ToString("0.######", CultureInfo.InvariantCulture)}";
        foreach (var opening in wall.Openings)
        {
            var rect = opening.Model;
            yield return $"opening {opening.Kind} {Mm(rect.Left)} {Mm(rect.Right)} {Mm(rect.Bottom)} {Mm(rect.Top)}";
            if (opening.Outline is { } outline)
            {
                yield return $"shape {Points(outline)}";
            }
        }

        if ((wall.Start.Kind, wall.End.Kind) != (EndKind.Free, EndKind.Free))
        {
            yield return $"ends {wall.Start.Kind} {wall.End.Kind}";
        }

        foreach (var line in Findings(wall.Findings))
        {
            yield return line;
        }
    }

    private static IEnumerable<string> Findings(IEnumerable<Finding> findings) =>
        findings.Select(finding => $"finding {finding.Code.Id}").Order(StringComparer.Ordinal);

    // At a tee the host comes first, else the walls in the order of their names.
    private static string Junction(WallModel model, Junction junction)
    {
        IEnumerable<string> arms = [Arm(model, junction.First, junction.FirstPlace), Arm(model, junction.Second, junction.SecondPlace)];
        return $"junction {junction.Kind} {string.Join(' ', junction.Kind == JunctionKind.Tee ? arms : arms.Order(StringComparer.Ordinal))}";
    }

    private static string Arm(WallModel model, int wall, JunctionPlace place) =>
        $"{Name(model.Walls[wall].Identity)} {place.Side} {Mm(place.From)} {Mm(place.To)}";

    private static string Name(WallIdentity wall) => wall.Name ?? "-";

    private static string Points(IEnumerable<ElevationPoint> points) => string.Join(", ", points.Select(p => $"{Mm(p.S)} {Mm(p.Z)}"));

    private static string Mm(Length length) => Number(length.Mm);

    private static string Number(double value) => Math.Round(value, 3).ToString("0.###", CultureInfo.InvariantCulture) is var text && text == "-0" ? "0" : text;
}
