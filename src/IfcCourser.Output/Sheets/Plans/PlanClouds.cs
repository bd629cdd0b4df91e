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
internal sealed class PlanClouds(Reissue? since, IEnumerable<(WallLayout Wall, Course Course)> walls)
{
    private readonly ImmutableArray<(WallLayout Wall, WallRevision Revision, ImmutableArray<Interval> Runs)> _changed =
    [
        .. from shown in walls
           let revision = since?.For(shown.Wall)
           where revision is not null
           let runs = Runs(shown.Wall, shown.Course, revision)
           where !runs.IsEmpty
           select (shown.Wall, revision, runs),
    ];

    public bool Any => !_changed.IsEmpty;

    /// <summary>The letter of the issue and the changed walls; none where nothing changed.</summary>
    /// <param name="number">Of a wall's sheet.</param>
    public IEnumerable<string> Notes(Func<WallLayout, string> number) =>
        Any ? [PlanText.Revised(_changed[0].Revision.Mark, _changed.Select(one => number(one.Wall)))] : [];

    public (bool, PanelRow) LegendRow() => (Any, MarkSamples.Row(SheetText.LegendRevised, [.. RevisionClouds.Around(MarkSamples.Face.Grown(-0.5), 1)]));

    /// <summary>After all else of the plan; stretches too near to each other for two clouds have one.</summary>
    public void Draw(Canvas canvas, Func<Vector2, Point> at)
    {
        const double Apart = 10;
        var near = Length.FromMm(Apart * canvas.PerPaper);
        foreach (var (wall, revision, runs) in _changed)
        {
            RevisionClouds.Draw(canvas, Joined(runs, near).Select(run => Box.Around(PlanShape.Loop(wall, run, at))), revision.Mark);
        }
    }

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
