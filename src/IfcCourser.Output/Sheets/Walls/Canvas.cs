namespace IfcCourser.Output.Sheets.Walls;

/// <summary>A view being drawn: its items, and the places that texts and lines have taken already.</summary>
internal sealed class Canvas(double perPaper)
{
    private readonly List<SheetItem> _items = [];
    private readonly List<Box> _texts = [];
    private readonly List<Box> _lines = [];

    /// <summary>Real millimetres in one millimetre of paper.</summary>
    public double PerPaper { get; } = perPaper;

    public IReadOnlyList<SheetItem> Items => _items;

    /// <summary>Places that texts have taken, real millimetres.</summary>
    public IReadOnlyList<Box> Texts => _texts;

    /// <summary>Around all items and texts, real millimetres.</summary>
    public Box Extent { get; private set; } = new(double.MaxValue, double.MaxValue, double.MinValue, double.MinValue);

    public void Add(SheetItem item)
    {
        _items.Add(item);
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
    public void TakeLine(LineItem line) => _lines.Add(ItemBox.Of(line, PerPaper).Grown(0.6 * PerPaper));

    /// <summary>Adds a text and takes its place.</summary>
    public void Write(TextItem text)
    {
        Add(text);
        Take(ItemBox.Of(text, PerPaper));
    }

    /// <summary>Free of texts and of lines.</summary>
    public bool IsFree(Box box) => IsFreeOfText(box) && !_lines.Any(box.Overlaps);

    public bool IsFreeOfText(Box box) => !_texts.Any(box.Overlaps);
}
