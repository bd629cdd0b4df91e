using System.Collections.Immutable;
using Google.OrTools.Sat;
using ReferenceOptimum.Problems;

namespace ReferenceOptimum.Solving;

/// <summary>A stretch of a block: its slots and the joints between them.</summary>
internal sealed class StretchModel
{
    /// <summary>Slots over the fewest that a narrow search has: enough for closers at both ends and one on the way.</summary>
    private const int FewMore = 2;

    private readonly BlockStretch _stretch;
    private readonly BondSizes _sizes;
    private readonly Scale _scale;
    private readonly CpModel _model;
    private readonly ImmutableArray<Slot> _slots;

    /// <summary>By slot, whether its piece is cut to length or by a slope, where a slope may be.</summary>
    private readonly BoolVar?[] _sloped;

    public StretchModel(CpModel model, Scale scale, BondSizes sizes, BlockStretch stretch, BondLimits limits, bool mayBreak, Breadth breadth, string name)
    {
        (_model, _scale, _sizes, _stretch) = (model, scale, sizes, stretch);
        var count = MostPieces(sizes, stretch.Size, mayBreak, limits.Cuts);
        count = breadth == Breadth.All ? count : Math.Min(count, FewestPieces(sizes, stretch.Size) + FewMore);
        _slots = [.. Enumerable.Range(0, count).Select(i => NewSlot(mayBreak, $"{name}p{i}"))];
        _sloped = new BoolVar?[count];
        model.Add(_slots[0].Stands == 1);
        for (var i = 1; i < count; i++)
        {
            model.AddImplication(_slots[i].Stands, _slots[i - 1].Stands);
        }

        FillFromEndToEnd();
        CutOnTheGrid();
        JoinWhatMayBeOne();
        CutBySlopes();
        Joints = [.. Enumerable.Range(1, count - 1).Select(i => JointBefore(i, name))];
    }

    /// <summary>The joint before each slot but the first.</summary>
    public ImmutableArray<JointModel> Joints { get; }

    /// <summary>Pieces cut to length or by a slope.</summary>
    public IEnumerable<BoolVar> Cut => _slots.Select((slot, i) => _sloped[i] ?? slot.Cut);

    public IEnumerable<BoolVar> Short => _slots.Select(slot => slot.Short).OfType<BoolVar>();

    public void Hint(ImmutableArray<Stretch> pieces)
    {
        for (var i = 0; i < _slots.Length; i++)
        {
            var slot = _slots[i];
            var (length, joint) = i < pieces.Length
                ? (_scale.Of(pieces[i].Size), i == 0 ? 0 : _scale.Of(pieces[i].From - pieces[i - 1].To))
                : (0L, 0L);
            var isCut = i < pieces.Length && !_sizes.IsUncut(pieces[i].Size);
            _model.AddHint(slot.Stands, i < pieces.Length);
            _model.AddHint(slot.Cut, isCut);
            if (_sloped[i] is { } sloped)
            {
                _model.AddHint(sloped, i < pieces.Length && _stretch.Run.IsCut(pieces[i], _sizes));
            }

            _model.AddHint(slot.CutLength, isCut ? length : 0);
            _model.AddHint(slot.OffGrid, isCut ? length % _scale.Of(_sizes.Grid) : 0);
            _model.AddHint(slot.JointBefore, joint);
            _model.AddHint(slot.End, _scale.Place(i < pieces.Length ? pieces[i].To : _stretch.To));
            foreach (var (size, isOfSize) in slot.Sizes)
            {
                _model.AddHint(isOfSize, i < pieces.Length && pieces[i].Size == size);
            }

            if (slot.Short is not null)
            {
                _model.AddHint(slot.Short, i < pieces.Length && pieces[i].Size < _sizes.LeastPiece);
            }
        }
    }

    /// <summary>Has both stretches filled alike.</summary>
    public void Repeat(StretchModel other)
    {
        for (var i = 0; i < _slots.Length; i++)
        {
            var (mine, its) = (_slots[i], other._slots[i]);
            _model.Add(mine.End == its.End);
            _model.Add(mine.JointBefore == its.JointBefore);
            _model.Add(mine.CutLength == its.CutLength);
            _model.Add(mine.Stands == its.Stands);
            _model.Add(mine.Cut == its.Cut);
            for (var size = 0; size < mine.Sizes.Length; size++)
            {
                _model.Add(mine.Sizes[size].Is == its.Sizes[size].Is);
            }
        }
    }

