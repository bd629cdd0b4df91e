using System.Numerics;

namespace IfcCourser.Coursing;

/// <summary>
/// The cells where a piece that follows a cut one may start in a cheapest filling. Of equal fillings there is one whose joints all
/// stand as far to the start as they can: every cut piece is then the shortest of its class, or one of the joints that come after it
/// before the next cut, or the last piece, would cost more a cell nearer to the start. The places of the second kind are found here,
/// going back from such joints over pieces that need no cut; the first kind depends on where the cut piece starts.
/// </summary>
internal sealed class Landings(CellSizes sizes)
{
    private const int Word = 64;

    private readonly bool _hasShortStep = sizes.Wholes.Min() + sizes.JointMin < Word;

    /// <summary>By the width of the joint before it less the least: cells where a piece may start and not nearer to the start at the same cost.</summary>
    private readonly ulong[][] _held = [.. Enumerable.Range(0, sizes.JointMax - sizes.JointMin + 1).Select(_ => Array.Empty<ulong>())];

    private ulong[] _cells = [];
    private int _words;

    /// <param name="joints">What the segment's joints cost.</param>
    /// <param name="rest">What its rests cost.</param>
    /// <param name="target">Its cells.</param>
    /// <param name="rakedTo">Pieces that start before this cell are cut by a slope.</param>
    public void Fill(JointCosts joints, RestCosts.Table rest, int target, int rakedTo)
    {
        Clear((target / Word) + 1);
        for (var i = 0; i < _held.Length; i++)
        {
            var width = sizes.JointMin + i;
            foreach (var drop in joints.Drops)
            {
                // A joint that ends at a cell has its centre half its width, in half cells its whole width, before the cell.
                Hold(i, (drop + width + 1) / 2, target);
            }

            foreach (var left in rest.TightLasts)
            {
                Hold(i, target - left, target);
            }

            Hold(i, rakedTo, target);
        }

        GoBack();
    }

    /// <summary>The first of the cells from one on; the largest integer where there is none.</summary>
    public int Next(int from)
    {
        var word = from / Word;
        if (word >= _words)
        {
            return int.MaxValue;
        }

        var open = _cells[word] & (ulong.MaxValue << (from % Word));
        while (open == 0)
        {
            if (++word >= _words)
            {
                return int.MaxValue;
            }

            open = _cells[word];
        }

        return (word * Word) + BitOperations.TrailingZeroCount(open);
    }

    private void Clear(int words)
    {
        _words = words;
        if (_cells.Length < words)
        {
            _cells = new ulong[words];
        }

        for (var i = 0; i < _held.Length; i++)
        {
            if (_held[i].Length < words)
            {
                _held[i] = new ulong[words];
            }

            Array.Clear(_held[i], 0, words);
        }
    }

    private void Hold(int width, int cell, int target)
    {
        if (cell > 0 && cell < target)
        {
            _held[width][cell / Word] |= 1UL << (cell % Word);
        }
    }

    /// <summary>From the segment's end: a cell is one of those looked for where it is held itself or leads over whole pieces to one that is.</summary>
    private void GoBack()
    {
        for (var word = _words - 1; word >= 0; word--)
        {
            // A step shorter than a word may lead to cells just found.
            ulong known;
            _cells[word] = 0;
            do
            {
                known = _cells[word];
                _cells[word] = LeadingOn(word);
            }
            while (_hasShortStep && _cells[word] != known);
        }

        var nominal = _held[sizes.Joint - sizes.JointMin];
        for (var word = 0; word < _words; word++)
        {
            _cells[word] |= nominal[word];
        }
    }

    private ulong LeadingOn(int word)
    {
        var found = 0UL;
        foreach (var whole in sizes.Wholes)
        {
            for (var i = 0; i < _held.Length; i++)
            {
                var first = (word * Word) + whole + sizes.JointMin + i;
                found |= From(_held[i], first) | From(_cells, first);
            }
        }

        return found;
    }

    /// <summary>The bits from one on, a word of them.</summary>
    private ulong From(ulong[] bits, int first)
    {
        var (word, shift) = (first / Word, first % Word);
        var low = word < _words ? bits[word] >> shift : 0;
        return shift == 0 || word + 1 >= _words ? low : low | (bits[word + 1] << (Word - shift));
    }
}
