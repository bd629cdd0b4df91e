using System.IO.MemoryMappedFiles;
using IfcCourser.Step21;

namespace IfcCourser.Tests.Step21;

public sealed class MappedPagesTests
{
    [Fact]
    public void WhatIsGivenBackIsReadAgainTheSame()
    {
        byte[] content = [.. Enumerable.Range(0, 3 << 20).Select(i => (byte)(i % 251))];
        var path = Path.GetTempFileName();
        try
        {
            File.WriteAllBytes(path, content);
            using var file = MemoryMappedFile.CreateFromFile(path, FileMode.Open, null, 0, MemoryMappedFileAccess.Read);
            using var view = file.CreateViewAccessor(0, 0, MemoryMappedFileAccess.Read);
            var pages = new MappedPages(view.SafeMemoryMappedViewHandle.DangerousGetHandle(), content.Length);
            pages.See(0, content.Length);
            Assert.Equal(content, Read(view, content.Length));
            pages.GiveBack();
            pages.See(content.Length - 1, 0);
            Assert.Equal(content, Read(view, content.Length));
        }
        finally
        {
            File.Delete(path);
        }
    }

    /// <summary>
    /// One page is looked at in each of 400 megabytes. The system counts fewer than half of what it counts where nobody tells of it: 192 windows
    /// are seen, given back, and seen again, so that those of 16 are left.
    /// </summary>
    [Fact]
    public void NoMoreThanSomeWindowsStayCounted()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "what is counted is read from /proc");
        const int Windows = 400;
        var path = Path.GetTempFileName();
        try
        {
            using (var made = File.OpenWrite(path))
            {
                made.SetLength((long)Windows << 20);
            }

            Assert.InRange(Counted(path, told: true), 1, Counted(path, told: false) / 10);
        }
        finally
        {
            File.Delete(path);
        }
    }

    /// <summary>Kilobytes of a file's mapping that count as this process's memory after a look at each megabyte.</summary>
    private static long Counted(string path, bool told)
    {
        using var file = MemoryMappedFile.CreateFromFile(path, FileMode.Open, null, 0, MemoryMappedFileAccess.Read);
        using var view = file.CreateViewAccessor(0, 0, MemoryMappedFileAccess.Read);
        var pages = new MappedPages(view.SafeMemoryMappedViewHandle.DangerousGetHandle(), view.Capacity);
        for (long offset = 0; offset < view.Capacity; offset += 1 << 20)
        {
            if (told)
            {
                pages.See(offset, 1);
            }

            Assert.Equal(0, view.ReadByte(offset));
        }

        var mapping = File.ReadLines("/proc/self/smaps").SkipWhile(line => !line.EndsWith(path, StringComparison.Ordinal));
        return long.Parse(mapping.First(line => line.StartsWith("Rss:", StringComparison.Ordinal)).Split(' ', StringSplitOptions.RemoveEmptyEntries)[1], null);
    }

    private static byte[] Read(MemoryMappedViewAccessor view, int length)
    {
        var bytes = new byte[length];
        Assert.Equal(length, view.ReadArray(0, bytes, 0, length));
        return bytes;
    }
}
