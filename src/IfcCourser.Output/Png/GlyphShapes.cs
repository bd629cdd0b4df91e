using System.Buffers.Binary;
using IfcCourser.Output.Pdf;
using IfcCourser.Output.Sheets;

namespace IfcCourser.Output.Png;

/// <summary>Outlines of the embedded font's letters as polygons (ISO/IEC 14496-22, 5.3.3: glyf table), in units of the font.</summary>
internal static class GlyphShapes
{
    private const int CurvePoints = 6;

    /// <summary>Letters made of letters made of letters... end here.</summary>
    private const int Deepest = 6;

    /// <summary>A line of text from the origin, and its width.</summary>
    public static (List<Point[]> Loops, double Width) Of(string text)
    {
        var font = TrueTypeFont.Sans;
        var loops = new List<Point[]>();
        var at = 0;
        foreach (var rune in text.EnumerateRunes())
        {
            var glyph = font.GlyphOf(rune);
            loops.AddRange(Glyph(glyph, 0).Select(loop => loop.Select(p => p + new Point(at, 0)).ToArray()));
            at += font.Advance(glyph);
        }

        return (loops, at);
    }

    private static List<Point[]> Glyph(int glyph, int depth)
    {
        var record = TrueTypeFont.Sans.Outline(glyph);
        return record.Length < 10 || depth > Deepest ? [] : I16(record, 0) >= 0 ? Simple(record) : Composite(record, depth);
    }

    private static List<Point[]> Simple(ReadOnlySpan<byte> record)
    {
        var contours = I16(record, 0);
        var ends = new int[contours];
        for (var i = 0; i < contours; i++)
        {
            ends[i] = U16(record, 10 + (2 * i));
        }

        var count = contours == 0 ? 0 : ends[^1] + 1;
        var at = 10 + (2 * contours);
        at += 2 + U16(record, at);
        var flags = new byte[count];
        for (var i = 0; i < count;)
        {
            var flag = record[at++];
            var repeats = (flag & 8) != 0 ? record[at++] : 0;
            for (var k = 0; k <= repeats && i < count; k++)
            {
                flags[i++] = flag;
            }
        }

        var xs = Coordinates(record, ref at, flags, isShort: 2, same: 16);
        var ys = Coordinates(record, ref at, flags, isShort: 4, same: 32);
        var loops = new List<Point[]>();
        for (var (contour, first) = (0, 0); contour < contours; first = ends[contour++] + 1)
        {
            var points = Enumerable.Range(first, ends[contour] + 1 - first).Select(i => (At: new Point(xs[i], ys[i]), IsOn: (flags[i] & 1) != 0)).ToArray();
            loops.Add(Flattened(points));
        }

        return loops;
    }

    private static int[] Coordinates(ReadOnlySpan<byte> record, ref int at, byte[] flags, int isShort, int same)
    {
        var values = new int[flags.Length];
        var value = 0;
        for (var i = 0; i < flags.Length; i++)
        {
            if ((flags[i] & isShort) != 0)
            {
                value += (flags[i] & same) != 0 ? record[at] : -record[at];
                at++;
            }
            else if ((flags[i] & same) == 0)
            {
                value += I16(record, at);
                at += 2;
            }

            values[i] = value;
        }

        return values;
    }

    /// <summary>Quadratic curves as chords; between two points off the curve one on it is implied.</summary>
    private static Point[] Flattened((Point At, bool IsOn)[] points)
    {
        var all = points.SelectMany((point, i) =>
        {
            var next = points[(i + 1) % points.Length];
            return point.IsOn || next.IsOn ? new[] { point } : [point, ((point.At + next.At) * 0.5, true)];
        }).ToArray();
        var start = Array.FindIndex(all, point => point.IsOn);
        var flat = new List<Point>();
        for (var i = 0; start >= 0 && i < all.Length; i++)
        {
            var (here, next, after) = (all[(start + i) % all.Length], all[(start + i + 1) % all.Length], all[(start + i + 2) % all.Length]);
            if (here.IsOn)
            {
                flat.Add(here.At);
            }

            for (var k = 1; here.IsOn && !next.IsOn && k < CurvePoints; k++)
            {
                var t = (double)k / CurvePoints;
                flat.Add((here.At * ((1 - t) * (1 - t))) + (next.At * (2 * t * (1 - t))) + (after.At * (t * t)));
            }
        }

        return [.. flat];
    }

    /// <summary>Parts placed by offsets, perhaps scaled; parts placed by matching points do not occur in the font.</summary>
    private static List<Point[]> Composite(ReadOnlySpan<byte> record, int depth)
    {
        const int Words = 1, Offsets = 2, OneScale = 8, More = 32, TwoScales = 64, Matrix = 128;
        var loops = new List<Point[]>();
        for (var (at, flags) = (10, More); (flags & More) != 0;)
        {
            flags = U16(record, at);
            var part = U16(record, at + 2);
            at += 4;
            var offset = (flags & Offsets) == 0 ? default : (flags & Words) != 0
                ? new Point(I16(record, at), I16(record, at + 2))
                : new Point((sbyte)record[at], (sbyte)record[at + 1]);
            at += (flags & Words) != 0 ? 4 : 2;
            var (a, b, c, d) = (1.0, 0.0, 0.0, 1.0);
            if ((flags & OneScale) != 0)
            {
                (a, d) = (F2(record, at), F2(record, at));
                at += 2;
            }
            else if ((flags & TwoScales) != 0)
            {
                (a, d) = (F2(record, at), F2(record, at + 2));
                at += 4;
            }
            else if ((flags & Matrix) != 0)
            {
                (a, b, c, d) = (F2(record, at), F2(record, at + 2), F2(record, at + 4), F2(record, at + 6));
                at += 8;
            }

            loops.AddRange(Glyph(part, depth + 1).Select(loop => loop.Select(p => new Point((a * p.X) + (c * p.Y), (b * p.X) + (d * p.Y)) + offset).ToArray()));
        }

        return loops;
    }

    private static int U16(ReadOnlySpan<byte> bytes, int at) => BinaryPrimitives.ReadUInt16BigEndian(bytes[at..]);

    private static short I16(ReadOnlySpan<byte> bytes, int at) => BinaryPrimitives.ReadInt16BigEndian(bytes[at..]);

    private static double F2(ReadOnlySpan<byte> bytes, int at) => I16(bytes, at) / 16384.0;
}
