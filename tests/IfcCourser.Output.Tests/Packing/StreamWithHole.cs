namespace IfcCourser.Output.Tests.Packing;

/// <summary>A stream that starts behind bytes that nobody wrote, which read as zeros, and holds only what follows, as a file with a hole does.</summary>
internal sealed class StreamWithHole : Stream
{
    private readonly long _hole;
    private readonly MemoryStream _rest = new();
    private long _at;

    /// <param name="hole">Bytes left out.</param>
    public StreamWithHole(long hole) => (_hole, _at) = (hole, hole);

    public override bool CanRead => true;

    public override bool CanSeek => true;

    public override bool CanWrite => true;

    public override long Length => _hole + _rest.Length;

    public override long Position
    {
        get => _at;
        set => _at = value;
    }

    public override void Flush()
    {
    }

    public override int Read(byte[] buffer, int offset, int count)
    {
        var read = (int)Math.Clamp(_hole - _at, 0, count);
        Array.Clear(buffer, offset, read);
        if (read == 0)
        {
            _rest.Position = _at - _hole;
            read = _rest.Read(buffer, offset, count);
        }

        _at += read;
        return read;
    }

    public override void Write(byte[] buffer, int offset, int count)
    {
        _rest.Position = _at - _hole;
        _rest.Write(buffer, offset, count);
        _at += count;
    }

    public override void SetLength(long value) => _rest.SetLength(value - _hole);

    public override long Seek(long offset, SeekOrigin origin) => Position = origin switch
    {
        SeekOrigin.Begin => offset,
        SeekOrigin.Current => Position + offset,
        _ => Length + offset,
    };

    protected override void Dispose(bool disposing)
    {
        _rest.Dispose();
        base.Dispose(disposing);
    }
}
