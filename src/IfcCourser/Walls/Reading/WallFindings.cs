using System.Collections.Immutable;
using System.Globalization;
using IfcCourser.Catalogs;
using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Ifc.Bodies;
using IfcCourser.Units;

namespace IfcCourser.Walls.Reading;

/// <summary>What is said about walls that are read from a model.</summary>
public static class WallFindings
{
    /// <summary>A finding that says no more than its code does.</summary>
    public static Finding Of(FindingCode code) => new(code, code.Meaning);

    public static Finding NotRead(ImmutableArray<UnreadItem> items)
    {
        var named = string.Join(", ", items.Select(item => Text($"#{item.StepId}")));
        return items.Any(item => item.HasBentFaces)
            ? new(FindingCodes.FacesBent, $"Faces of the body's part {named} bend both ways, as on a sphere or a free-form surface; they are not followed.")
            : new(FindingCodes.BodyNotRead, $"The body's part {named} can't be read.");
    }

    public static Finding SizeImplausible(double length, double? thickness, double height) => new(
        FindingCodes.SizeImplausible,
        $"The body is {Mm(length)} long, {(thickness is { } thick ? Mm(thick) + " thick " : string.Empty)}and {Mm(height)} high, which is no wall's size: check the model's length unit.");

    /// <param name="units">Of the catalog; to the micrometre where both would read the same in them.</param>
    public static Finding Width(WidthMatch match, double thickness, Length nearest, UnitSystem units)
    {
        var (thick, wide) = (Said(thickness, units), Said(nearest, units));
        if (string.Equals(thick, wide, StringComparison.Ordinal))
        {
            (thick, wide) = (Mm(thickness), nearest.ToString());
        }

        return match switch
        {
            WidthMatch.Exact => new(FindingCodes.WidthNotInCatalog, $"The masonry is {thick} thick; the nearest unit is {wide} wide."),
            WidthMatch.Nearest => new(FindingCodes.WidthNearest, $"The masonry is {thick} thick and laid in units {wide} wide."),
            _ => new(FindingCodes.WidthAny, $"The masonry is {thick} thick; the nearest unit is {wide} wide."),
        };
    }

    public static Finding SecondLeaf(double thickness, ImmutableArray<string> others, UnitSystem units) =>
        new(FindingCodes.SecondLeaf, $"The layer {Said(thickness, units)} thick is laid out; not laid out: {string.Join(", ", others)}.");

    public static Finding InPieces(Region gap, UnitSystem units) =>
        new(FindingCodes.BodyInPieces, $"The masonry falls into pieces with a gap of {Said(gap.Bounds.Width, units)} between them, which is taken as an opening.");

    public static Finding PieceLeftOut(double area) =>
        new(FindingCodes.PieceLeftOut, Text($"{area / 1e6:0.##} m2 of the masonry stand apart from the rest and are not laid out."));

    public static Finding PocketFilled(Region pockets) =>
        new(FindingCodes.PocketFilled, Text($"Over {pockets.Area / 1e6:0.##} m2 of the elevation the body lacks a part of its thickness; the masonry is laid through there."));

    public static Finding BeyondFaces(double share) =>
        new(FindingCodes.BodyBeyondFaces, Text($"{share * 100:0.#} % of the body stand out of the wall's two faces and are not laid out."));

    public static Finding Bevelled(double area) =>
        new(FindingCodes.BevelledAcross, Text($"{area / 1e6:0.###} m2 of one face stand higher than the other face and are not laid out."));

    public static Finding Opening(FindingCode code, WallOpening opening) =>
        new(code, $"{opening.Label}: {code.Meaning}", new FindingPlace { Opening = opening.GlobalId });

    /// <summary>Two openings that are one void.</summary>
    public static Finding Merged(WallOpening stays, WallOpening goes) =>
        new(FindingCodes.OpeningsMerged, $"{stays.Label} and {goes.Label} share one void and are laid out as one opening.", new FindingPlace { Opening = stays.GlobalId });

