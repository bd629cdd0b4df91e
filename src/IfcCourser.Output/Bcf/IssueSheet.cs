using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Output.Sheets;
using IfcCourser.Units;

namespace IfcCourser.Output.Bcf;

/// <summary>The picture of an issue: the wall's elevation with its blocks, the opening, and its shift in red.</summary>
internal sealed class IssueSheet
{
    private const double TextHeight = 3;
    private const double Margin = 6;
    private const double Head = 18;
    private const double Foot = 12;

    /// <summary>1200 by 750 pixels; BCF 3.0, topic folder: no side longer than 1500.</summary>
    private static readonly PaperSize _paper = new("picture", 200, 125);

    private static readonly ImmutableArray<int> _scales = [10, 15, 20, 25, 30, 40, 50, 60, 75, 100];

    private readonly Issue _issue;
    private readonly WallLayout _wall;
    private readonly UnitSystem _units;
    private readonly DrawingScale _scale;
    private readonly Box _window;

    private IssueSheet(Issue issue, WallLayout wall, UnitSystem units)
    {
        (_issue, _wall, _units) = (issue, wall, units);
        var outline = Box.Around(wall.Outline.Select(p => new Point(p.S.Mm, p.Z.Mm)));
        var room = new Box(Margin, Foot, _paper.Width - Margin, _paper.Height - Head);
        var denominator = _scales.FirstOrDefault(scale => outline.Width / scale <= room.Width && outline.Height / scale <= room.Height, _scales[^1]);
        _scale = new DrawingScale(denominator, string.Empty);
        var shown = room.Scaled(denominator);
        var focus = issue.Opening is { } opening ? BoxOf(opening.Placed).Middle : new Point(issue.Findings[0].At?.S?.Mm ?? outline.Middle.X, outline.Middle.Y);

        // A wall too long for the picture is shown around the place.
        var middle = new Point(
            outline.Width <= shown.Width ? outline.Middle.X : Math.Clamp(focus.X, outline.Left + (shown.Width / 2), outline.Right - (shown.Width / 2)),
            outline.Height <= shown.Height ? outline.Middle.Y : Math.Clamp(focus.Y, outline.Bottom + (shown.Height / 2), outline.Top - (shown.Height / 2)));
        _window = Box.At(middle, shown.Width, shown.Height);
    }

    private double PerPaper => _scale.Denominator;

    /// <param name="issue">One of a wall that is laid out.</param>
    /// <param name="wall">Its wall.</param>
    /// <param name="units">What lengths are printed in.</param>
    public static Sheet Compose(Issue issue, WallLayout wall, UnitSystem units) => new IssueSheet(issue, wall, units).Compose();

    private Sheet Compose() => new(
        _issue.Guid, _paper, _units, PenTable.Iso13567, Untitled(),
        [new View(string.Empty, _scale, _window, new Point(Margin, Foot), [.. Masonry(), .. Place()])],
        [.. Words()]);

    private IEnumerable<SheetItem> Masonry()
    {
        var pieces = _wall.Courses.SelectMany(course => course.Pieces).Where(piece => piece.To.Mm > _window.Left && piece.From.Mm < _window.Right).ToList();
        var faces = pieces.Select(piece => (IsCut: piece.Cut != Cuts.None, Corners: PieceShape.CornersOf(piece).Select(p => p + new Point(piece.From.Mm, piece.Bottom.Mm)).ToImmutableArray())).ToList();
        foreach (var (_, corners) in faces.Where(face => face.IsCut))
        {
            yield return new HatchItem(Pen.CutHatch, [corners], HatchKind.Solid);
        }

        foreach (var (_, corners) in faces)
        {
            yield return new PolylineItem(Pen.WholeBlock, corners, PathEnd.Closed);
        }

        foreach (var lintel in _wall.Lintels)
        {
            yield return PolylineItem.Rectangle(Pen.Lintel, new Box(lintel.From.Mm, lintel.Bottom.Mm, lintel.To.Mm, lintel.Top.Mm));
        }

        foreach (var opening in _wall.Openings)
        {
            yield return PolylineItem.Rectangle(opening.Interrupts ? Pen.OuterEdge : Pen.BuiltIn, BoxOf(opening.Placed));
        }

        yield return new PolylineItem(Pen.OuterEdge, [.. _wall.Outline.Select(p => new Point(p.S.Mm, p.Z.Mm))], PathEnd.Closed);
        foreach (var tick in Ticks())
        {
            yield return tick;
        }
    }

    /// <summary>Module lines, at the foot only.</summary>
    private IEnumerable<SheetItem> Ticks()
    {
        var (start, pitch, foot) = (_wall.ModuleLines.Start.Mm, _wall.ModuleLines.Pitch.Mm, _wall.Outline.Min(p => p.Z.Mm));
        var (from, to) = (Math.Max(_window.Left, 0), Math.Min(_window.Right, _wall.Frame.Length.Mm));
        for (var k = (long)Math.Ceiling((from - start) / pitch); start + (k * pitch) <= to; k++)
        {
            yield return new LineItem(Pen.ModuleTick, new Point(start + (k * pitch), foot - (0.8 * PerPaper)), new Point(start + (k * pitch), foot - (2.2 * PerPaper)));
        }
    }

