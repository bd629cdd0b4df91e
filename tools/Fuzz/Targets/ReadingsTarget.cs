using System.Text;
using IfcCourser.Slabs;

namespace Fuzz.Targets;

/// <summary>Readings of a slab, with and without a unit given.</summary>
internal static class ReadingsTarget
{
    public static void Read(byte[] bytes)
    {
        var text = Encoding.UTF8.GetString(bytes);
        foreach (var unit in (string?[])[null, "m"])
        {
            if (ReadingsReader.Read(text, "fuzz.csv", unit) is { IsOk: true } readings)
            {
                Law.Holds(readings.Value.Readings.All(reading => double.IsFinite(reading.Plan.X) && double.IsFinite(reading.Plan.Y) && double.IsFinite(reading.Height ?? 0)), "a reading is no number");
            }
        }
    }
}
