using System.Collections.Immutable;
using System.IO.Compression;
using System.Text;
using FixtureMaker.Design;
using FixtureMaker.Ifc;

namespace FixtureMaker.Bad;

/// <summary>Input that must be refused with one clear message, each made from a model of one wall by one defect.</summary>
internal static class BadFiles
{
    // The format's own first day: a zip entry can't do without a time.
    private static readonly DateTimeOffset _zipEpoch = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    public static ImmutableArray<(string Name, byte[] Bytes)> All()
    {
        var model = HouseFile.Write(OneWall());
        return
        [
            ("empty.ifc", []),
            ("not-step.ifc", Encoding.ASCII.GetBytes("This is a letter, not a model.\n")),
            ("cut-off.ifc", Encoding.ASCII.GetBytes(model[..(model.Length / 2)])),
            ("wrong-schema.ifc", Encoding.ASCII.GetBytes(model.Replace("'IFC4'", "'AUTOMOTIVE_DESIGN'", StringComparison.Ordinal))),
            ("missing-id.ifc", Encoding.ASCII.GetBytes(WithoutBody(model))),
            ("no-model.ifczip", Zip(("readme.txt", "No model in here.\n"))),
            ("two-models.ifczip", Zip(("a.ifc", model), ("b.ifc", model))),
        ];
    }

    private static House OneWall()
    {
        var buildUp = BuildUp.Centred("Wall 240", new Layer("Aerated concrete block 240", 240));
        var wall = new Wall("Lone wall", buildUp, new(0, 0), Heading.East, new Body.Box(0, 4999, 2520))
        {
            AxisFrom = 0,
            AxisTo = 4999,
        };
        return new("lone-wall", "Lone wall", "1 Larkmoor Lane", SchemaVersion.Ifc4, HouseUnits.Millimetre)
        {
            Storeys = [new("Ground floor", 0, 200, [new(0, -120), new(4999, -120), new(4999, 120), new(0, 120)], [wall])],
        };
    }

    // The wall keeps its reference to a shape whose instance is gone.
    private static string WithoutBody(string model)
    {
        var lines = model.Split('\n').ToList();
        var wall = lines.Find(line => line.Contains("=IFCWALL(", StringComparison.Ordinal))!;
        var shape = wall.Split(',')[^3];
        lines.RemoveAll(line => line.StartsWith(shape + "=", StringComparison.Ordinal));
        return string.Join('\n', lines);
    }

    // Stored, not deflated: compressors differ from one runtime to the next.
    private static byte[] Zip(params (string Name, string Text)[] entries)
    {
        using var bytes = new MemoryStream();
        using (var zip = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var (name, text) in entries)
            {
                var entry = zip.CreateEntry(name, CompressionLevel.NoCompression);
                entry.LastWriteTime = _zipEpoch;
                using var content = entry.Open();
                content.Write(Encoding.ASCII.GetBytes(text));
            }
        }

        return bytes.ToArray();
    }
}
