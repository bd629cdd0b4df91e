namespace IfcCourser.Coursing;

/// <summary>
/// The cells where a piece that follows a cut one may start in a cheapest filling. Of equal fillings there is one whose joints all
/// stand as far to the start as they can: every cut piece is then the shortest of its class, or one of the joints that come after it
/// before the next cut, or the last piece, would cost more a cell nearer to the start. The places of the second kind are found here,
/// going back from such joints over pieces that need no cut; the first kind depends on where the cut piece starts.
/// </summary>
internal sealed class Landings
{
    private readonly CellSizes _sizes;

    /// <summary>By the width of the joint before it less the least: cells where a piece would cost more a cell nearer to the start.</summary>
    private readonly CellSet[] _held;

    private readonly int[] _steps;
    private readonly CellSet[] _afterStep;

    public Landings(CellSizes sizes)
    {
        _sizes = sizes;
        _held = [.. Enumerable.Range(0, sizes.JointMax - sizes.JointMin + 1).Select(_ => new CellSet())];
        var wholes = from whole in sizes.Wholes from width in Enumerable.Range(0, _held.Length) select (Step: whole + sizes.JointMin + width, Width: width);
        (_steps, _afterStep) = ([.. wholes.Select(whole => whole.Step)], [.. wholes.Select(whole => _held[whole.Width])]);
    }

    public CellSet Cells { get; } = new();

    /// <param name="joints">What the segment's joints cost.</param>
    /// <param name="rest">What its rests cost.</param>
    /// <param name="target">Its cells.</param>
    /// <param name="rakedTo">Pieces that start before this cell are cut by a slope.</param>
    /// <param name="isWide">Whether joints after cut pieces have any width, not the nominal one alone.</param>
    public void Fill(JointCosts joints, RestCosts.Table rest, int target, int rakedTo, bool isWide)
    {
        for (var i = 0; i < _held.Length; i++)
        {
            _held[i].Reset(target);
            _held[i].Add(rakedTo);
            foreach (var drop in joints.Drops)
            {
                // A joint that ends at a cell has its centre half its width, in half cells its whole width, before the cell.
                _held[i].Add((drop + _sizes.JointMin + i + 1) / 2);
            }

            foreach (var left in rest.TightLasts)
            {
                _held[i].Add(target - left);
            }
        }

        Cells.Reset(target);
        Cells.AddLeadingTo(_steps, _afterStep);
        for (var i = 0; i < _held.Length; i++)
        {
            if (isWide || i == _sizes.Joint - _sizes.JointMin)
            {
                Cells.AddMoved(_held[i], 0);
            }
        }
    }
}
