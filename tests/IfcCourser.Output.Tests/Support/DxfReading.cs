using System.Globalization;
using System.Text;
using IfcCourser.Output.Dxf;
using IfcCourser.Output.Sheets;

namespace IfcCourser.Output.Tests.Support;

/// <summary>A written drawing read back as groups, split at each code 0.</summary>
internal sealed record DxfReading(IReadOnlyList<DxfRecord> Records, byte[] Bytes)
{
    public static DxfReading Of(params Sheet[] sheets)
    {
        using var stream = new MemoryStream();
        DxfWriter.Write(sheets, stream);
        var lines = Encoding.UTF8.GetString(stream.ToArray()).Split('\n');
        var groups = Enumerable.Range(0, lines.Length / 2)
            .Select(i => (Code: int.Parse(lines[2 * i], CultureInfo.InvariantCulture), Value: lines[(2 * i) + 1]));
        var records = new List<DxfRecord>();
        foreach (var (code, value) in groups)
        {
            if (code == 0)
            {
                records.Add(new DxfRecord(value, []));
            }
            else
            {
                records[^1].Groups.Add((code, value));
            }
        }

        return new DxfReading(records, stream.ToArray());
    }

    public IEnumerable<DxfRecord> All(string type) => Records.Where(record => record.Type == type);
}
