using System.Collections.Immutable;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Units;
using IfcCourser.Walls;

namespace ReferenceOptimum.Problems;

/// <summary>
/// Reads what had to be bonded off a finished layout: spans and their edges, where pieces of less height stand under sills and
/// over heads, cores and lintels; and, apart from it, how the layout bonded it.
/// </summary>
internal static class ProblemReader
{
    /// <param name="wall">The wall.</param>
    /// <param name="layout">The layout, for cores that other walls list.</param>
    /// <param name="model">The walls as read, for corners.</param>
    public static (BondProblem Problem, Bond Bond) Read(WallLayout wall, Layout layout, WallModel model)
    {
        var rules = layout.Rules;
        var runs = wall.Courses.Select(course => Runs(course, rules)).ToImmutableArray();
        var courses = wall.Courses.Select((course, i) => new CourseProblem(
            [.. runs[i].Select(run => RunOf(wall, course, run, rules))],
            Edges(course, rules),
            FixedJoints(course, runs[i], rules))).ToImmutableArray();
        var bars = BarReader.Read(wall, layout, model);
        var catalog = rules.Catalog;
        var sizes = new BondSizes(
            catalog.UnitLength.Nanometres,
            [.. catalog.PartLengths.Select(part => part.Nanometres)],
            rules.MinPiece.Nanometres,
            catalog.HeadJoint.Min.Nanometres,
            catalog.HeadJoint.Max.Nanometres,
            rules.MinOverlap.Nanometres,
            rules.CoreClearance.Nanometres,
            rules.Set.Bars?.LargestSpacing.Nanometres ?? 0,
            catalog.CutGrid.Nanometres);
        var bond = new Bond([.. runs.Select(course => course
            .Select(run => run.Select(piece => new Stretch(piece.From.Nanometres, piece.To.Nanometres)).ToImmutableArray())
            .ToImmutableArray())], [.. bars.Select(bar => bar.At2)]);
        return (new BondProblem(sizes, courses, [.. bars.Select(bar => bar.Bar)], [.. Bearings(wall, rules)]), bond);
    }

    /// <summary>The pieces of a course, divided where heights change: each run is to be filled on its own.</summary>
    private static ImmutableArray<ImmutableArray<Piece>> Runs(Course course, LayoutRules rules)
    {
        var runs = ImmutableArray.CreateBuilder<ImmutableArray<Piece>>();
        foreach (var span in course.Spans)
        {
            var pieces = course.Pieces.Where(piece => piece.From >= span.Run.From && piece.To <= span.Run.To);
            foreach (var layer in pieces.GroupBy(piece => piece.Outline is null ? (piece.Bottom, piece.Top) : (course.Bottom, course.Top)))
            {
                var run = ImmutableArray.CreateBuilder<Piece>();
                foreach (var piece in layer.OrderBy(piece => piece.From))
                {
                    if (run.Count > 0 && piece.From - run[^1].To > rules.Catalog.HeadJoint.Max)
                    {
                        runs.Add(run.ToImmutable());
                        run.Clear();
                    }

                    run.Add(piece);
                }

                runs.Add(run.ToImmutable());
            }
        }

        return [.. runs.OrderBy(run => run[0].From).ThenBy(run => run[0].Bottom)];
    }

    private static Run RunOf(WallLayout wall, Course course, ImmutableArray<Piece> run, LayoutRules rules) => run.Any(piece => piece.Outline is not null)
        ? Slopes.Of(wall, run, course.Bottom.Nanometres, course.Top.Nanometres, rules)
        : new Run(run[0].From.Nanometres, run[^1].To.Nanometres, default, default);

    private static ImmutableArray<long> Edges(Course course, LayoutRules rules)
    {
        var joint = rules.Catalog.HeadJoint.Nominal.Nanometres;
        return
        [
            .. course.Spans.Where(span => IsJoint(span.StartEdge)).Select(span => (2 * span.Run.From.Nanometres) - joint),
            .. course.Spans.Where(span => IsJoint(span.EndEdge)).Select(span => (2 * span.Run.To.Nanometres) + joint),
        ];
    }

    private static bool IsJoint(EdgeKind edge) => edge is EdgeKind.Wall or EdgeKind.Lintel;

    /// <summary>Joints between runs of one span.</summary>
    private static ImmutableArray<long> FixedJoints(Course course, ImmutableArray<ImmutableArray<Piece>> runs, LayoutRules rules)
    {
        var joints = new SortedSet<long>();
        foreach (var left in runs)
        {
            foreach (var right in runs.Where(right => right[0].From >= left[^1].To && right[0].From - left[^1].To <= rules.Catalog.HeadJoint.Max))
            {
                if (course.Spans.Any(span => span.Run.Contains(left[^1].To) && span.Run.Contains(right[0].From)))
                {
                    joints.Add(left[^1].To.Nanometres + right[0].From.Nanometres);
                }
            }
        }

        return [.. joints];
    }

    /// <summary>A full unit, or bearing and least piece, lies under each bearing of a lintel, also where that is seated in a course, its pieces notched.</summary>
    private static IEnumerable<BearingProblem> Bearings(WallLayout wall, LayoutRules rules)
    {
        foreach (var lintel in wall.Lintels)
        {
            var course = Enumerable.Range(0, wall.Courses.Length)
                .Where(i => lintel.Bottom > wall.Courses[i].Bottom && lintel.Bottom - wall.Courses[i].Top <= rules.Catalog.BedJoint.Max)
                .DefaultIfEmpty(-1).First();
            if (course >= 0)
            {
                var left = (lintel.From + lintel.BearingLeft).Nanometres;
                var right = (lintel.To - lintel.BearingRight).Nanometres;
                yield return new BearingProblem(course, 2 * (left - Reach(lintel.BearingLeft)), 2 * left);
                yield return new BearingProblem(course, 2 * right, 2 * (right + Reach(lintel.BearingRight)));
            }
        }

        long Reach(Length bearing) => Length.Min(bearing + rules.MinPiece, rules.Catalog.UnitLength).Nanometres;
    }
}
