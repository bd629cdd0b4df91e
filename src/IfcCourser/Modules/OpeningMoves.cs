using System.Collections.Immutable;
using IfcCourser.Geometry;
using IfcCourser.Rules;
using IfcCourser.Units;

namespace IfcCourser.Modules;

/// <summary>
/// Puts openings on module lines, all of them together: the most jambs on lines, then the least total movement of jambs.
/// Widths are kept (move) or grow (resize); piers do not fall under the least, unless they were under it as designed and do
/// not shrink further. Exact: from left to right, of all choices that leave the openings yet to come the same room only the
/// best is carried on.
/// </summary>
internal sealed class OpeningMoves
{
    private readonly LayoutRules _rules;
    private readonly ModuleGrid _grid;
    private readonly ImmutableArray<ImmutableArray<MovableOpening>> _stacks;
    private readonly ImmutableArray<ImmutableArray<(JambShift Shift, MoveScore Score)>> _places;

    /// <summary>Of each stack, those before it that it might crowd.</summary>
    private readonly ImmutableArray<ImmutableArray<int>> _rivals;

    private OpeningMoves(ImmutableArray<ImmutableArray<MovableOpening>> stacks, ModuleGrid grid, LayoutRules rules)
    {
        _rules = rules;
        _grid = grid;
        _stacks = stacks;
        _places = [.. stacks.Select(Places)];
        _rivals = [.. Enumerable.Range(0, stacks.Length).Select(stack => Enumerable.Range(0, stack).Where(other => MayCrowd(other, stack)).ToImmutableArray())];
    }

    /// <summary>Where the openings go on given lines.</summary>
    /// <param name="openings">The openings, their heights settled.</param>
    /// <param name="grid">The module lines, counted along the same run.</param>
    /// <param name="rules">Policy, largest shift, tolerance, least pier.</param>
    /// <returns>The shift of each opening, in their order, and the score of all.</returns>
    public static (ImmutableArray<JambShift> Shifts, MoveScore Score) Solve(
        ImmutableArray<MovableOpening> openings, ModuleGrid grid, LayoutRules rules)
    {
        var stacks = openings.GroupBy(opening => opening.Stack)
            .OrderBy(stack => stack.Min(opening => opening.Design.Left)).ThenBy(stack => stack.Key)
            .ToImmutableArray();
        var (places, score) = new OpeningMoves([.. stacks.Select(stack => stack.ToImmutableArray())], grid, rules).Best();
        var shifts = stacks.Select((stack, i) => (stack.Key, Shift: places[i])).ToDictionary(pair => pair.Key, pair => pair.Shift);
        return ([.. openings.Select(opening => shifts[opening.Stack])], score);
    }

    /// <summary>
    /// Whether a pier may be left: it is at least the least pier, or no smaller than designed; where none was designed, none
    /// under the least arises.
    /// </summary>
    public static bool PierHolds(Length pier, Length designed, Length least) =>
        pier >= least || pier == designed || (pier > designed && designed > Length.Zero);

    private (ImmutableArray<JambShift> Shifts, MoveScore Score) Best()
    {
        var states = new List<State> { new([], default) };
        for (var stack = 0; stack < _stacks.Length; stack++)
        {
            var awaited = Enumerable.Range(0, stack + 1).Where(i => _rivals.Skip(stack + 1).Any(rivals => rivals.Contains(i))).ToImmutableArray();
            var next = new Dictionary<string, int>(StringComparer.Ordinal);
            var kept = new List<State>();
            foreach (var state in states)
            {
                foreach (var (shift, score) in _places[stack])
                {
                    if (_rivals[stack].All(rival => Fit(_stacks[rival], state.Shifts[rival], _stacks[stack], shift)))
                    {
                        var reached = new State(state.Shifts.Add(shift), state.Score + score);
                        Keep(reached, string.Join(' ', awaited.Select(i => reached.Shifts[i])), next, kept);
                    }
                }
            }

            states = kept;
        }

        var best = states.MinBy(state => state.Score)!;
        return (best.Shifts, best.Score);
    }

