using System.Collections.Immutable;
using Google.OrTools.Sat;
using ReferenceOptimum.Problems;

namespace ReferenceOptimum.Solving;

/// <summary>
/// A block as a constraint program. Each stretch has slots, filled from its start; a slot holds a full unit, a part or a cut
/// piece whose length lies on the cut grid. Joints are as wide as the limits allow, off the grid too where lengths of the block are.
/// </summary>
internal sealed class BlockModel
{
    private readonly Block _block;
    private readonly CpModel _model = new();
    private readonly ImmutableArray<StretchModel> _stretches;
    private readonly ImmutableArray<IntVar> _bars;
    private readonly List<(BoolVar Broken, int First, int Last)> _breaches = [];
    private readonly List<BoolVar> _bearings = [];
    private readonly bool _mayBreak;
    private readonly Scale _scale;
    private readonly IReadOnlySet<int>? _forced;

    /// <param name="block">What to bond.</param>
    /// <param name="limits">What the bond may have at most.</param>
    /// <param name="breadth">Which bonds are looked at.</param>
    /// <param name="forced">In a narrow search, rules are broken at these stretches only; not named: anywhere.</param>
    public BlockModel(Block block, BondLimits limits, Breadth breadth, IReadOnlySet<int>? forced = null)
    {
        _forced = breadth == Breadth.All ? null : forced;
        (_block, _scale, _mayBreak) = (block, Scale.Of(block), limits.MayBreak);
        _stretches = [.. block.Stretches.Select((stretch, i) => new StretchModel(_model, _scale, block.Sizes, stretch, limits, MayBreak(i), breadth, $"s{i}"))];
        _bars = [.. block.Bars.Select((bar, b) => _model.NewIntVar(_scale.Before(bar.Least2), _scale.Before(bar.Most2), $"b{b}"))];
        _breaches.AddRange(_stretches.SelectMany((stretch, s) => stretch.Short.Select(broken => (broken, CourseOf(s), CourseOf(s)))));
        if (breadth == Breadth.Repeating)
        {
            RepeatCourses();
        }

        KeepLaps();
        KeepFixedLaps();
        KeepBarsClear();
        SpaceBars();
        KeepBearings(limits.MayBear);
        AtMost(Breaches, limits.Breaches);
        AtMost(Bearings, limits.Bearings);
        AtMost(Cuts, limits.Cuts);
    }

    public CpModel Model => _model;

    public LinearExpr Breaches => LinearExpr.Sum(_breaches.Select(breach => breach.Broken));

    public LinearExpr Bearings => LinearExpr.Sum(_bearings);

    public LinearExpr Cuts => LinearExpr.Sum(_stretches.SelectMany(stretch => stretch.Cut));

    /// <summary>Cuts of the courses from first to last.</summary>
    public LinearExpr CutsIn(int first, int last) => LinearExpr.Sum(_stretches
        .Where((_, i) => _block.Stretches[i].Course >= first && _block.Stretches[i].Course <= last)
        .SelectMany(stretch => stretch.Cut));

    /// <summary>Breaches that concern no course but those from first to last.</summary>
    public LinearExpr BreachesIn(int first, int last) =>
        LinearExpr.Sum(_breaches.Where(breach => breach.First >= first && breach.Last <= last).Select(breach => breach.Broken));

    public void Hint(BlockBond bond)
    {
        for (var i = 0; i < _stretches.Length; i++)
        {
            _stretches[i].Hint(bond.Runs[i]);
        }

        for (var b = 0; b < _bars.Length; b++)
        {
            _model.AddHint(_bars[b], _scale.Before(bond.Bars2[b]));
        }
    }

    public BlockBond Bond(CpSolver solver) => new(
        [.. _stretches.Select(stretch => stretch.Pieces(solver))],
        [.. _block.Bars.Select((bar, b) => Math.Clamp(_scale.Back2(solver.Value(_bars[b])), bar.Least2, bar.Most2))]);

    private int CourseOf(int stretch) => _block.Stretches[stretch].Course;

