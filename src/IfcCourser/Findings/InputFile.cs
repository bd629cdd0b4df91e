namespace IfcCourser.Findings;

/// <summary>What stands at a path that a user gave, before it is opened.</summary>
public static class InputFile
{
    /// <summary>
    /// The fault of a file without length: an empty one, or a pipe or a device, which a reader would wait for without end; the system tells
    /// one from the other only on opening. Null for all others, also where there is nothing. Links are followed.
    /// </summary>
    /// <param name="path">As the user gave it.</param>
    /// <exception cref="IOException">Links lead in a circle.</exception>
    public static Fault? Empty(string path)
    {
        var file = new FileInfo(path);
        var target = file.LinkTarget is null ? file : file.ResolveLinkTarget(returnFinalTarget: true);
        return target is FileInfo { Exists: true, Length: 0 }
            ? new Fault(path, null, null, "the file is empty, or it is a pipe or a device", "Export the model again; save what comes out of a pipe to a file, and give that.")
            : null;
    }
}
