using IfcCourser.Comparing;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Output.Sheets.Panels;
using IfcCourser.Output.Sheets.Walls;
using IfcCourser.Units;

namespace IfcCourser.Output.Sheets.Plans;

/// <summary>
/// What changed since the last issue, as a plan of one course shows it: the stretches of walls where something at the height of the course is not what it was, the whole of a
/// wall that stands elsewhere or is of another thickness.
/// </summary>
/// <param name="since">Null where nobody asked.</param>
/// <param name="walls">Those of the plan, and the course of each that it shows.</param>
/// <param name="gone">Walls of the last issue that are laid out no more.</param>
/// <param name="at">Model axes, mm, to the axes of the plan.</param>
/// <param name="part">What the sheet shows; null for the whole plan.</param>
internal sealed class PlanClouds(
    Reissue? since, IEnumerable<(WallLayout Wall, Course Course)> walls, ImmutableArray<WallLayout> gone, Func<Vector2, Point> at, PlanPart? part)
{
    private readonly ImmutableArray<(WallLayout Wall, ImmutableArray<Interval> Runs)> _changed =
    [
        .. from shown in walls
           let revision = since?.For(shown.Wall)
           where revision is not null
           let runs = Runs(shown.Wall, shown.Course, revision).Where(run => part?.Meets(BoxOf(shown.Wall, run, at)) != false).ToImmutableArray()
           where !runs.IsEmpty
           select (shown.Wall, runs),
    ];

    public bool Any => !_changed.IsEmpty || !gone.IsEmpty;

    private string Mark => since?.Mark ?? string.Empty;

    /// <summary>The letter of the issue and the changed walls; none where nothing changed.</summary>
    /// <param name="number">Of a wall's sheet.</param>
    public IEnumerable<string> Notes(Func<WallLayout, string> number)
    {
        if (!_changed.IsEmpty)
        {
            yield return PlanText.Revised(Mark, _changed.Select(one => number(one.Wall)));
        }

        if (!gone.IsEmpty)
        {
            yield return PlanText.GoneSince(Mark, gone.Select(wall => wall.Identity));
        }
    }

    public (bool, PanelRow) LegendRow() => (Any, MarkSamples.Row(SheetText.LegendRevised, [.. RevisionClouds.Around(MarkSamples.Face.Grown(-0.5), 1)]));

    /// <summary>After all else of the plan; stretches too near to each other for two clouds have one.</summary>
    public void Draw(Canvas canvas)
    {
        const double Apart = 10;
        var near = Length.FromMm(Apart * canvas.PerPaper);
        foreach (var (wall, runs) in _changed)
        {
            RevisionClouds.Draw(canvas, Joined(runs, near).Select(run => Shown(BoxOf(wall, run, at))), Mark);
        }

        RevisionClouds.Draw(canvas, gone.Select(wall => Shown(Box.Around(GoneWalls.Loop(wall, at)))), Mark);
    }

    private static Box BoxOf(WallLayout wall, Interval run, Func<Vector2, Point> at) => Box.Around(PlanShape.Loop(wall, run, at));

    private Box Shown(Box box) => part is null ? box : new Box(
        Math.Max(box.Left, part.Window.Left), Math.Max(box.Bottom, part.Window.Bottom), Math.Min(box.Right, part.Window.Right), Math.Min(box.Top, part.Window.Top));

    private static ImmutableArray<Interval> Runs(WallLayout wall, Course course, WallRevision revision) =>
        revision.Changes.Any(change => change.What is "moved" or "thickness")
            ? [new Interval(Length.Zero, wall.Frame.Length)]
            : Joined(revision.Areas.Where(area => area.Bottom < course.Top && area.Top > course.Bottom).Select(area => new Interval(area.Left, area.Right)), Length.Zero);

    /// <summary>Areas one over the other are one stretch, and those no further apart than this.</summary>
    private static ImmutableArray<Interval> Joined(IEnumerable<Interval> runs, Length near)
    {
        var joined = new List<Interval>();
        foreach (var run in runs.OrderBy(run => run.From))
        {
            if (joined.Count > 0 && joined[^1].To + near >= run.From)
            {
                joined[^1] = new Interval(joined[^1].From, Length.Max(joined[^1].To, run.To));
            }
            else
            {
                joined.Add(run);
            }
        }

        return [.. joined];
    }
}