    /// <summary>A door or window without an opening, placed in the settled elevation.</summary>
    public static Finding Loose(LooseFilling filling, Rect elevation, UnitSystem units)
    {
        var (record, box) = (filling.Record, filling.Box);
        var kind = record.IsDoor ? "door" : "window";
        var name = string.IsNullOrWhiteSpace(record.Name) ? Text($"#{record.StepId}") : record.Name;
        return new(
            FindingCodes.DoorWithoutOpening,
            $"The {kind} {name}, {Said(box.Width, units)} wide and {Said(box.Height, units)} high, stands in the wall, but no opening is made for it; none is laid out.",
            new FindingPlace { S = Length.FromModelMm(box.Left - elevation.Left), Z = Length.FromModelMm(box.Bottom - elevation.Bottom), Opening = record.GlobalId });
    }

    /// <summary>A wall that bends more tightly than its head joints follow, or bends in more than one arc.</summary>
    public static Finding Curved(double radius, double thickness, Catalog catalog)
    {
        var units = catalog.Units;
        var joints = $"head joints from {Said(catalog.HeadJoint.Min, units)} to {Said(catalog.HeadJoint.Max, units)}";
        Length? Least(Length unit) => CurvedJoints.LeastRadius(catalog, unit, Length.FromModelMm(thickness));
        var allowed = Least(catalog.UnitLength) is { } unit && Least(catalog.MinPiece) is { } piece
            ? $"{joints} let units of {Said(catalog.UnitLength, units)} follow a radius of {Said(unit, units)} or more, pieces of {Said(catalog.MinPiece, units)} one of {Said(piece, units)}."
            : $"{joints} leave no play to follow a curve.";
        return new(FindingCodes.CurvedInPlan, $"The wall is {Said(thickness, units)} thick and bends around a radius of {Said(radius, units)} on its centre line; {allowed}");
    }

    public static Finding LowerThan(double height, Length least, UnitSystem units) =>
        new(FindingCodes.LowerThanOneCourse, $"The wall is {Said(height, units)} high; the bed and the least course need {Said(least, units)}.");

    public static Finding ShorterThan(double length, Length least, UnitSystem units) =>
        new(FindingCodes.ShorterThanLeastPiece, $"The wall is {Said(length, units)} long; the least piece is {Said(least, units)}.");

    public static Finding NotLonger(double length, double thickness, UnitSystem units) =>
        new(FindingCodes.NotLongerThanThick, $"The wall is {Said(length, units)} long and {Said(thickness, units)} thick.");

    /// <summary>An end against a wall that is not square.</summary>
    public static Finding EndOnSlant(Length slant, Length place, UnitSystem units) => new(
        FindingCodes.EndOnSlant,
        $"The end is cut on a slant: its {(slant > Length.Zero == (place > Length.Zero) ? "right" : "left")} face is {Said(Length.Abs(slant), units)} longer than the other; lengths are those of the longer face.",
        new FindingPlace { S = place });

    /// <summary>A finding about two walls.</summary>
    /// <param name="size">What there is to be measured, such as "a gap of"; null where nothing is.</param>
    public static Finding Pair(FindingCode code, WallIdentity first, WallIdentity second, (string What, double Mm)? size, UnitSystem units) => new(
        code,
        $"{code.Meaning} {Name(first)} and {Name(second)}{(size is { } told ? $": {told.What} {Said(told.Mm, units)}" : string.Empty)}.",
        new FindingPlace { Walls = [first.GlobalId, second.GlobalId] });

    private static string Name(WallIdentity wall) =>
        string.IsNullOrWhiteSpace(wall.Name) ? wall.Label : Text($"{wall.Name} (#{wall.StepId})");

    private static string Mm(double mm) => Length.FromModelMm(mm).ToString();

    private static string Said(double mm, UnitSystem units) => Said(Length.FromModelMm(mm), units);

    private static string Said(Length length, UnitSystem units) => LengthText.WithUnit(length, units);

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
