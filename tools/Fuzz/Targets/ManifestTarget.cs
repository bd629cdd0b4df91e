using System.Text;
using IfcCourser.Cli.Batch;

namespace Fuzz.Targets;

/// <summary>The manifest of a batch.</summary>
internal static class ManifestTarget
{
    public static void Read(byte[] bytes)
    {
        var lots = Manifest.OfText(Encoding.UTF8.GetString(bytes), "fuzz.csv");
        Law.Holds(!lots.IsOk || lots.Value.All(lot => LotName.IsSafe(lot.Name)), "a lot's name leads elsewhere");
    }
}
