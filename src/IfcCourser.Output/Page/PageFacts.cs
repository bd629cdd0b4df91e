using IfcCourser.Layouts;
using IfcCourser.Output.Sheets;
using IfcCourser.Output.Tables;
using IfcCourser.Units;

namespace IfcCourser.Output.Page;

/// <summary>A layout with what its page calls things: numbers of walls, findings and storeys, and the unit of its lengths.</summary>
internal sealed class PageFacts
{
    public PageFacts(Layout layout, PageKind kind)
    {
        Layout = layout;
        Kind = kind;
        Text = new SheetLengths(Units);
        var numbers = layout.Walls.Select(wall => wall.Identity.StepId).Concat(layout.Skipped.Select(wall => wall.Identity.StepId))
            .Order().Select((stepId, i) => (stepId, Number: i + 1)).ToDictionary(pair => pair.stepId, pair => pair.Number);
        Walls = [.. layout.Walls.Select(wall => new PageWall(layout, wall, numbers[wall.Identity.StepId])).OrderBy(wall => wall.Number)];
        Skipped = [.. layout.Skipped.Select(wall => new PageSkipped(wall, numbers[wall.Identity.StepId])).OrderBy(wall => wall.Number)];
        Findings = [.. WallFinding.Of(layout).Select((listed, i) => new PageFinding(i + 1, listed, listed.Wall is { } wall ? numbers[wall.StepId] : null))];
        FindingsOf = Findings.ToLookup(finding => finding.WallNumber ?? 0);
        Storeys =
        [
            .. Walls.GroupBy(wall => wall.Storey, StringComparer.Ordinal)
                .OrderBy(storey => storey.Min(wall => wall.Wall.Frame.Origin.Z))
                .Select((storey, i) => new PageStorey(i + 1, storey.Key, [.. storey])),
        ];
        StoreyNames = [.. Storeys.Select(storey => storey.Name).Concat(Skipped.Select(wall => wall.Storey)).Distinct(StringComparer.Ordinal)];
    }

    public Layout Layout { get; }

    public PageKind Kind { get; }

    public SheetLengths Text { get; }

    public UnitSystem Units => Layout.Rules.Catalog.Units;

    /// <summary>Those laid out, by number.</summary>
    public ImmutableArray<PageWall> Walls { get; }

    public ImmutableArray<PageSkipped> Skipped { get; }

    public ImmutableArray<PageFinding> Findings { get; }

    /// <summary>By number of the wall; zero for those of the model as a whole.</summary>
    public ILookup<int, PageFinding> FindingsOf { get; }

    /// <summary>The lowest first.</summary>
    public ImmutableArray<PageStorey> Storeys { get; }

    /// <summary>Whether plans need the page's whole width to be read.</summary>
    public bool HasManyWalls => Storeys.Any(storey => storey.Walls.Length > 60);

    /// <summary>Those of all walls, laid out or not.</summary>
    public ImmutableArray<string> StoreyNames { get; }

    /// <summary>What rows and filters call a storey: its place in <see cref="StoreyNames"/>, from 1.</summary>
    public int StoreyNumber(string name) => StoreyNames.IndexOf(name) + 1;
}
