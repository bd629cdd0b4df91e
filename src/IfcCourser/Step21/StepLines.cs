namespace IfcCourser.Step21;

/// <summary>Line numbers of places that come in the order of the file, so that the file is gone through once for all of them.</summary>
internal sealed class StepLines(StepBytes bytes)
{
    private long _at;
    private int _line = 1;
    private byte _previous;

    /// <summary>Line number from 1; lines end with LF, CR or CR LF.</summary>
    /// <param name="offset">Not before the last one asked for.</param>
    public int Of(long offset)
    {
        const int Chunk = 1 << 20;
        while (_at < offset)
        {
            var part = bytes.Slice(_at, (int)Math.Min(Chunk, offset - _at));
            foreach (var b in part)
            {
                _line += b == '\r' || (b == '\n' && _previous != '\r') ? 1 : 0;
                _previous = b;
            }

            _at += part.Length;
        }

        return _line;
    }
}
