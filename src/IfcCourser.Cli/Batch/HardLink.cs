using System.Runtime.InteropServices;

namespace IfcCourser.Cli.Batch;

/// <summary>
/// A second name for a file, so that a thousand equal lots take the room of one. A file with several names can only be read: written through
/// one of them, it would change under all.
/// </summary>
internal static partial class HardLink
{
    /// <summary>Links, or copies where the file system has no links (or no more of them).</summary>
    public static void OrCopy(string from, string to)
    {
        var isLinked = OperatingSystem.IsWindows() ? CreateHardLink(to, from, IntPtr.Zero) : Link(from, to) == 0;
        if (isLinked)
        {
            File.SetAttributes(to, File.GetAttributes(to) | FileAttributes.ReadOnly);
        }
        else
        {
            File.Copy(from, to, overwrite: true);
            File.SetAttributes(to, File.GetAttributes(to) & ~FileAttributes.ReadOnly);
        }
    }

    [LibraryImport("libc", EntryPoint = "link", StringMarshalling = StringMarshalling.Utf8)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int Link(string from, string to);

    [LibraryImport("kernel32", EntryPoint = "CreateHardLinkW", StringMarshalling = StringMarshalling.Utf16)]
    [DefaultDllImportSearchPaths(DllImportSearchPath.System32)]
    [return: MarshalAs(UnmanagedType.Bool)]
    private static partial bool CreateHardLink(string to, string from, IntPtr security);
}
