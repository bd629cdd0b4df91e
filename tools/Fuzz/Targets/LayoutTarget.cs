using IfcCourser.Output.Json;

namespace Fuzz.Targets;

/// <summary>layout.json: what can be read can be written, and reads the same again.</summary>
internal static class LayoutTarget
{
    public static void Read(byte[] bytes)
    {
        var read = LayoutReader.Read(bytes, "fuzz.json");
        if (!read.IsOk)
        {
            return;
        }

        using var once = new MemoryStream();
        LayoutJson.Write(read.Value, once);
        var again = LayoutReader.Read(once.ToArray(), "again.json");
        Law.Holds(again.IsOk, $"a written layout can't be read: {again.Fault}");
        using var twice = new MemoryStream();
        LayoutJson.Write(again.Value!, twice);
        Law.Holds(once.ToArray().AsSpan().SequenceEqual(twice.ToArray()), "a layout differs once written and read");
    }
}
