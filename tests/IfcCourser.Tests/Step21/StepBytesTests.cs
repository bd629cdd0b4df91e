using IfcCourser.Step21;

namespace IfcCourser.Tests.Step21;

public sealed class StepBytesTests
{
    /// <summary>A file is read 16 MB at a time.</summary>
    [Fact]
    public void AFileOfSeveralChunksIsReadWhole()
    {
        byte[] content = [.. Enumerable.Range(0, (2 << 24) + 5).Select(i => (byte)(i % 251))];
        var path = Path.GetTempFileName();
        try
        {
            File.WriteAllBytes(path, content);
            using var bytes = StepBytes.Open(path).Value!;
            Assert.Equal(content.Length, bytes.Length);
            Assert.True(bytes.From(0).SequenceEqual(content));
            Assert.True(bytes.Slice(5, content.Length - 5).SequenceEqual(content.AsSpan(5)));
        }
        finally
        {
            File.Delete(path);
        }
    }

    [Theory]
    [InlineData(-1, 1)]
    [InlineData(3, 2)]
    [InlineData(5, 0)]
    public void WhatLiesOutsideIsNotRead(long offset, int length)
    {
        using var bytes = StepBytes.Of(new byte[4]);
        Assert.Throws<ArgumentOutOfRangeException>(() => bytes.Slice(offset, length).Length);
    }

    [Fact]
    public void TheEndIsEmpty()
    {
        using var bytes = StepBytes.Of(new byte[4]);
        Assert.True(bytes.From(4).IsEmpty);
        Assert.True(bytes.Slice(4, 0).IsEmpty);
    }
}
