using System.Globalization;

namespace IfcCourser.Output.Dxf;

/// <summary>Handles in the order they are asked for, from 1.</summary>
internal sealed class DxfHandles
{
    private long _last;

    /// <summary>The handle that would come next: $HANDSEED.</summary>
    public string Seed => Text(_last + 1);

    public string Next() => Text(++_last);

    private static string Text(long handle) => handle.ToString("X", CultureInfo.InvariantCulture);
}
