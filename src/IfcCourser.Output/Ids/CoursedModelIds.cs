using System.Xml.Linq;
using IfcCourser.Output.IfcWriteBack;

namespace IfcCourser.Output.Ids;

/// <summary>An IDS file that states what a coursed model carries, so that any checker can tell one from a plain model.</summary>
public static class CoursedModelIds
{
    private static readonly string[] _edges = ["Left", "Right", "Bottom", "Top"];

    private const string Label = "IFCLABEL";
    private const string Count = "IFCCOUNTMEASURE";
    private const string LengthMeasure = "IFCLENGTHMEASURE";

    public const string FileName = "coursed-model.ids";

    public static void Write(Stream stream) => IdsXml.Write(
        stream,
        "What a coursed model carries",
        "Every wall says what became of it; coursed walls carry counts and quantities, their openings where they are drawn and where they are placed.",
        "Handing the coursed model on",
        IdsXml.Specification(
            "Every wall says what became of it", "Laid out or skipped, and which program says so.", true, [IdsXml.Walls],
            Coursing("Status", Label, IdsXml.OneOf("coursed", "skipped")),
            Coursing("Generator", Label, IdsXml.Matching($"{Generator.Name} .+"))),
        IdsXml.Specification(
            "Skipped walls say why", "A code from the list of findings, and a sentence.", false, Walls("skipped"),
            Coursing("Reason", "IFCIDENTIFIER", IdsXml.Matching("[a-z0-9\\-]+")),
            Coursing("ReasonText", "IFCTEXT")),
        IdsXml.Specification(
            "Coursed walls name catalog, rules and counts", "What was counted in the layout.", false, Walls("coursed"),
            [
                Coursing("Catalog", Label),
                Coursing("Rules", Label),
                Coursing("LevelGroup", "IFCIDENTIFIER"),
                Coursing("LevelLine", LengthMeasure),
                .. Counts("Courses", "Units", "FullUnits", "PartUnits", "Cuts", "Lintels", "Cores", "BondBeams", "MovementJoints", "Errors", "Warnings", "Notes"),
            ]),
        IdsXml.Specification(
            "Coursed walls have quantities", "Lengths, areas and volumes of the masonry layer.", false, Walls("coursed"),
            Quantity("RunLength", LengthMeasure),
            Quantity("MasonryThickness", LengthMeasure),
            Quantity("GrossArea", "IFCAREAMEASURE"),
            Quantity("OpeningArea", "IFCAREAMEASURE"),
            Quantity("NetArea", "IFCAREAMEASURE"),
            Quantity("NetVolume", "IFCVOLUMEMEASURE"),
            Quantity("FullUnits", Count),
            Quantity("PartUnits", Count)),
        IdsXml.Specification(
            "Openings of coursed walls say where they are placed", "As drawn, as wanted with the rules' allowances, and as laid out.", false,
            [IdsXml.Entity("IFCOPENINGELEMENT", "IFCOPENINGSTANDARDCASE"), Opening("Generator", Label)],
            [
                Opening("Kind", Label, IdsXml.OneOf("door", "window", "void", "recess", "drilled")),
                Opening("OnModule", "IFCBOOLEAN"),
                Opening("AwaitsConsent", "IFCBOOLEAN"),
                .. Jambs("Model"),
                .. Jambs("Design"),
                .. Jambs("Placed"),
                Opening("ShiftAlong", LengthMeasure),
                Opening("ShiftUp", LengthMeasure),
            ]));

    private static XElement[] Walls(string status) => [IdsXml.Walls, Coursing("Status", Label, IdsXml.Is(status))];

    private static IEnumerable<XElement> Counts(params string[] names) => names.Select(name => Coursing(name, Count));

    private static IEnumerable<XElement> Jambs(string rectangle) =>
        _edges.Select(edge => Opening(rectangle + edge, LengthMeasure));

    private static XElement Coursing(string name, string type, XElement? value = null) => IdsXml.Property(IdsXml.Is(SetNames.Coursing), name, type, value);

    private static XElement Opening(string name, string type, XElement? value = null) => IdsXml.Property(IdsXml.Is(SetNames.Opening), name, type, value);

    private static XElement Quantity(string name, string type) => IdsXml.Property(IdsXml.Is(SetNames.Quantities), name, type);
}