    private bool MayBreak(int stretch) => _mayBreak && (_forced is null || _forced.Contains(stretch));

    private void RepeatCourses()
    {
        for (var a = 0; a < _stretches.Length; a++)
        {
            for (var b = a + 1; b < _stretches.Length; b++)
            {
                if (_block.Stretches[a].IsLike(_block.Stretches[b]) && _block.Stretches[b].Course == _block.Stretches[a].Course + 2)
                {
                    _stretches[b].Repeat(_stretches[a]);
                }
            }
        }
    }

    private void AtMost(LinearExpr what, int? most)
    {
        if (most is { } limit)
        {
            _model.Add(what <= limit);
        }
    }

    private void KeepLaps()
    {
        var least = _scale.Up(2 * _block.Sizes.Lap);
        for (var a = 0; a < _stretches.Length; a++)
        {
            for (var b = 0; b < _stretches.Length; b++)
            {
                if (_block.Stretches[b].Course == _block.Stretches[a].Course + 1)
                {
                    KeepLaps(_stretches[a].Joints, _stretches[b].Joints, least, MayBreak(a) || MayBreak(b) ? CourseOf(a) : null);
                }
            }
        }
    }

    private void KeepLaps(ImmutableArray<JointModel> lower, ImmutableArray<JointModel> upper, long least, int? breaksOver)
    {
        var left = Enumerable.Range(0, lower.Length + 1).Select(_ => new BoolVar?[upper.Length + 1]).ToArray();
        for (var i = 0; i < lower.Length; i++)
        {
            for (var j = 0; j < upper.Length; j++)
            {
                var (a, b) = (lower[i], upper[j]);
                if (a.Most2 + least <= b.Least2 || b.Most2 + least <= a.Least2)
                {
                    continue;
                }

                var isLeft = _model.NewBoolVar($"{a.Name}<{b.Name}");
                left[i + 1][j + 1] = isLeft;
                Follows(isLeft, left[i][j + 1]);
                Follows(left[i + 1][j], isLeft);
                ILiteral[] apart = breaksOver is { } course
                    ? [a.Stands, b.Stands, NewBreach($"lap {a.Name} {b.Name}", course, course + 1).Not()]
                    : [a.Stands, b.Stands];
                _model.Add(b.Centre2 - a.Centre2 >= least).OnlyEnforceIf([.. apart, isLeft]);
                _model.Add(a.Centre2 - b.Centre2 >= least).OnlyEnforceIf([.. apart, isLeft.Not()]);
            }
        }
    }

    /// <summary>What is left of a joint is left of those after it too; what is right of a joint is right of those before it.</summary>
    private void Follows(BoolVar? first, BoolVar? second)
    {
        if (first is not null && second is not null)
        {
            _model.AddImplication(first, second);
        }
    }

    private void KeepFixedLaps()
    {
        var least = 2 * _block.Sizes.Lap;
        for (var i = 0; i < _stretches.Length; i++)
        {
            var s = i;
            foreach (var near in _block.Stretches[s].Near2)
            {
                foreach (var joint in _stretches[s].Joints)
                {
                    KeepApart(joint, near, least, () => MayBreak(s) ? NewBreach($"lap {joint.Name} {near}", CourseOf(s), CourseOf(s)) : null);
                }
            }
        }
    }

