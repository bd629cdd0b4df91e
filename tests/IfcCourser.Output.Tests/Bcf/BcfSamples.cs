using System.IO.Compression;
using System.Xml.Linq;
using IfcCourser.Catalogs;
using IfcCourser.Findings;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Output.Bcf;
using IfcCourser.Output.Tests.Support;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Output.Tests.Bcf;

/// <summary>Layouts with issues, and BCF files of them.</summary>
internal static class BcfSamples
{
    private static readonly SampleWall _front = new(BuiltInCatalogs.Get("aac-mm"), "Front", Length.FromMm(5999), 10)
    {
        Openings = [Opening("2N4qmaB3CDfAlyNQ53ESPv", "Window <1> & \u0001", 1000, 2001)],
        Findings =
        [
            new Finding(FindingCodes.OpeningMoved, "Window <1> & \u0001 moved +10 mm; awaits the designer's consent", new FindingPlace { S = Length.FromMm(1010), Opening = "2N4qmaB3CDfAlyNQ53ESPv" }),
            new Finding(FindingCodes.PierShort, "A pier is short: more would do", new FindingPlace { S = Length.FromMm(100) }),
            new Finding(FindingCodes.OverlapShort, "for the mason alone"),
        ],
    };

    /// <summary>One wall with an opening that was moved by 10 mm, two issues, and a wall that is not laid out.</summary>
    public static Layout Layout { get; } = new()
    {
        Model = new ModelFacts("haus.ifc", new string('0', 64), "IFC4", 1, "3Lll7opEVXd4croeixKhM2", "Haus", "2026-03-01T10:00:00+02:00"),
        Rules = LayoutRules.For(BuiltInRuleSets.Get("eu"), BuiltInCatalogs.Get("aac-mm"), OpeningPolicy.Move),
        Walls = [_front.Laid()],
        Skipped = [new Walls.SkippedWall(new Walls.WallIdentity("1WXv1KOCR_IlhHdm4rHcAO", 500, null, null, null), new Finding(FindingCodes.WidthNotInCatalog, "no unit is 183 mm wide"), null)],
        Junctions = [],
        Findings = [],
    };

    public static byte[] Written(BcfFile file)
    {
        using var stream = new MemoryStream();
        BcfWriter.Write(file, stream);
        return stream.ToArray();
    }

    public static byte[] Written(Layout layout, BcfVersion version) => Written(BcfReplies.Join(layout, version, null).File);

    /// <summary>Entries of a file by name.</summary>
    public static Dictionary<string, byte[]> Entries(byte[] bcf)
    {
        using var zip = new ZipArchive(new MemoryStream(bcf));
        return zip.Entries.ToDictionary(entry => entry.FullName, entry =>
        {
            using var stream = entry.Open();
            using var bytes = new MemoryStream();
            stream.CopyTo(bytes);
            return bytes.ToArray();
        }, StringComparer.Ordinal);
    }

    public static XElement Xml(byte[] content) => XElement.Load(new MemoryStream(content));

    /// <summary>A file of entries, as others write it, read by our reader.</summary>
    public static Outcome<BcfFile> Read(IEnumerable<KeyValuePair<string, byte[]>> entries)
    {
        var path = Path.GetTempFileName();
        try
        {
            using (var zip = new ZipArchive(File.Create(path), ZipArchiveMode.Create))
            {
                foreach (var (name, content) in entries)
                {
                    using var stream = zip.CreateEntry(name).Open();
                    stream.Write(content);
                }
            }

            return BcfReader.Read(path);
        }
        finally
        {
            File.Delete(path);
        }
    }

    private static OpeningLayout Opening(string id, string name, double left, double right)
    {
        var design = new ElevationRect(Length.FromMm(left), Length.FromMm(right), Length.FromMm(1000), Length.FromMm(2000));
        return new OpeningLayout(
            new Walls.WallOpening(id, 200, name, Walls.OpeningKind.Window, "0GwboGUNKdQaolI6KUnGIQ", 201, design, null), design, design.ShiftedBy(Length.FromMm(10), Length.Zero), OnModule: true);
    }
}