    public ImmutableArray<Stretch> Pieces(CpSolver solver)
    {
        var pieces = ImmutableArray.CreateBuilder<Stretch>();
        var at = _scale.Place(_stretch.From);
        foreach (var slot in _slots.Where(slot => solver.BooleanValue(slot.Stands)))
        {
            at += solver.Value(slot.JointBefore);
            var end = at + solver.Value(slot.Length);
            pieces.Add(new Stretch(_scale.Back(at), _scale.Back(end)));
            at = end;
        }

        return pieces.ToImmutable();
    }

    /// <summary>
    /// No best bond has more pieces. Two neighbours are longer than a unit together, unless both are part units: else they were one
    /// piece, which has a joint less to break a rule and no more cuts. Where cuts are few and there are no part units, the rest are full units.
    /// </summary>
    private static int MostPieces(BondSizes sizes, long length, bool mayBreak, int? mostCuts)
    {
        var least = mayBreak ? 1 : sizes.LeastPiece;
        var pair = sizes.Parts.IsEmpty ? sizes.Unit : Math.Min(sizes.Unit, (2 * sizes.Parts.Min()) + sizes.JointMin);
        var pairs = (int)(2 * ((length + sizes.JointMin) / (pair + sizes.JointMin))) + 1;
        if (!sizes.Parts.IsEmpty)
        {
            return pairs;
        }

        if (mostCuts is not { } cuts)
        {
            return pairs;
        }

        var byCuts = Enumerable.Range(0, cuts + 1)
            .Where(c => (c * (least + sizes.JointMin)) - sizes.JointMin <= length)
            .Select(c => c + (int)((length + sizes.JointMin - (c * (least + sizes.JointMin))) / (sizes.Unit + sizes.JointMin)))
            .DefaultIfEmpty(1).Max();
        return Math.Max(1, Math.Min(pairs, byCuts));
    }

    private static int FewestPieces(BondSizes sizes, long length) =>
        (int)((length + sizes.JointMax + sizes.Unit + sizes.JointMax - 1) / (sizes.Unit + sizes.JointMax));

    private Slot NewSlot(bool mayBreak, string name)
    {
        var (unit, least) = (_scale.Of(_sizes.Unit), _scale.Of(_sizes.LeastPiece));
        var stands = _model.NewBoolVar($"{name} stands");
        var cut = _model.NewBoolVar($"{name} cut");
        var sizes = _sizes.Parts.Add(_sizes.Unit).Select(size => (Size: size, Is: _model.NewBoolVar($"{name} {size}"))).ToImmutableArray();
        _model.Add(LinearExpr.Sum(sizes.Select(size => size.Is).Append(cut)) == stands);
        var cutLength = _model.NewIntVar(0, unit - 1, $"{name} cut length");
        var isShort = mayBreak ? _model.NewBoolVar($"{name} short") : null;
        var (grid, steps) = (_scale.Of(_sizes.Grid), _model.NewIntVar(0, _sizes.Unit / _sizes.Grid, $"{name} steps"));
        var rest = _model.NewIntVar(0, grid - 1, $"{name} off the grid");
        _model.Add(cutLength == (steps * grid) + rest);
        _model.Add(cutLength <= cut * (unit - 1));
        _model.Add(isShort is null ? cutLength >= cut * least : cutLength >= (cut * least) - (isShort * (least - 1)));
        if (isShort is not null)
        {
            _model.AddImplication(isShort, cut);
        }

        var joint = _model.NewIntVar(0, _scale.Of(_sizes.JointMax), $"{name} joint");
        var end = _model.NewIntVar(_scale.Place(_stretch.From), _scale.Place(_stretch.To), $"{name} end");
        return new Slot(stands, cut, cutLength, rest, isShort, sizes, joint, end, cutLength + LinearExpr.Sum(sizes.Select(size => size.Is * _scale.Of(size.Size))));
    }

