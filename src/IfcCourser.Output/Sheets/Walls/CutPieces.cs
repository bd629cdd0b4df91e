using IfcCourser.Layouts;

namespace IfcCourser.Output.Sheets.Walls;

/// <summary>
/// Pieces that are sawn: hatched, their length the largest text of the view, standing upright where the piece is narrow.
/// A piece too small for its text takes it on a leader into a whole block beside it, or over a slope that it lies under; failing that the
/// text crosses an axis or a dashed line; failing that too, the mark stands alone, or beside it where other texts leave no room.
/// </summary>
internal static class CutPieces
{
    private const double Large = 3.5;
    private const double Small = 2.5;
    private static readonly ImmutableArray<double> _shares = [0.5, 0.35, 0.65, 0.25, 0.75];
    private static readonly ImmutableArray<double> _heights = [Large, Small];
    private static readonly ImmutableArray<double> _turns = [90, 0];

    public static void Draw(Canvas canvas, WallFacts facts)
    {
        var sawn = facts.Wall.Courses.SelectMany(course => course.Pieces).Where(piece => !PieceBlock.IsWhole(piece))
            .Select(piece => (Piece: piece, HasLabel: IsLabelled(canvas, facts, piece))).Where(one => one.Piece.Cut != Cuts.None).ToArray();
        foreach (var (piece, _) in sawn.Where(one => !one.HasLabel))
        {
            Outside(canvas, facts, piece);
        }

        foreach (var (piece, _) in sawn)
        {
            canvas.Add(new HatchItem(Pen.CutHatch, [CornersOf(piece)], HatchKind.Cut));
        }
    }

    /// <summary>Writes the label where the piece has room for it.</summary>
    private static bool IsLabelled(Canvas canvas, WallFacts facts, Piece piece)
    {
        var corners = CornersOf(piece);
        var text = SheetText.CutLabel(piece, facts.Schedule.MarkOf(piece), facts.Text);
        if (Candidates(piece, text).FirstOrDefault(candidate => Fits(canvas.IsFree, canvas, corners, candidate)) is not { } chosen)
        {
            return false;
        }

        canvas.Write(chosen);
        return true;
    }

    private static IEnumerable<TextItem> Candidates(Piece piece, string text) =>
        from height in _heights
        from degrees in _turns
        from share in _shares
        let at = new Point(piece.From.Mm + (share * piece.Length.Mm), MiddleOf(piece, share))
        select new TextItem(Pen.CutLength, at, text, height, TextAnchor.Middle, degrees);

    /// <summary>Half way up: under a slope half way to it.</summary>
    private static double MiddleOf(Piece piece, double share)
    {
        var (low, high) = Polygon.Column(CornersOf(piece), piece.From.Mm + (share * piece.Length.Mm));
        return (low + high) / 2;
    }

    private static bool Fits(Func<Box, bool> isFree, Canvas canvas, ImmutableArray<Point> corners, TextItem text)
    {
        var box = ItemBox.Of(text, canvas.PerPaper).Grown(0.3 * canvas.PerPaper);
        return Polygon.Contains(corners, box) && isFree(box);
    }

    /// <summary>In a whole block of the same course, as near as there is room; else the mark alone inside the piece.</summary>
    private static void Outside(Canvas canvas, WallFacts facts, Piece piece)
    {
        var mm = canvas.PerPaper;
        var text = SheetText.CutLabel(piece, facts.Schedule.MarkOf(piece), facts.Text);
        var middle = new Point((piece.From.Mm + piece.To.Mm) / 2, (piece.Bottom.Mm + piece.Top.Mm) / 2);
        var hosts = facts.Wall.Courses.SelectMany(course => course.Pieces)
            .Where(host => PieceBlock.IsWhole(host) && host.Bottom == piece.Bottom)
            .OrderBy(host => Math.Abs(((host.From.Mm + host.To.Mm) / 2) - middle.X))
            .Take(2);
        foreach (var host in hosts)
        {
            var label = Nearest(host, text, middle, mm).Concat(Candidates(host, text).Where(item => item.Degrees == 0 || item.Height < Large)
                    .OrderBy(item => Math.Abs(item.At.X - middle.X)))
                .FirstOrDefault(item => Fits(canvas.IsFree, canvas, CornersOf(host), item) && canvas.IsFree(LeaderTo(item, middle, mm)));
            if (label is not null)
            {
                WithLeader(canvas, label, middle);
                return;
            }
        }

        if (OverSlope(canvas, facts, text, middle) is { } over)
        {
            WithLeader(canvas, over, middle);
            return;
        }

        var mark = facts.Schedule.MarkOf(piece);
        if (Candidates(piece, text).Concat(Candidates(piece, mark)).FirstOrDefault(item => Fits(canvas.IsFreeOfText, canvas, CornersOf(piece), item)) is { } inside)
        {
            canvas.Write(inside);
            return;
        }

        Beside(canvas, facts, new TextItem(Pen.CutLength, middle, mark, Small, TextAnchor.Middle));
    }