    /// <summary>
    /// A bar's place is decided on the model's unit, rounded down, and its limits with it: a bond that holds for a place between
    /// two units holds in the model. Where there is nothing to decide, the place is exact.
    /// </summary>
    private void KeepBarsClear()
    {
        var reach = 2 * _block.Sizes.Clearance;
        for (var b = 0; b < _block.Bars.Length; b++)
        {
            var bar = _block.Bars[b];
            foreach (var (course, fixed2) in bar.Courses)
            {
                BoolVar? breach = null;
                BoolVar? Breach() => _mayBreak ? breach ??= NewBreach($"bar {b} course {course}", course, course) : null;
                foreach (var joint in _stretches.Where((_, s) => _block.Stretches[s].Course == course).SelectMany(stretch => stretch.Joints))
                {
                    if (bar.Least2 == bar.Most2)
                    {
                        KeepApart(joint, bar.Least2, reach, Breach);
                    }
                    else
                    {
                        KeepApart(joint, b, _scale.Down(reach), Breach);
                    }
                }

                foreach (var joint2 in fixed2)
                {
                    var isLeft = _model.NewBoolVar($"b{b} before {joint2}");
                    ILiteral[] apart = Breach() is { } counted ? [counted.Not()] : [];
                    _model.Add(_bars[b] <= _scale.Before(joint2 - reach)).OnlyEnforceIf([.. apart, isLeft]);
                    _model.Add(_bars[b] >= _scale.Before(joint2 + reach)).OnlyEnforceIf([.. apart, isLeft.Not()]);
                }
            }
        }
    }

    private void KeepApart(JointModel joint, int bar, long least, Func<BoolVar?> breach)
    {
        if (joint.Most2 + least <= _scale.Before(_block.Bars[bar].Least2) || _scale.Before(_block.Bars[bar].Most2) + least <= joint.Least2)
        {
            return;
        }

        var isLeft = _model.NewBoolVar($"{joint.Name} before b{bar}");
        ILiteral[] apart = breach() is { } counted ? [joint.Stands, counted.Not()] : [joint.Stands];
        _model.Add(_bars[bar] - joint.Centre2 >= least).OnlyEnforceIf([.. apart, isLeft]);
        _model.Add(joint.Centre2 - _bars[bar] >= least).OnlyEnforceIf([.. apart, isLeft.Not()]);
    }

    private void SpaceBars()
    {
        for (var b = 0; b < _block.Bars.Length; b++)
        {
            var before = Enumerable.Range(0, _block.Bars.Length).Where(i => _block.Bars[i].Number == _block.Bars[b].SpacedFrom);
            foreach (var a in before)
            {
                _model.Add(_bars[b] - _bars[a] <= _scale.Up(2 * _block.Sizes.BarSpacing) + 1);
            }
        }
    }

    private void KeepBearings(bool mayBear)
    {
        foreach (var bearing in _block.Stretches.SelectMany(stretch => stretch.Bearings).Distinct())
        {
            BoolVar? breach = null;
            for (var s = 0; s < _stretches.Length; s++)
            {
                if (_block.Stretches[s].Bearings.Contains(bearing))
                {
                    foreach (var joint in _stretches[s].Joints)
                    {
                        KeepOut(joint, _scale.Before(bearing.From2), _scale.After(bearing.To2), () => mayBear ? breach ??= NewBearing($"bearing {bearing}") : null);
                    }
                }
            }
        }
    }

    private void KeepApart(JointModel joint, long place2, long least, Func<BoolVar?> breach) =>
        KeepOut(joint, _scale.Before(place2 - least), _scale.After(place2 + least), breach);

    /// <summary>A joint's doubled centre stands at or before one place or at or after another, or the breach is counted.</summary>
    private void KeepOut(JointModel joint, long before, long after, Func<BoolVar?> breach)
    {
        if (joint.Most2 <= before || joint.Least2 >= after)
        {
            return;
        }

        var isLeft = _model.NewBoolVar($"{joint.Name} before {before}");
        ILiteral[] apart = breach() is { } counted ? [joint.Stands, counted.Not()] : [joint.Stands];
        _model.Add(joint.Centre2 <= before).OnlyEnforceIf([.. apart, isLeft]);
        _model.Add(joint.Centre2 >= after).OnlyEnforceIf([.. apart, isLeft.Not()]);
    }

    private BoolVar NewBreach(string name, int first, int last)
    {
        var breach = _model.NewBoolVar(name);
        _breaches.Add((breach, first, last));
        return breach;
    }

    private BoolVar NewBearing(string name)
    {
        var bearing = _model.NewBoolVar(name);
        _bearings.Add(bearing);
        return bearing;
    }
}
