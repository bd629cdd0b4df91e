namespace IfcCourser.Output.Sheets.Walls;

/// <summary>A view being drawn: its items, and the places that texts and lines have taken already.</summary>
internal sealed class Canvas(double perPaper)
{
    private readonly List<SheetItem> _items = [];
    private readonly List<Box> _taken = [];

    /// <summary>Real millimetres in one millimetre of paper.</summary>
    public double PerPaper { get; } = perPaper;

    public IReadOnlyList<SheetItem> Items => _items;

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

    /// <summary>Keeps texts off a place, real millimetres.</summary>
    public void Take(Box box) => _taken.Add(box);

    /// <summary>Adds a text and takes its place.</summary>
    public void Write(TextItem text)
    {
        Add(text);
        Take(ItemBox.Of(text, PerPaper));
    }

    public bool IsFree(Box box) => !_taken.Any(box.Overlaps);
}
