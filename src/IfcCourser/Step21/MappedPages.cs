using System.Runtime.InteropServices;

namespace IfcCourser.Step21;

/// <summary>
/// What of a mapped file was looked at. The system counts that as this process's memory until somebody needs the room; so that a model of
/// gigabytes does not weigh as much, all is given back whenever much of it was seen. It stays in the system's cache, where it is found again.
/// Safe for several threads: giving back what another one reads costs that one some time, and nothing else.
/// </summary>
internal sealed partial class MappedPages
{
    private const int WindowBits = 20;
    private const int MostWindows = 192;
    private const int BitsOfWord = 32;

    private readonly nint _start;
    private readonly long _length;
    private readonly uint[] _seen;
    private int _count;

    /// <param name="start">Where the file's first byte is mapped.</param>
    /// <param name="length">Bytes mapped.</param>
    public MappedPages(nint start, long length)
    {
        _start = start;
        _length = length;
        _seen = new uint[((length >> WindowBits) / BitsOfWord) + 1];
    }

    /// <summary>Tells that a stretch is looked at.</summary>
    public void See(long offset, long length)
    {
        for (var window = offset >> WindowBits; window <= (offset + length) >> WindowBits; window++)
        {
            ref var word = ref _seen[window / BitsOfWord];
            var bit = 1u << (int)(window % BitsOfWord);
            if ((word & bit) == 0 && (Interlocked.Or(ref word, bit) & bit) == 0 && Interlocked.Increment(ref _count) >= MostWindows)
            {
                GiveBack();
            }
        }
    }

    /// <summary>Gives back all pages. Windows does so by itself.</summary>
    public void GiveBack()
    {
        // MADV_DONTNEED, on Linux and macOS alike.
        const int DontNeed = 4;
        Array.Clear(_seen);
        Interlocked.Exchange(ref _count, 0);
        if (!OperatingSystem.IsWindows())
        {
            _ = Advise(_start, (nuint)_length, DontNeed);
        }
    }

    [LibraryImport("libc", EntryPoint = "madvise")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static partial int Advise(nint start, nuint length, int advice);
}
