using System.Security.Cryptography;
using System.Text;

namespace IfcCourser.Step21;

/// <summary>Output that counts and hashes what passes.</summary>
internal sealed class StepCopy
{
    private readonly StepFile _file;
    private readonly Stream _output;
    private readonly IncrementalHash _hash;

    /// <param name="hash">Of SHA-256; disposed of by the caller.</param>
    public StepCopy(StepFile file, Stream output, IncrementalHash hash)
    {
        _file = file;
        _output = output;
        _hash = hash;
    }

    /// <summary>Bytes written so far.</summary>
    public long Length { get; private set; }

    /// <summary>Bytes of the original file.</summary>
    public void Original(long from, long to)
    {
        const int Chunk = 1 << 20;
        for (var at = from; at < to; at += Chunk)
        {
            Put(_file.Bytes(at, (int)Math.Min(Chunk, to - at)));
        }
    }

    public void Text(ReadOnlySpan<char> ascii)
    {
        var bytes = new byte[ascii.Length];
        Put(bytes.AsSpan(0, Encoding.ASCII.GetBytes(ascii, bytes)));
    }

    /// <summary>SHA-256 of what was written so far, lower-case hex.</summary>
    public string Hash() => Convert.ToHexStringLower(_hash.GetCurrentHash());

    private void Put(ReadOnlySpan<byte> bytes)
    {
        _output.Write(bytes);
        _hash.AppendData(bytes);
        Length += bytes.Length;
    }
}
