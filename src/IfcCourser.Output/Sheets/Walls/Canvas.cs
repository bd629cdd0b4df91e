namespace IfcCourser.Output.Sheets.Walls;

/// <summary>A view being drawn: its items, and the places that texts and lines have taken already.</summary>
internal sealed class Canvas(double perPaper)
{
    /// <summary>Between a text and a line, paper millimetres.</summary>
    private const double LineClear = 0.6;

    private readonly List<SheetItem> _items = [];
    private readonly List<Box> _texts = [];
    private readonly List<LineItem> _lines = [];
    private readonly List<(Point From, Point To)> _leaders = [];
    private readonly List<Box> _written = [];
    private readonly List<Box> _blocks = [];

    /// <summary>Real millimetres in one millimetre of paper.</summary>
    public double PerPaper { get; } = perPaper;

    public IReadOnlyList<SheetItem> Items => _items;

    /// <summary>The items as they are drawn: broken where texts stand on them.</summary>
    public ImmutableArray<SheetItem> Drawn() => LineBreaks.Around(_items, PerPaper);

    /// <summary>Places that texts have taken, real millimetres.</summary>
    public IReadOnlyList<Box> Texts => _texts;

    /// <summary>Where texts stand that were written, real millimetres.</summary>
    public IReadOnlyList<Box> Written => _written;

    /// <summary>Around all items and texts, real millimetres.</summary>
    public Box Extent { get; private set; } = new(double.MaxValue, double.MaxValue, double.MinValue, double.MinValue);

    public void Add(SheetItem item)
    {
        _items.Add(item);
        if (item is BlockItem)
        {
            _blocks.Add(ItemBox.Of(item, PerPaper));
        }

        Extent = Extent.With(ItemBox.Of(item, PerPaper));
    }

    public void AddRange(IEnumerable<SheetItem> items)
    {
        foreach (var item in items)
        {
            Add(item);
        }
    }

    /// <summary>Keeps all texts off a place, real millimetres.</summary>
    public void Take(Box box) => _texts.Add(box);

    /// <summary>Keeps texts off a line that they may cross where there is no other way.</summary>
    public void TakeLine(LineItem line) => _lines.Add(line);

    /// <summary>Adds a line from a text to what it speaks of, and keeps texts off it.</summary>
    public void AddLeader(LineItem line)
    {
        Add(line);
        _leaders.Add((line.From, line.To));
    }

    /// <summary>Adds a text and takes its place.</summary>
    public void Write(TextItem text)
    {
        Add(text);
        _written.Add(ItemBox.Of(text, PerPaper));
        Take(_written[^1]);
    }

    /// <summary>Adds a dimension and takes its text's place.</summary>
    public void Write(DimensionItem dimension)
    {
        Add(dimension);
        Take(BoxOf(dimension));
    }

    /// <summary>Free of texts and of lines.</summary>
    public bool IsFree(Box box)
    {
        var room = box.Grown(LineClear * PerPaper);
        return IsFreeOfText(box) && !_lines.Exists(line => room.On(line.From, line.To) is not null);
    }

    /// <summary>Free of texts and of their leaders.</summary>
    public bool IsFreeOfText(Box box) => !_texts.Exists(text => box.Overlaps(text)) && !_leaders.Exists(leader => box.On(leader.From, leader.To) is not null);

    /// <summary>Whether no text that was written stands on a line.</summary>
    public bool IsFreeOfText(Point from, Point to) => !_written.Exists(text => text.On(from, to) is not null);

    /// <summary>Whether no edge of a block runs through a place.</summary>
    public bool IsFreeOfJoints(Box box) => !_blocks.Exists(block => block.Overlaps(box) && !block.Contains(box));

    /// <summary>Whether texts, those of dimensions included, lie over each other.</summary>
    public bool IsCrowded()
    {
        const double Touch = 0.05;
        var boxes = _items.Select(item => item switch
        {
            TextItem text => ItemBox.Of(text, PerPaper),
            DimensionItem dimension => BoxOf(dimension),
            _ => (Box?)null,
        }).OfType<Box>().Select(box => box.Grown(-Touch * PerPaper)).OrderBy(box => box.Left).ToArray();
        return boxes.Where((box, i) => boxes.Skip(i + 1).TakeWhile(other => other.Left < box.Right).Any(box.Overlaps)).Any();
    }

    private Box BoxOf(DimensionItem dimension) => ItemBox.Of(
        new TextItem(Pen.Dimension, dimension.TextAt, dimension.Text, DimensionItem.TextHeight, TextAnchor.Middle, dimension.TextDegrees), PerPaper);
}
