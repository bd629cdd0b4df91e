using System.Globalization;
using System.Text;
using System.Xml.Linq;
using IfcCourser.Catalogs;

namespace IfcCourser.Output.Ids;

/// <summary>
/// An IDS file that states what a model must hold to be laid out with a catalog, so that whoever makes it can be told in a standard way
/// what it lacks. IDS can't look at layer thicknesses, so the wall's width is asked for.
/// </summary>
public static class ModelToReadIds
{
    public static string FileName(Catalog catalog) => $"model-for-{catalog.Name}.ids";

    public static void Write(Catalog catalog, Stream stream) => IdsXml.Write(
        stream,
        $"What a model needs to be laid out with the catalog {catalog.Name}",
        $"{catalog.Title}. Walls are found by the names of their materials and by their width; openings by the elements that make them.",
        "Coursing of block walls",
        IdsXml.Specification(
            "Walls stand on a storey", "Course lines, sheets and bars are made storey by storey.", true, [IdsXml.Walls],
            IdsXml.PartOf("IFCRELCONTAINEDINSPATIALSTRUCTURE", IdsXml.Entity("IFCBUILDINGSTOREY")).Told("Assign each wall to its storey.")),
        IdsXml.Specification(
            "Walls have a material", "Walls without one are left out unless all walls are asked for.", true, [IdsXml.Walls],
            IdsXml.Material(null).Told("Give each wall its material or layers; name the block layer by a word of the catalog.")),
        IdsXml.Specification(
            "Walls of the catalog's masonry have a width",
            "At least one wall names it, and says how wide it is.",
            true,
            [IdsXml.Walls, IdsXml.Material(IdsXml.Matching(Pattern(catalog)))],
            Width(catalog)),
        IdsXml.Specification(
            "Doors and windows fill an opening of a wall",
            "What fills no opening leaves no hole in the masonry.",
            false,
            [IdsXml.Entity("IFCDOOR", "IFCDOORSTANDARDCASE", "IFCWINDOW", "IFCWINDOWSTANDARDCASE")],
            IdsXml.PartOf("IFCRELVOIDSELEMENT IFCRELFILLSELEMENT", IdsXml.Walls).Told("Insert doors and windows into their wall, so that an opening element is exported.")));

    private static XElement Width(Catalog catalog)
    {
        const double MillimetresInMetre = 1000;
        var widths = catalog.Widths.Select(width => width.Actual).Distinct().Order().ToList();
        var listed = string.Join(", ", widths.Select(width => width.Mm.ToString("0.###", CultureInfo.InvariantCulture)));
        return IdsXml.Property(
                IdsXml.OneOf("Qto_WallBaseQuantities", "BaseQuantities"), "Width", "IFCLENGTHMEASURE", IdsXml.AtLeast(widths[0].Mm / MillimetresInMetre))
            .Told($"Export base quantities. The masonry layer must be one of these wide: {listed} mm.");
    }

    /// <summary>
    /// The catalog's words as an XML Schema regular expression: at beginnings of words, or anywhere for words with a star; case does not
    /// count, and whatever is neither letter nor digit parts words.
    /// </summary>
    internal static string Pattern(Catalog catalog)
    {
        var words = catalog.MasonryWords.Select(word =>
        {
            var sought = word.TrimStart('*').Trim();
            var rest = string.Concat(sought.Skip(1).Select(Either));
            return word.StartsWith('*')
                ? $".*{Either(sought[0])}{rest}"
                : $@"((.*\P{{L}})?{Either(sought[0])}|.*\p{{Ll}}{char.ToUpperInvariant(sought[0])}){rest}";
        });
        return $"({string.Join('|', words)}).*";
    }

    private static string Either(char c)
    {
        var (lower, upper) = (char.ToLowerInvariant(c), char.ToUpperInvariant(c));
        return !char.IsLetterOrDigit(c) ? @"[^\p{L}\p{N}]+"
            : lower == upper ? c.ToString()
            : new StringBuilder().Append('[').Append(lower).Append(upper).Append(']').ToString();
    }
}