    /// <summary>What it is about, in red: where the opening was drawn or would stand, with its shift; else the place.</summary>
    private SheetItem[] Place()
    {
        if (_issue.Opening is not { } opening)
        {
            var at = _issue.Findings[0].At;
            return at?.S is { } s ? [ArcItem.Circle(Pen.DesignedJamb, new Point(s.Mm, at.Z?.Mm ?? _window.Middle.Y), 4 * PerPaper)] : [];
        }

        var placed = BoxOf(opening.Placed);
        SheetItem[] name = TextMetrics.Width(opening.Opening.Label, TextHeight) + 2 <= placed.Width / PerPaper
            ? [new TextItem(Pen.Heading, placed.Middle + new Point(0, 4 * PerPaper), opening.Opening.Label, TextHeight, TextAnchor.Middle)]
            : [];
        if (Shift(opening) is not var (left, right) || (left == Length.Zero && right == Length.Zero && opening.Placed == opening.Design))
        {
            return name;
        }

        var dashed = IsMoved(opening) ? BoxOf(opening.Design) : BoxOf(opening.Design with { Left = opening.Design.Left + left, Right = opening.Design.Right + right });
        return [PolylineItem.Rectangle(Pen.DesignedJamb, dashed), .. name, .. Arrow(opening, left, right)];
    }

    /// <summary>An arrow of a fixed size that points where the opening goes, the shift under it where the opening has room for the words.</summary>
    private IEnumerable<SheetItem> Arrow(OpeningLayout opening, Length left, Length right)
    {
        var middle = BoxOf(opening.Placed).Middle;
        var text = LinesWithin(opening, ShiftWords(opening, left, right)).Select((line, i) =>
            new TextItem(Pen.DesignedJamb, middle - new Point(0, (5 + (1.6 * TextHeight * i)) * PerPaper), line, TextHeight, TextAnchor.Middle));
        if (left + right == Length.Zero)
        {
            return text;
        }

        var sign = left + right > Length.Zero ? 1 : -1;
        var (tail, tip) = (middle - new Point(sign * 5 * PerPaper, 0), middle + new Point(sign * 5 * PerPaper, 0));
        var (back, side) = (sign * 2.5 * PerPaper, 1.2 * PerPaper);
        return
        [
            .. text,
            new HatchItem(Pen.DesignedJamb, [Box.Around([tail + new Point(0, side / 4), tip - new Point(back, side / 4)]).Corners()], HatchKind.Solid),
            new HatchItem(Pen.DesignedJamb, [[tip, tip + new Point(-back, side), tip + new Point(-back, -side)]], HatchKind.Solid),
        ];
    }

    private string ShiftWords(OpeningLayout opening, Length left, Length right) =>
        IssueText.Shift(left, right, opening.Placed.Bottom - opening.Design.Bottom, opening.Placed.Top - opening.Design.Top, _units);

    /// <summary>The words in one line within the opening, or each in one; none where that has no room for them.</summary>
    private string[] LinesWithin(OpeningLayout opening, string words)
    {
        var room = BoxOf(opening.Placed);
        bool Fit(string[] lines) => lines.All(line => (TextMetrics.Width(line, TextHeight) + 2) * PerPaper <= room.Width)
            && (5 + (1.6 * TextHeight * lines.Length)) * PerPaper <= room.Height / 2;
        string[][] ways = [[words], words.Split(", ")];
        return ways.FirstOrDefault(Fit, []);
    }

    private IEnumerable<SheetItem> Words()
    {
        var width = _paper.Width - (2 * Margin);
        yield return new TextItem(
            Pen.Heading, new Point(Margin, _paper.Height - 8), TextMetrics.Fit(IssueText.Title(_wall.Identity, _issue.Opening, _issue.Findings[0]), TextHeight, width), TextHeight);
        yield return new TextItem(
            Pen.Text, new Point(Margin, _paper.Height - 14), TextMetrics.Fit(string.Join(", ", new[] { _wall.Identity.Storey, _wall.Identity.Label }.OfType<string>()), TextHeight, width), TextHeight);
        var legend = _issue.Opening is { } opening
            ? opening.Placed != opening.Design ? IssueText.AsDrawn : Shift(opening) is { } ? IssueText.OnModule : null
            : _issue.Findings[0].At?.S is null ? null : IssueText.AtPlace;
        yield return new TextItem(Pen.Text, new Point(Margin, 4), string.Join("; ", new[] { legend, IssueText.CutPieces }.OfType<string>()), TextHeight);

        // Words that the opening has no room for stand at the foot, clear of all lines.
        if (_issue.Opening is { } moved && Shift(moved) is var (left, right) && ShiftWords(moved, left, right) is var words && LinesWithin(moved, words).Length == 0)
        {
            yield return new TextItem(Pen.DesignedJamb, new Point(_paper.Width - Margin, 4), words, TextHeight, TextAnchor.Right);
        }
    }

    private static bool IsMoved(OpeningLayout opening) => opening.Placed != opening.Design;

    private static (Length Left, Length Right)? Shift(OpeningLayout opening) => IsMoved(opening)
        ? (opening.Placed.Left - opening.Design.Left, opening.Placed.Right - opening.Design.Right)
        : opening.Check is { } check && (check.MoveLeft != Length.Zero || check.MoveRight != Length.Zero) ? (check.MoveLeft, check.MoveRight) : null;

    private static Box BoxOf(ElevationRect rect) => new(rect.Left.Mm, rect.Bottom.Mm, rect.Right.Mm, rect.Top.Mm);

    private static TitleBlock Untitled() => new()
    {
        LegalOwner = string.Empty,
        IdentificationNumber = string.Empty,
        DateOfIssue = string.Empty,
        SheetNumber = string.Empty,
        Title = string.Empty,
        ApprovalPerson = string.Empty,
        Creator = string.Empty,
        DocumentType = string.Empty,
        Revision = string.Empty,
        SupplementaryTitle = string.Empty,
        DocumentStatus = string.Empty,
        Project = string.Empty,
        Client = string.Empty,
        Scale = string.Empty,
        PaperSize = string.Empty,
    };
}
