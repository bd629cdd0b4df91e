using System.Numerics;

namespace IfcCourser.Coursing;

/// <summary>A set of a segment's cells, for reuse: a bit each.</summary>
internal sealed class CellSet
{
    private const int Word = 64;

    private ulong[] _bits = [];
    private int _words;

    /// <summary>Cells from 0 to less than this may be in the set.</summary>
    public int Size { get; private set; }

    /// <summary>Empties the set.</summary>
    /// <param name="size">Cells from 0 to less than this may be added; others are let go.</param>
    public void Reset(int size)
    {
        (Size, _words) = (size, (size / Word) + 1);
        if (_bits.Length < _words)
        {
            _bits = new ulong[_words];
        }

        Array.Clear(_bits, 0, _words);
    }

    public void Add(int cell)
    {
        if (cell >= 0 && cell < Size)
        {
            _bits[cell / Word] |= 1UL << (cell % Word);
        }
    }

    /// <summary>Adds the cells of another set, moved on by so many cells.</summary>
    public void AddMoved(CellSet other, int by)
    {
        for (var word = 0; word < _words; word++)
        {
            _bits[word] |= other.From((word * Word) - by);
        }

        LetGo();
    }

    /// <summary>Adds every cell from which one or more steps lead to a cell of another set.</summary>
    /// <param name="steps">Each of one cell or more.</param>
    /// <param name="goals">By step, the cells that it may end the way at.</param>
    public void AddLeadingTo(ReadOnlySpan<int> steps, ReadOnlySpan<CellSet> goals)
    {
        for (var word = _words - 1; word >= 0; word--)
        {
            // A step shorter than a word leads to cells just found.
            for (var known = ~_bits[word]; known != _bits[word];)
            {
                known = _bits[word];
                for (var i = 0; i < steps.Length; i++)
                {
                    var first = (word * Word) + steps[i];
                    _bits[word] |= From(first) | goals[i].From(first);
                }
            }
        }
    }

    /// <summary>Adds every cell that steps lead to from a cell of the set.</summary>
    public void AddReached(ReadOnlySpan<int> steps)
    {
        for (var word = 0; word < _words; word++)
        {
            for (var known = ~_bits[word]; known != _bits[word];)
            {
                known = _bits[word];
                foreach (var step in steps)
                {
                    _bits[word] |= From((word * Word) - step);
                }
            }
        }

        LetGo();
    }

    /// <summary>The first cell of the set from one on; the largest integer where there is none.</summary>
    public int Next(int from)
    {
        for (var word = from / Word; word < _words; word++)
        {
            var open = word == from / Word ? _bits[word] & (ulong.MaxValue << (from % Word)) : _bits[word];
            if (open != 0)
            {
                return (word * Word) + BitOperations.TrailingZeroCount(open);
            }
        }

        return int.MaxValue;
    }

    private void LetGo()
    {
        var last = Size % Word;
        _bits[_words - 1] &= last == 0 ? 0 : ulong.MaxValue >> (Word - last);
    }

    /// <summary>A word of bits from a cell on, which may lie outside.</summary>
    private ulong From(int cell)
    {
        var (word, shift) = (cell >> 6, cell & (Word - 1));
        var low = word >= 0 && word < _words ? _bits[word] >> shift : 0;
        return shift == 0 || word + 1 < 0 || word + 1 >= _words ? low : low | (_bits[word + 1] << (Word - shift));
    }
}
