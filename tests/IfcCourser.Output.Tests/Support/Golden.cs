using System.Runtime.CompilerServices;
using System.Text;

namespace IfcCourser.Output.Tests.Support;

/// <summary>Compares with a committed file; what differs is left beside it as .received, to be looked at before it replaces it.</summary>
internal static class Golden
{
    public static void Matches(string name, byte[] actual, [CallerFilePath] string here = "")
    {
        var folder = Path.Combine(Path.GetDirectoryName(here)!, "..", "Golden");
        var file = Path.Combine(folder, name);
        var expected = File.Exists(file) ? File.ReadAllText(file) : string.Empty;
        var text = Encoding.UTF8.GetString(actual);
        if (expected != text)
        {
            File.WriteAllBytes(file + ".received", actual);
        }

        Assert.Equal(expected.Split('\n'), text.Split('\n'));
    }
}
