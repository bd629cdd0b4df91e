using System.Text.Encodings.Web;
using System.Text.Json;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Output.Json;
using IfcCourser.Output.Sheets;
using IfcCourser.Units;

namespace IfcCourser.Output.Page;

/// <summary>
/// What the script draws elevations from, as small as it can be: lengths in whole ticks (0.1 mm, or 1/64 in), pieces as pairs of a kind and a
/// start. elevation.js names the members.
/// </summary>
internal sealed class ElevationData
{
    /// <summary>Letters beyond ASCII, and all that HTML gives a meaning, are escaped: nothing can end the script element.</summary>
    private static readonly JsonWriterOptions _options = new() { Encoder = JavaScriptEncoder.Default };

    private readonly PageFacts _facts;
    private readonly Utf8JsonWriter _json;
    private readonly long _tick;

    private ElevationData(PageFacts facts, Utf8JsonWriter json)
    {
        (_facts, _json) = (facts, json);
        _tick = facts.Units == UnitSystem.Inch ? Length.NanometresPerInch / 64 : Length.NanometresPerMm / 10;
    }

    /// <summary>JSON that may stand in a script element.</summary>
    public static string Of(PageFacts facts)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, _options))
        {
            new ElevationData(facts, json).Write();
        }

        return System.Text.Encoding.UTF8.GetString(stream.GetBuffer(), 0, (int)stream.Length);
    }

    private void Write()
    {
        _json.WriteStartObject();
        _json.WriteBoolean("inch", _facts.Units == UnitSystem.Inch);
        _json.WriteNumber("joint", Ticks(_facts.Layout.Rules.Catalog.HeadJoint.Nominal));
        List("walls", _facts.Storeys.SelectMany(storey => storey.Walls.Select(wall => (storey, wall))), pair => Wall(pair.storey, pair.wall));
        _json.WriteEndObject();
    }

    private void Wall(PageStorey storey, PageWall page)
    {
        var (wall, facts) = (page.Wall, page.Facts);
        _json.WriteStartObject();
        _json.WriteNumber("n", page.Number);
        _json.WriteNumber("p", storey.Number);
        _json.WriteString("name", Clean(page.Name));
        _json.WriteString("storey", Clean(page.Storey));
        Numbers("size", wall.Frame.Length, wall.Frame.Thickness);
        Numbers("box", Length.FromMm(facts.Left), Length.FromMm(facts.Right), Length.FromMm(facts.Bottom), Length.FromMm(facts.Top));
        Points("outline", wall.Outline);
        Numbers("module", wall.ModuleLines.Start, wall.ModuleLines.Pitch);
        Courses(page);
        List("lintels", wall.Lintels, lintel => Row(
            [lintel.Id, lintel.Product, JsonNames.Of(lintel.Kind)], [lintel.From, lintel.To, lintel.Bottom, lintel.Top, lintel.BearingLeft, lintel.BearingRight]));
        List("openings", page.Openings, Opening);
        List("bars", wall.Cores, core => Row(
            [core.Id, core.Bar, string.Join(", ", core.Why.Select(SheetText.BarReason))], [core.At, core.Bottom, core.Top, core.PlayMinus, core.PlayPlus]));
        List("beams", wall.BondBeams, Beam);
        List("joints", wall.MovementJoints, joint => Row([joint.Why], [joint.Rect.Left, joint.Rect.Right, joint.Bottom, joint.Top]));
        List("embeds", wall.Embeds, embed => Row([embed.Kind, embed.Note], [embed.At, embed.Z]));
        List("findings", _facts.FindingsOf[page.Number], finding => Finding(wall, finding));
        _json.WriteEndObject();
    }

    /// <summary>Kinds: mark, cut, width, height, outline from its lower left where it is no rectangle. Courses: number, kind, bottom, top, then pieces.</summary>
    private void Courses(PageWall page)
    {
        var kinds = new Dictionary<string, int>(StringComparer.Ordinal);
        var first = new List<Piece>();
        foreach (var piece in page.Wall.Courses.SelectMany(course => course.Pieces))
        {
            if (kinds.TryAdd(KeyOf(piece), kinds.Count))
            {
                first.Add(piece);
            }
        }

        List("kinds", first, piece =>
        {
            _json.WriteStartArray();
            _json.WriteStringValue(page.Facts.Schedule.MarkOf(piece));
            _json.WriteStringValue(piece.IsTrough ? "trough" : piece.Cut != Cuts.None ? JsonNames.Of(piece.Cut) : piece.IsFull ? "full" : "part");
            Value(piece.Length);
            Value(piece.Height);
            if (piece.Outline is { } outline)
            {
                Flat(outline.Select(point => new ElevationPoint(point.S - piece.From, point.Z - piece.Bottom)));
            }

            _json.WriteEndArray();
        });
        List("courses", page.Wall.Courses, course =>
        {
            _json.WriteStartArray();
            _json.WriteNumberValue(course.Number);
            _json.WriteStringValue(JsonNames.Of(course.Kind));
            Value(course.Bottom);
            Value(course.Top);
            Pieces(course, kinds);
            _json.WriteEndArray();
        });
    }

    /// <summary>Kind and start; where it does not lie on the course's bottom a list of kind, start and bottom.</summary>
    private void Pieces(Course course, Dictionary<string, int> kinds)
    {
        foreach (var piece in course.Pieces)
        {
            var isRaised = piece.Bottom != course.Bottom;
            if (isRaised)
            {
                _json.WriteStartArray();
            }

            _json.WriteNumberValue(kinds[KeyOf(piece)]);
            Value(piece.From);
            if (isRaised)
            {
                Value(piece.Bottom);
                _json.WriteEndArray();
            }
        }
    }

    private static string KeyOf(Piece piece) => PieceShape.KeyOf(piece) + (piece.IsTrough, piece.IsFull);

    private void Opening(PageOpening page)
    {
        var opening = page.Opening;
        _json.WriteStartArray();
        _json.WriteStringValue(page.Tag);
        _json.WriteStringValue(Clean(opening.Opening.Label));
        _json.WriteStringValue(SheetText.OpeningKindName(opening.Opening.Kind));
        _json.WriteNumberValue(opening.Interrupts ? 1 : 0);
        Rect(opening.Design);
        Rect(opening.Placed);
        if (opening.Outline is { } outline)
        {
            Flat(outline);
        }

        _json.WriteEndArray();
    }

    private void Beam(BondBeam beam)
    {
        _json.WriteStartArray();
        _json.WriteStringValue(beam.Id);
        _json.WriteStringValue(beam.Bars);
        _json.WriteStringValue(JsonNames.Of(beam.Kind));
        Rect(new ElevationRect(beam.From, beam.To, beam.Bottom, beam.Top));
        if (beam.Outline is { } outline)
        {
            Flat(outline);
        }

        _json.WriteEndArray();
    }

    /// <summary>Number in the list, severity, and where it is marked; the number alone where it has no place.</summary>
    private void Finding(WallLayout wall, PageFinding finding)
    {
        _json.WriteStartArray();
        _json.WriteNumberValue(finding.Number);
        _json.WriteStringValue(PageText.Severity(finding.Finding.Severity));
        if (FindingMark.Of(wall, finding.Finding) is { } mark)
        {
            Value(mark.S);
            Value(mark.Z);
        }

        _json.WriteEndArray();
    }

    private void Row(ReadOnlySpan<string> texts, ReadOnlySpan<Length> lengths)
    {
        _json.WriteStartArray();
        foreach (var text in texts)
        {
            _json.WriteStringValue(Clean(text));
        }

        foreach (var length in lengths)
        {
            Value(length);
        }

        _json.WriteEndArray();
    }

    private void List<T>(string name, IEnumerable<T> items, Action<T> write)
    {
        _json.WriteStartArray(name);
        foreach (var item in items)
        {
            write(item);
        }

        _json.WriteEndArray();
    }

    private void Numbers(string name, params ReadOnlySpan<Length> lengths)
    {
        _json.WritePropertyName(name);
        Row([], lengths);
    }

    private void Points(string name, IEnumerable<ElevationPoint> points)
    {
        _json.WritePropertyName(name);
        Flat(points);
    }

    private void Flat(IEnumerable<ElevationPoint> points) => Row([], [.. points.SelectMany(point => new[] { point.S, point.Z })]);

    private void Rect(ElevationRect rect) => Row([], [rect.Left, rect.Right, rect.Bottom, rect.Top]);

    private void Value(Length length) => _json.WriteNumberValue(Ticks(length));

    /// <summary>To the nearest tick, halves away from zero.</summary>
    private long Ticks(Length length) => (long)Math.Round(length.Nanometres / (decimal)_tick, MidpointRounding.AwayFromZero);

    /// <summary>Halves of surrogate pairs can't be written.</summary>
    private static string Clean(string text) => string.Concat(text.EnumerateRunes());
}