    private static void Keep(State reached, string key, Dictionary<string, int> index, List<State> kept)
    {
        if (!index.TryGetValue(key, out var i))
        {
            index.Add(key, kept.Count);
            kept.Add(reached);
        }
        else if (reached.Score.CompareTo(kept[i].Score) < 0)
        {
            kept[i] = reached;
        }
    }

    /// <summary>A stack's places, the cheapest first; as designed is always among them, and always fits.</summary>
    private ImmutableArray<(JambShift Shift, MoveScore Score)> Places(ImmutableArray<MovableOpening> stack)
    {
        if (stack[0].IsFixed)
        {
            return [default];
        }

        var lefts = stack.SelectMany(opening => Shifts(_grid.LeftJambToLine(opening.Design.Left))).Append(Length.Zero).Distinct().ToList();
        var rights = stack.SelectMany(opening => Shifts(_grid.RightJambToLine(opening.Design.Right))).Append(Length.Zero).Distinct().ToList();
        var shifts = _rules.Openings switch
        {
            OpeningPolicy.Keep => [default],
            OpeningPolicy.Move => lefts.Concat(rights).Distinct().Select(shift => new JambShift(shift, shift)),
            _ => from left in lefts
                 where left <= Length.Zero
                 from right in rights
                 where right >= Length.Zero
                 select new JambShift(left, right),
        };
        return
        [
            .. shifts.Where(shift => stack.All(opening => FitsRun(opening, shift)) && Fit(stack, shift, stack, shift))
                .Select(shift => (Shift: shift, Score: stack.Select(opening => ScoreOf(opening.Design, shift)).Aggregate((a, b) => a + b)))
                .OrderBy(place => place.Score).ThenBy(place => place.Shift.Left).ThenBy(place => place.Shift.Right),
        ];
    }

    /// <summary>Shifts that put a jamb on a line, within the largest shift.</summary>
    private IEnumerable<Length> Shifts(Length toNearest)
    {
        var pitch = _rules.Module;
        for (var shift = toNearest - (((toNearest + _rules.MaxShift) / pitch) * pitch); shift <= _rules.MaxShift; shift += pitch)
        {
            if (shift >= -_rules.MaxShift)
            {
                yield return shift;
            }
        }
    }

    private MoveScore ScoreOf(ElevationRect design, JambShift shift)
    {
        var rect = shift.Of(design);
        var left = Length.Abs(_grid.LeftJambToLine(rect.Left));
        var right = Length.Abs(_grid.RightJambToLine(rect.Right));
        return new MoveScore(
            (left > _rules.ModuleTolerance ? 1 : 0) + (right > _rules.ModuleTolerance ? 1 : 0),
            (left > Length.Zero ? 1 : 0) + (right > Length.Zero ? 1 : 0),
            Length.Abs(shift.Left) + Length.Abs(shift.Right));
    }

    private bool FitsRun(MovableOpening opening, JambShift shift)
    {
        var rect = shift.Of(opening.Design);
        return PierHolds(rect.Left - opening.Run.From, opening.Design.Left - opening.Run.From)
            && PierHolds(opening.Run.To - rect.Right, opening.Run.To - opening.Design.Right);
    }

    private bool MayCrowd(int a, int b) =>
        _places[a].Any(place => _places[b].Any(other => !Fit(_stacks[a], place.Shift, _stacks[b], other.Shift)));

    private bool Fit(ImmutableArray<MovableOpening> stack, JambShift shift, ImmutableArray<MovableOpening> others, JambShift shiftOfOthers) =>
        stack.All(one => others.All(other =>
            one == other || one.Wall != other.Wall || !one.Design.StandsBeside(other.Design)
            || PierHolds(Gap(shift.Of(one.Design), shiftOfOthers.Of(other.Design)), Gap(one.Design, other.Design))));

    private static Length Gap(ElevationRect a, ElevationRect b) => Length.Max(b.Left - a.Right, a.Left - b.Right);

    private bool PierHolds(Length pier, Length designed) => PierHolds(pier, designed, _rules.Catalog.LeastPier);

    private sealed record State(ImmutableArray<JambShift> Shifts, MoveScore Score);
}
