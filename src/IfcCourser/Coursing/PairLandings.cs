namespace IfcCourser.Coursing;

/// <summary>
/// The cells where the piece after a cut one is tried in each of two rows that are filled together. As in <see cref="Landings"/>, and
/// places where a joint just laps one of the other row count too: those that the other row's joints take over whole pieces from its
/// start or from such a cell, a few rows' turns deep.
/// </summary>
internal sealed class PairLandings
{
    /// <summary>How often the one row's joints may hold the other's and these the first one's.</summary>
    private const int Turns = 2;

    private readonly int[] _steps;
    private readonly CellSet[] _cells = [new(), new()];
    private readonly CellSet[] _held = [new(), new()];
    private readonly CellSet[][] _goals;
    private readonly CellSet _reached = new();

    /// <param name="sizes">Pieces and joints.</param>
    /// <param name="widths">Of the joints after whole pieces, in cells.</param>
    public PairLandings(CellSizes sizes, IEnumerable<int> widths)
    {
        _steps = [.. from width in widths from whole in sizes.Wholes select whole + width];
        _goals = [.. _held.Select(held => Enumerable.Repeat(held, _steps.Length).ToArray())];
    }

    /// <summary>The cells of a row.</summary>
    /// <param name="row">0 for the first row, 1 for the second.</param>
    public CellSet Of(int row) => _cells[row];

    /// <param name="rows">The two rows.</param>
    /// <param name="moves">By row, how many cells after the cell of the other row's joint its own joint laps that one as it must: one for each width of that joint.</param>
    /// <param name="isAny">Whether joints after cut pieces have any width, not the nominal one alone.</param>
    public void Fill(ReadOnlySpan<PairRow> rows, ReadOnlySpan<int[]> moves, bool isAny)
    {
        for (var row = 0; row < rows.Length; row++)
        {
            _held[row].Reset(rows[row].Cells);
            _held[row].AddMoved(isAny ? rows[row].HeldByAny : rows[row].Held, 0);
            Lead(row);
        }

        for (var turn = 0; turn < Turns; turn++)
        {
            for (var row = 0; row < rows.Length; row++)
            {
                Reach(rows[1 - row].Cells, _cells[1 - row]);
                foreach (var move in moves[row])
                {
                    _held[row].AddMoved(_reached, move);
                }

                Lead(row);
            }
        }
    }

    /// <summary>What leads to a row's cells that hold a piece, and these cells.</summary>
    private void Lead(int row)
    {
        _cells[row].Reset(_held[row].Size);
        _cells[row].AddLeadingTo(_steps, _goals[row]);
        _cells[row].AddMoved(_held[row], 0);
    }

    /// <summary>Where a row's pieces may start that follow whole ones from its start or from such cells.</summary>
    private void Reach(int size, CellSet landings)
    {
        _reached.Reset(size);
        _reached.AddMoved(landings, 0);
        _reached.Add(0);
        _reached.AddReached(_steps);
    }
}
