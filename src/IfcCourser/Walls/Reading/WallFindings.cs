using System.Collections.Immutable;
using System.Globalization;
using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Units;

namespace IfcCourser.Walls.Reading;

/// <summary>What is said about walls that are read from a model.</summary>
public static class WallFindings
{
    /// <summary>A finding that says no more than its code does.</summary>
    public static Finding Of(FindingCode code) => new(code, code.Meaning);

    public static Finding NotRead(ImmutableArray<long> items) =>
        new(FindingCodes.BodyNotRead, $"The body's part {string.Join(", ", items.Select(id => Text($"#{id}")))} can't be read.");

    public static Finding Width(WidthMatch match, double thickness, Length nearest) => match switch
    {
        WidthMatch.Exact => new(FindingCodes.WidthNotInCatalog, Text($"The masonry is {Mm(thickness)} thick; the nearest unit is {nearest} wide.")),
        WidthMatch.Nearest => new(FindingCodes.WidthNearest, Text($"The masonry is {Mm(thickness)} thick and laid in units {nearest} wide.")),
        _ => new(FindingCodes.WidthAny, Text($"The masonry is {Mm(thickness)} thick; the nearest unit is {nearest} wide.")),
    };

    public static Finding SecondLeaf(double thickness, ImmutableArray<string> others) =>
        new(FindingCodes.SecondLeaf, $"The layer {Mm(thickness)} thick is laid out; not laid out: {string.Join(", ", others)}.");

    public static Finding InPieces(ImmutableArray<Region> parts) =>
        new(FindingCodes.BodyInPieces, Text($"The masonry falls into {parts.Length} pieces; {parts.Skip(1).Sum(part => part.Area) / 1e6:0.##} m2 are not laid out."));

    public static Finding Bevelled(double area) =>
        new(FindingCodes.BevelledAcross, Text($"{area / 1e6:0.###} m2 of one face stand higher than the other face and are not laid out."));

    public static Finding Opening(FindingCode code, WallOpening opening) =>
        new(code, $"{opening.Label}: {code.Meaning}", new FindingPlace { Opening = opening.GlobalId });

    /// <summary>Two openings that are one void.</summary>
    public static Finding Merged(WallOpening stays, WallOpening goes) =>
        new(FindingCodes.OpeningsMerged, $"{stays.Label} and {goes.Label} share one void and are laid out as one opening.", new FindingPlace { Opening = stays.GlobalId });

    /// <summary>A door or window without an opening, placed in the settled elevation.</summary>
    public static Finding Loose(LooseFilling filling, Rect elevation)
    {
        var (record, box) = (filling.Record, filling.Box);
        var kind = record.IsDoor ? "door" : "window";
        var name = string.IsNullOrWhiteSpace(record.Name) ? Text($"#{record.StepId}") : record.Name;
        return new(
            FindingCodes.DoorWithoutOpening,
            $"The {kind} {name}, {Mm(box.Width)} wide and {Mm(box.Height)} high, stands in the wall, but no opening is made for it; none is laid out.",
            new FindingPlace { S = Length.FromModelMm(box.Left - elevation.Left), Z = Length.FromModelMm(box.Bottom - elevation.Bottom), Opening = record.GlobalId });
    }

    public static Finding LowerThan(double height, Length least) =>
        new(FindingCodes.LowerThanOneCourse, $"The wall is {Mm(height)} high; the bed and the least course need {least}.");

    public static Finding ShorterThan(double length, Length least) =>
        new(FindingCodes.ShorterThanLeastPiece, $"The wall is {Mm(length)} long; the least piece is {least}.");

    public static Finding NotLonger(double length, double thickness) =>
        new(FindingCodes.NotLongerThanThick, $"The wall is {Mm(length)} long and {Mm(thickness)} thick.");

    /// <summary>An end against a wall that is not square.</summary>
    public static Finding EndOnSlant(Length slant, Length place) => new(
        FindingCodes.EndOnSlant,
        $"The end is cut on a slant: its {(slant > Length.Zero == (place > Length.Zero) ? "right" : "left")} face is {Length.Abs(slant)} longer than the other; lengths are those of the longer face.",
        new FindingPlace { S = place });

    /// <summary>A finding about two walls.</summary>
    public static Finding Pair(FindingCode code, WallIdentity first, WallIdentity second, double mm) => new(
        code, $"{code.Meaning} {Name(first)} and {Name(second)}: {Mm(mm)}.", new FindingPlace { Walls = [first.GlobalId, second.GlobalId] });

    private static string Name(WallIdentity wall) =>
        string.IsNullOrWhiteSpace(wall.Name) ? wall.Label : Text($"{wall.Name} (#{wall.StepId})");

    private static string Mm(double mm) => Length.FromModelMm(mm).ToString();

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
