using IfcCourser.Catalogs;
using IfcCourser.Layouts;
using IfcCourser.Walls;

namespace IfcCourser.Output.Sheets.Details;

/// <summary>Every word of detail sheets beside those of <see cref="SheetText"/>.</summary>
internal static class DetailText
{
    public const string Title = "Details";

    public const string DocumentType = "Details";

    public const string Slab = "slab or footing";

    public const string Grout = "grout, placed in one go";

    public static string Number(int number) => FormattableString.Invariant($"D{number:00}");

    public static string Page(int page, int count) => count == 1 ? Title : FormattableString.Invariant($"{Title} {page} of {count}");

    public static string Course(int number) => FormattableString.Invariant($"course {number}");

    public static string Junction(JunctionLayout junction, string first, string second)
    {
        var kind = junction.Kind == JunctionKind.Corner ? "Corner" : "Tee";
        var how = junction.How switch { JunctionHow.Bonded => "bonded", JunctionHow.Tied => "tied", _ => "butted" };
        return $"{kind}, {how}: {first} with {second}";
    }

    public static string Sill(string wall, string tag) => $"Jamb and sill: {wall} {tag}";

    public static string Bearing(string wall, Lintel lintel, SheetLengths text) => $"Bearing of a lintel: {wall} {lintel.Id}, {text.WithUnit(lintel.BearingLeft)}";

    public static string MovementJoint(string wall, MovementJoint joint, SheetLengths text) => $"Movement joint: {wall}, {text.WithUnit(joint.Width)} wide";

    public static string Beam(string wall, BondBeam beam) => $"Bond beam: {wall} {beam.Id}, section";

    public static string FirstCourse(string wall) => $"First course: {wall}, section";

    public static string Bed(Units.LengthRange bed, Units.Length drawn, SheetLengths text) =>
        $"levelling bed {text.WithUnit(drawn)} as drawn, {text.Piece(bed.Min)} to {text.WithUnit(bed.Max)}";

    public static string BedJoint(Catalog catalog, SheetLengths text) => $"bed joint {text.WithUnit(catalog.BedJoint.Nominal)}, over the full bed";

    public static string Block(Catalog catalog, Units.Length thickness, SheetLengths text) => $"block {text.Piece(thickness)} x {text.WithUnit(catalog.UnitHeight)}";

    public static string Notch(Notch notch, SheetLengths text) =>
        $"inspection notch {text.Piece(notch.To - notch.From)} x {text.WithUnit(notch.Height)}, {notch.Face} face: clean, look in, close";

    public static string Core(Core core, SheetLengths text) => $"core {text.WithUnit(core.Diameter)}, bar {core.Bar}, its middle {text.WithUnit(core.Across)} from the left face";

    public static string Starter(StarterBar starter, SheetLengths text) =>
        $"starter {starter.Mark}: stick-up {text.WithUnit(starter.StickUp)}, embedment {text.WithUnit(starter.Embedment)}{(starter.IsHooked ? $", hook {text.WithUnit(starter.HookLeg)}" : string.Empty)}";

    public static string Trough(TroughUnit trough, SheetLengths text) => $"{trough.Name}: shells {text.WithUnit(trough.Shell)}, bottom {text.WithUnit(trough.Bottom)}";

    public static string Bars(BondBeam beam, SheetLengths text) => $"{beam.Bars} through, laps {text.WithUnit(beam.Lap)}; place and cover as the engineer says";

    public static IEnumerable<string> Notes(Units.UnitSystem units)
    {
        yield return units == Units.UnitSystem.Inch ? "Dimensions in feet and inches, sizes in inches." : "Dimensions in millimetres.";
        yield return "Each detail is a place of this set, or a section of the blocks it uses: like places are built alike, with the lengths of their own sheets.";
        yield return "Plans: ends of blocks, and faces of the wall that is met (its number), from that wall's outer face, at a tee from its middle. Elevations: heights from the level line.";
        yield return "Bars, beams, lintels and their bearings follow the rule set; an engineer must confirm them.";
    }
}
