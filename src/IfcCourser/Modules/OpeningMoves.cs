using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Layouts;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Modules;

/// <summary>
/// Puts a wall's openings on module lines, all of them together: the most jambs on lines, then the least total movement
/// of jambs, exactly, by branch and bound over each opening's places within the largest shift. Widths are kept (move) or
/// grow (resize); piers do not fall under the least, unless they were under it as designed and do not shrink further.
/// </summary>
internal sealed class OpeningMoves
{
    private readonly LayoutRules _rules;
    private readonly ModuleGrid _grid;
    private readonly Interval _run;
    private readonly ImmutableArray<ElevationRect> _designs;
    private readonly ImmutableArray<ImmutableArray<Place>> _places;
    private readonly Score[] _bestFrom;
    private readonly ElevationRect[] _chosen;
    private ImmutableArray<ElevationRect> _best = [];
    private Score _bestScore = new(int.MaxValue, 0, Length.Zero);

    private OpeningMoves(ImmutableArray<ElevationRect> designs, Interval run, ModuleLines lines, LayoutRules rules)
    {
        _rules = rules;
        _grid = new ModuleGrid(lines, rules.Catalog.HeadJoint.Nominal);
        _run = run;
        _designs = designs;
        _places = [.. designs.Select(Places)];
        _chosen = new ElevationRect[designs.Length];
        _bestFrom = new Score[designs.Length + 1];
        for (var i = designs.Length - 1; i >= 0; i--)
        {
            _bestFrom[i] = _bestFrom[i + 1].Plus(_places[i][0].Score);
        }
    }

    /// <summary>Where the openings go on given lines, and how many jambs stay off them and how far the others move.</summary>
    /// <param name="designs">Masonry openings wanted, their heights settled, from left to right.</param>
    /// <param name="run">The wall's run.</param>
    /// <param name="lines">The wall's module lines.</param>
    /// <param name="rules">Policy, largest shift, tolerance, least pier.</param>
    public static (ImmutableArray<ElevationRect> Placed, Score Score) Solve(
        ImmutableArray<ElevationRect> designs, Interval run, ModuleLines lines, LayoutRules rules)
    {
        var moves = new OpeningMoves(designs, run, lines, rules);
        moves.Branch(0, default);
        return (moves._best, moves._bestScore);
    }

    private void Branch(int opening, Score score)
    {
        if (score.Plus(_bestFrom[opening]).CompareTo(_bestScore) >= 0)
        {
            return;
        }

        if (opening == _designs.Length)
        {
            (_best, _bestScore) = ([.. _chosen], score);
            return;
        }

        foreach (var place in _places[opening])
        {
            _chosen[opening] = place.Rect;
            if (Fits(opening))
            {
                Branch(opening + 1, score.Plus(place.Score));
            }
        }
    }

    /// <summary>An opening's places, the cheapest first; as designed is always among them, and always fits.</summary>
    private ImmutableArray<Place> Places(ElevationRect design)
    {
        var lefts = Shifts(design.Left, _grid.LeftJambToLine(design.Left));
        var rights = Shifts(design.Right, _grid.RightJambToLine(design.Right));
        var rects = _rules.Openings switch
        {
            OpeningPolicy.Keep => [design],
            OpeningPolicy.Move => lefts.Concat(rights).Append(Length.Zero).Select(shift => design.ShiftedBy(shift, Length.Zero)),
            _ => lefts.Append(Length.Zero).Where(shift => shift <= Length.Zero).SelectMany(
                left => rights.Append(Length.Zero).Where(right => right >= Length.Zero),
                (left, right) => design with { Left = design.Left + left, Right = design.Right + right }),
        };
        return
        [
            .. rects.Distinct()
                .Select(rect => new Place(rect, ScoreOf(rect, design)))
                .OrderBy(place => place.Score)
                .ThenBy(place => place.Rect.Left)
                .ThenBy(place => place.Rect.Right),
        ];
    }

    /// <summary>Shifts that put a jamb on a line, within the largest shift.</summary>
    private IEnumerable<Length> Shifts(Length jamb, Length toNearest)
    {
        var pitch = _rules.Module;
        for (var shift = toNearest - (((toNearest + _rules.MaxShift) / pitch) * pitch); shift <= _rules.MaxShift; shift += pitch)
        {
            if (shift >= -_rules.MaxShift && jamb + shift >= _run.From && jamb + shift <= _run.To)
            {
                yield return shift;
            }
        }
    }

    private Score ScoreOf(ElevationRect rect, ElevationRect design)
    {
        var toLines = new[] { Length.Abs(_grid.LeftJambToLine(rect.Left)), Length.Abs(_grid.RightJambToLine(rect.Right)) };
        return new Score(
            toLines.Count(toLine => toLine > _rules.ModuleTolerance),
            toLines.Count(toLine => toLine > Length.Zero),
            Length.Abs(rect.Left - design.Left) + Length.Abs(rect.Right - design.Right));
    }

    private bool Fits(int opening)
    {
        var (rect, design) = (_chosen[opening], _designs[opening]);
        return PierHolds(rect.Left - _run.From, design.Left - _run.From)
            && PierHolds(_run.To - rect.Right, _run.To - design.Right)
            && Enumerable.Range(0, opening)
                .Where(other => _designs[other].StandsBeside(design))
                .All(other => PierHolds(Gap(_chosen[other], rect), Gap(_designs[other], design)));
    }

    private static Length Gap(ElevationRect a, ElevationRect b) => Length.Max(b.Left - a.Right, a.Left - b.Right);

    /// <summary>A pier is at least the least pier, or no smaller than designed.</summary>
    private bool PierHolds(Length pier, Length designed) => pier >= _rules.Catalog.LeastPier || pier >= designed;

    private readonly record struct Place(ElevationRect Rect, Score Score);

    /// <summary>
    /// Jambs off their lines by more than the tolerance, jambs not exactly on a line (the tolerance is the mason's, not to
    /// be spent here), then the sum of the jambs' movements.
    /// </summary>
    internal readonly record struct Score(int OffLines, int NotExact, Length Movement) : IComparable<Score>
    {
        public Score Plus(Score other) => new(OffLines + other.OffLines, NotExact + other.NotExact, Movement + other.Movement);

        public int CompareTo(Score other) =>
            (OffLines, NotExact, Movement).CompareTo((other.OffLines, other.NotExact, other.Movement));
    }
}
