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

    private static byte[] Read(MemoryMappedViewAccessor view, int length)
    {
        var bytes = new byte[length];
        Assert.Equal(length, view.ReadArray(0, bytes, 0, length));
        return bytes;
    }
}