    /// <summary>Each slot starts a joint after the one before it; slots without a piece stand at the stretch's end.</summary>
    private void FillFromEndToEnd()
    {
        var start = _scale.Place(_stretch.From);
        _model.Add(_slots[0].End == _slots[0].Length + start);
        for (var i = 1; i < _slots.Length; i++)
        {
            _model.Add(_slots[i].End == _slots[i - 1].End + _slots[i].JointBefore + _slots[i].Length);
        }

        _model.Add(_slots[^1].End == start + _scale.Of(_stretch.Size));
        var joints = LinearExpr.Sum(_slots.Skip(1).Select(slot => slot.JointBefore));
        var pieces = LinearExpr.Sum(_slots.Skip(1).Select(slot => slot.Stands));
        _model.Add(LinearExpr.Sum(_slots.Select(slot => slot.Length)) + joints == _scale.Of(_stretch.Size));
        _model.Add(joints >= pieces * _scale.Of(_sizes.JointMin));
        _model.Add(joints <= pieces * _scale.Of(_sizes.JointMax));
    }

    /// <summary>Cut lengths lie on the grid and joints take the rest; a piece that has a stretch to itself is as long as that.</summary>
    private void CutOnTheGrid()
    {
        foreach (var slot in _slots.Skip(1))
        {
            _model.Add(slot.OffGrid == 0);
        }

        if (_slots.Length > 1)
        {
            _model.Add(_slots[0].OffGrid == 0).OnlyEnforceIf(_slots[1].Stands);
        }
    }

    /// <summary>A piece under a slope is cut whatever its length, and the one at the end long enough.</summary>
    private void CutBySlopes()
    {
        var run = _stretch.Run;
        if (run.Start.Extent == 0 && run.End.Extent == 0)
        {
            return;
        }

        var (start, end) = (_scale.After(2 * (_stretch.From + run.Start.Extent)), _scale.Before(2 * (_stretch.To - run.End.Extent)));
        for (var i = 0; i < _slots.Length; i++)
        {
            var (slot, isCut) = (_slots[i], _model.NewBoolVar("sloped"));
            _sloped[i] = isCut;
            _model.AddImplication(slot.Cut, isCut);
            _model.AddImplication(isCut, slot.Stands);
            _model.Add(2 * (slot.End - slot.Length) >= start).OnlyEnforceIf([slot.Stands, isCut.Not()]);
            _model.Add(2 * slot.End <= end).OnlyEnforceIf([slot.Stands, isCut.Not()]);
            ILiteral[] last = i + 1 < _slots.Length ? [slot.Stands, _slots[i + 1].Stands.Not()] : [slot.Stands];
            _model.Add(slot.Length >= _scale.Up(run.End.Least)).OnlyEnforceIf(last);
        }

        _model.Add(_slots[0].Length >= _scale.Up(run.Start.Least));
    }

    private JointModel JointBefore(int i, string name)
    {
        var slot = _slots[i];
        _model.Add(slot.JointBefore >= slot.Stands * _scale.Of(_sizes.JointMin));
        _model.Add(slot.JointBefore <= slot.Stands * _scale.Of(_sizes.JointMax));
        var (unit, min, max) = (_scale.Of(_sizes.Unit), _scale.Of(_sizes.JointMin), _scale.Of(_sizes.JointMax));
        var start = _scale.Place(_stretch.From);
        var end = start + _scale.Of(_stretch.Size);
        var centre2 = (2 * _slots[i - 1].End) + slot.JointBefore;
        var first = _sizes.Parts.IsEmpty ? (i / 2 * (unit + min)) - (i % 2 == 0 ? min : 0) : 0;
        var last = Math.Min(((unit + max) * i) - max, end - start - min);
        return new JointModel($"{name}j{i}", slot.Stands, centre2, (2 * (start + first)) + min, (2 * (start + last)) + max);
    }

    /// <summary>Neighbours are longer than a unit together, at least one of them cut; see <see cref="MostPieces"/>.</summary>
    private void JoinWhatMayBeOne()
    {
        var more = _scale.Of(_sizes.Unit) + 1;
        for (var i = 1; i < _slots.Length; i++)
        {
            var pair = _slots[i - 1].Length + _slots[i].JointBefore + _slots[i].Length;
            _model.Add(pair >= more).OnlyEnforceIf([_slots[i].Stands, _slots[i].Cut]);
            _model.Add(pair >= more).OnlyEnforceIf([_slots[i].Stands, _slots[i - 1].Cut]);
        }
    }

    private sealed record Slot(
        BoolVar Stands, BoolVar Cut, IntVar CutLength, IntVar OffGrid, BoolVar? Short, ImmutableArray<(long Size, BoolVar Is)> Sizes, IntVar JointBefore, IntVar End, LinearExpr Length);
}
