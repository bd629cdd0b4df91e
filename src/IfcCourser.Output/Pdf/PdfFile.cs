using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using IfcCourser.Output.Packing;

namespace IfcCourser.Output.Pdf;

/// <summary>
/// The objects of a file, their table and its trailer (ISO 32000-1, 7.5). Objects are numbered as they are asked for and may be
/// written in any order. The identifier is a hash of what was written, so that the same content gives the same bytes.
/// </summary>
internal sealed class PdfFile
{
    private const int IdBytes = 16;

    private readonly Stream _stream;
    private readonly IncrementalHash _hash;
    private readonly List<long> _places = [];
    private long _position;

    /// <param name="stream">Left open.</param>
    /// <param name="hash">Fresh; of SHA-256 or another with at least 16 bytes.</param>
    public PdfFile(Stream stream, IncrementalHash hash)
    {
        (_stream, _hash) = (stream, hash);

        // The second line tells programs that copy files that this one is not text (7.5.2).
        Write("%PDF-1.7\n%"u8);
        Write([0xE2, 0xE3, 0xCF, 0xD3, (byte)'\n']);
    }

    /// <summary>The number of an object that is yet to be written.</summary>
    public int Reserve()
    {
        _places.Add(-1);
        return _places.Count;
    }

    public int Add(string content)
    {
        var number = Reserve();
        Write(number, content);
        return number;
    }

    public void Write(int number, string content)
    {
        Begin(number);
        Write($"{content}\nendobj\n");
    }

    /// <param name="content">Uncompressed.</param>
    /// <param name="entries">Further entries of its dictionary.</param>
    public int AddStream(byte[] content, string entries = "")
    {
        var number = Reserve();
        var packed = Deflate.Pack(content);
        Begin(number);
        Write(string.Create(CultureInfo.InvariantCulture, $"<< /Length {packed.Length} /Filter /FlateDecode{entries} >>\nstream\n"));
        Write(packed);
        Write("\nendstream\nendobj\n");
        return number;
    }

    /// <summary>Writes the table and the trailer.</summary>
    public void End(int catalog, int info)
    {
        var start = _position;
        var table = new StringBuilder();
        table.Append(CultureInfo.InvariantCulture, $"xref\n0 {_places.Count + 1}\n0000000000 65535 f \n");
        foreach (var place in _places)
        {
            table.Append(CultureInfo.InvariantCulture, $"{place:0000000000} 00000 n \n");
        }

        Write(table.ToString());
        var id = Convert.ToHexString(_hash.GetHashAndReset().AsSpan(0, IdBytes));
        Write(string.Create(
            CultureInfo.InvariantCulture,
            $"trailer\n<< /Size {_places.Count + 1} /Root {catalog} 0 R /Info {info} 0 R /ID [<{id}> <{id}>] >>\nstartxref\n{start}\n%%EOF\n"));
    }

    private void Begin(int number)
    {
        _places[number - 1] = _position;
        Write(string.Create(CultureInfo.InvariantCulture, $"{number} 0 obj\n"));
    }

    private void Write(string ascii) => Write(Encoding.ASCII.GetBytes(ascii));

    private void Write(ReadOnlySpan<byte> bytes)
    {
        _stream.Write(bytes);
        _hash.AppendData(bytes);
        _position += bytes.Length;
    }
}