    /// <summary>A mark in a block or in the air near by, on a leader; else at its place, or as near as other texts leave room for it and for its leader, whichever way.</summary>
    private static void Beside(Canvas canvas, WallFacts facts, TextItem mark)
    {
        const int Farthest = 80;
        const int Clear = 24;
        const int Ways = 16;
        var mm = canvas.PerPaper;
        var near = (from step in Enumerable.Range(0, Farthest)
                    from way in step == 0 ? [0] : (int[])[0, 8, 1, 15, 7, 9, 2, 14, 6, 10, 3, 13, 5, 11, 4, 12]
                    let turn = Math.SinCos(way * 2 * Math.PI / Ways)
                    select mark with { At = mark.At + (new Point(turn.Cos, turn.Sin) * (step * mm / 2)) }).ToArray();
        var edges = facts.Whole.Outline.Select(p => new Point(p.S.Mm, p.Z.Mm)).ToArray();
        var placed = near.Take(Clear * Ways).FirstOrDefault(item => IsFree(item) && IsLed(item) && IsApart(ItemBox.Of(item, mm)))
            ?? Array.Find(near, item => IsFree(item) && IsLed(item)) ?? Array.Find(near, IsFree) ?? mark;
        canvas.Write(placed);
        if (!ItemBox.Of(placed, mm).Overlaps(Box.At(mark.At, mm, mm)))
        {
            canvas.AddLeader(new LineItem(Pen.Dimension, mark.At, ItemBox.Of(placed, mm).Nearest(mark.At)));
            canvas.Add(ArcItem.Circle(Pen.Dimension, mark.At, 0.4 * mm));
        }

        bool IsLed(TextItem item) => canvas.IsFreeOfText(mark.At, ItemBox.Of(item, mm).Nearest(mark.At));

        bool IsApart(Box box) => canvas.IsFree(box) && canvas.IsFreeOfJoints(box) && !edges.Where((from, i) => box.On(from, edges[(i + 1) % edges.Length]) is not null).Any();

        bool IsFree(TextItem item) => canvas.IsFreeOfText(ItemBox.Of(item, mm).Grown(0.2 * mm));
    }

    private static void WithLeader(Canvas canvas, TextItem label, Point middle)
    {
        var leader = LeaderTo(label, middle, canvas.PerPaper);
        canvas.Write(label);
        canvas.Take(leader);
        canvas.Add(new LineItem(Pen.Dimension, new Point(leader.Left, middle.Y), new Point(leader.Right, middle.Y)));
        canvas.Add(ArcItem.Circle(Pen.Dimension, middle, 0.4 * canvas.PerPaper));
    }

    /// <summary>Beside the piece where a slope leaves the air free, as near as it can be; null where there is no such place.</summary>
    private static TextItem? OverSlope(Canvas canvas, WallFacts facts, string text, Point middle)
    {
        const int Farthest = 24;
        var mm = canvas.PerPaper;
        var outline = facts.Wall.Outline.Select(p => new Point(p.S.Mm, p.Z.Mm)).ToImmutableArray();
        return Enumerable.Range(3, Farthest).SelectMany(i => new[] { i, -i })
            .Select(aside => new TextItem(Pen.CutLength, middle + new Point(aside * mm, 0), text, Small, TextAnchor.Middle))
            .FirstOrDefault(item => IsInAir(ItemBox.Of(item, mm).Grown(0.5 * mm)) && canvas.IsFreeOfText(LeaderTo(item, middle, mm)));

        bool IsInAir(Box box) => box.Left > facts.Left && box.Right < facts.Right && canvas.IsFreeOfText(box)
            && new[] { box.Left, box.Middle.X, box.Right }.All(x => Polygon.Column(outline, x).High < box.Bottom);
    }

    /// <summary>Close to the host's edge that faces the piece, so that the leader is short and the number not taken for the host's.</summary>
    private static IEnumerable<TextItem> Nearest(Piece host, string text, Point middle, double mm)
    {
        const double Clear = 1.2;
        foreach (var degrees in _turns)
        {
            var item = new TextItem(Pen.CutLength, middle, text, Small, TextAnchor.Middle, degrees);
            var half = (ItemBox.Of(item, mm).Width / 2) + (Clear * mm);
            yield return item with { At = new Point(host.From.Mm < middle.X ? host.To.Mm - half : host.From.Mm + half, middle.Y) };
        }
    }

    /// <summary>A level line from the piece's middle to the near side of its text, as a thin box.</summary>
    private static Box LeaderTo(TextItem label, Point middle, double mm)
    {
        var box = ItemBox.Of(label, mm).Grown(0.3 * mm);
        return label.At.X < middle.X
            ? new Box(box.Right, middle.Y - (0.3 * mm), middle.X, middle.Y + (0.3 * mm))
            : new Box(middle.X, middle.Y - (0.3 * mm), box.Left, middle.Y + (0.3 * mm));
    }

    private static ImmutableArray<Point> CornersOf(Piece piece)
    {
        var at = new Point(piece.From.Mm, piece.Bottom.Mm);
        return [.. PieceShape.CornersOf(piece).Select(corner => corner + at)];
    }
}
