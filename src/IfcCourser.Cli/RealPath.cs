namespace IfcCourser.Cli;

/// <summary>Where a path leads once links are followed.</summary>
internal static class RealPath
{
    /// <summary>The full path with every link on the way followed; what does not exist is taken as written.</summary>
    public static string Of(string path)
    {
        var full = Path.GetFullPath(path);
        if (Path.GetDirectoryName(full) is not { } parent)
        {
            return full;
        }

        var place = Path.Combine(Of(parent), Path.GetFileName(full));
        try
        {
            var target = new FileInfo(place).ResolveLinkTarget(returnFinalTarget: true)?.FullName;
            return target is null || target == place ? place : Of(target);
        }
        catch (IOException)
        {
            // Nothing there, or links that lead in a circle.
            return place;
        }
    }
}
